import type { Mark } from './drawing.ts';
import { n } from './spots.ts';

type Thing = Extract<Mark, { mark: 'thing' }>;

/** A dummy with its cord (dashed where the dog did not see it placed), a post on its ring, a jump, a hazard. */
export function ThingMark({ mark }: { readonly mark: Thing }) {
  return (
    <g
      className={`fc-thing fc-${mark.role}${mark.isUnseen ? ' fc-unseen' : ''}`}
      data-mark={mark.kind}
      data-role={mark.role}
      data-x={n(mark.at.x)}
      data-y={n(mark.at.y)}
      transform={`translate(${n(mark.at.x)} ${n(mark.at.y)}) scale(${mark.size})`}
    >
      <Shape kind={mark.kind} />
    </g>
  );
}

function Shape({ kind }: { readonly kind: Thing['kind'] }) {
  switch (kind) {
    case 'dummy':
      return (
        <g transform="rotate(-24)">
          <path className="fc-cord" d="M11 0 q9 .5 8.5 7" />
          <rect x="-11" y="-5.5" width="22" height="11" rx="5.5" />
        </g>
      );
    case 'post':
      return (
        <>
          <ellipse cx="0" cy="0" rx="7.5" ry="2.8" />
          <path className="fc-stake" d="M0 0 V-15" />
        </>
      );
    case 'jump':
      return <path className="fc-stake" d="M-14 -6 V6 M14 -6 V6 M-14 -1 H14 M-14 3.5 H14" />;
    case 'hazard':
      return <path className="fc-hazard" d="M0 -11 L10.5 7.5 H-10.5 Z M0 -4.5 V1.5 M0 4.6 V4.7" />;
    case 'other':
      return <path d="M0 -7 L7 0 L0 7 L-7 0 Z" />;
  }
}
