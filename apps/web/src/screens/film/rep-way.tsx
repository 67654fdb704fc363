import type { FilmMark } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** Steps of the ruler, seconds; the smallest that gives no more than six. */
const STEPS_S = [0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1800];
const MOST_TICKS = 6;
/** Shortest stretch that is drawn, seconds: closer marks lie on one another anyway. */
const SHORTEST_S = 1;
/** Room at both ends for the symbols, as a share of the width. */
const MARGIN = 0.05;

/** A rep in time, as the field card has it in space: the way out a thick stroke, the way home a thin one, what was marked upon it, and a ruler of seconds. */
export function RepWay({ marks }: { readonly marks: readonly FilmMark[] }) {
  const { player: words } = useWords().film;
  const fromS = marks[0]?.atS ?? 0;
  const spanS = Math.max(SHORTEST_S, (marks.at(-1)?.atS ?? 0) - fromS);
  const x = (atS: number): string =>
    `${Math.round(10_000 * (MARGIN + ((1 - 2 * MARGIN) * (atS - fromS)) / spanS)) / 100}%`;
  const turned = marks.findLast(({ what }) => what === 'pick-up')?.atS;
  const step = STEPS_S.find((s) => spanS / s <= MOST_TICKS) ?? spanS;
  const ticks = Array.from({ length: Math.floor(spanS / step) + 1 }, (_, n) => n * step);
  return (
    <svg className="film-way" aria-hidden="true" height="92">
      <line className="film-way-out" x1={x(fromS)} x2={x(turned ?? fromS + spanS)} y1="34" y2="34" />
      {turned !== undefined && (
        <line className="film-way-home" x1={x(turned)} x2={x(fromS + spanS)} y1="34" y2="34" />
      )}
      {marks.map((mark) => (
        <svg aria-hidden="true" key={mark.mark} x={x(mark.atS)} y="34" overflow="visible">
          <path className="film-way-mark" data-what={mark.what} d={ON_WAY[mark.what]} />
        </svg>
      ))}
      {ticks.map((s) => (
        <svg aria-hidden="true" key={s} x={x(fromS + s)} y="64" overflow="visible">
          <path className="film-way-tick" d="M0 0v6" />
          <text className="film-way-time figures" y="22" textAnchor="middle">
            {words.bareSeconds(s)}
          </text>
        </svg>
      ))}
      <line className="film-way-tick" x1={x(fromS)} x2={x(fromS + spanS)} y1="64" y2="64" />
    </svg>
  );
}

/** The way runs to the right: what stops it stands across it, a cast bends off it, a dummy lies over it, and the handler is at its end. */
const ON_WAY: Readonly<Record<FilmMark['what'], string>> = {
  sent: 'M0-6a6 6 0 1 0 .01 0z',
  whistle: 'M0-9V9',
  halt: 'M0-17V17',
  cast: 'M0 0v-10c0-5 3-7 9-7M5-21l5 4-5 4',
  'pick-up': 'M-7-12 3-16a4 4 0 0 1 3 7l-10 4a4 4 0 0 1-3-7zM8-13c2-1 3 1 5 0',
  delivery: 'M0-7a7 7 0 1 1-.01 0zM-4-7 0-15l4 8z',
};
