import type { Mark } from './drawing.ts';
import { n } from './spots.ts';
import { ThingMark } from './thing-mark.tsx';

/** One mark of a card. Places in its attributes are the true ones: the svg's scale turns them back into metres. */
export function CardMark({ mark }: { readonly mark: Mark }) {
  switch (mark.mark) {
    case 'line':
    case 'unrun':
    case 'recall':
      return (
        <g className={`fc-${mark.mark}`}>
          <line
            data-mark={mark.mark}
            x1={n(mark.from.x)}
            y1={n(mark.from.y)}
            x2={n(mark.to.x)}
            y2={n(mark.to.y)}
          />
          {mark.headPath && <path d={mark.headPath} />}
        </g>
      );
    case 'stop':
    case 'whistle':
      return (
        <line
          className={`fc-${mark.mark}`}
          data-mark={mark.mark}
          x1={n(mark.from.x)}
          y1={n(mark.from.y)}
          x2={n(mark.to.x)}
          y2={n(mark.to.y)}
        />
      );
    case 'cast':
      return (
        <g
          className="fc-cast"
          data-mark="cast"
          data-side={mark.side}
          data-to-x={n(mark.to.x)}
          data-to-y={n(mark.to.y)}
        >
          <path d={mark.path} />
          <path d={mark.headPath} />
        </g>
      );
    case 'hunt':
      return (
        <circle className="fc-hunt" data-mark="hunt" cx={n(mark.at.x)} cy={n(mark.at.y)} r={n(mark.radius)} />
      );
    case 'obstacle':
      return (
        <g
          className={`fc-obstacle fc-obstacle-${mark.level}`}
          data-mark="obstacle"
          data-x={n(mark.at.x)}
          data-y={n(mark.at.y)}
        >
          <path d={mark.path} />
          {mark.posts && <path d={mark.posts} />}
        </g>
      );
    case 'thing':
      return <ThingMark mark={mark} />;
    case 'handler':
      return (
        <g
          className="fc-handler"
          data-mark="handler"
          transform={`translate(${n(mark.at.x)} ${n(mark.at.y)}) rotate(${n(mark.aimDeg)}) scale(${mark.size})`}
        >
          <path d="M0 -21.5 L5.8 -9.4 A11 11 0 1 1 -5.8 -9.4 Z" />
        </g>
      );
    case 'dog':
      return (
        <g
          className="fc-dog"
          data-mark="dog"
          transform={`translate(${n(mark.at.x)} ${n(mark.at.y)}) rotate(${n(mark.aimDeg)}) scale(${mark.size})`}
        >
          <ellipse rx="5.8" ry="9.6" />
        </g>
      );
  }
}
