import type { FilmMarkName } from '@sedgeline/words';

/** In the hand of the field card: a way begins, a small bar is blown, a bar across stops it, an arrow bends, a dummy lies, and is brought to the handler. */
const PATHS: Readonly<
  Record<FilmMarkName, { readonly stroke?: string; readonly fill?: string; readonly way?: string }>
> = {
  sent: { stroke: 'M12 15V3.5M8.5 7 12 3.5 15.5 7', fill: 'M12 14.5a3.6 3.6 0 1 1-.01 0z' },
  whistle: { stroke: 'M7 12h10', way: 'M12 21V3' },
  halt: { stroke: 'M4 11h16', way: 'M12 21v-9' },
  cast: { stroke: 'M14 21v-7.5C14 8.5 10.5 7.5 4.5 8M8 4 4.5 8l4 3.5' },
  'pick-up': {
    stroke: 'M7.2 10.2 15 7.4a3 3 0 0 1 2 5.6l-7.8 2.8a3 3 0 0 1-2-5.6zM18.4 9.4c1.6-.6 2.4.4 3.2-.6',
  },
  delivery: { fill: 'M12 12.5a4.4 4.4 0 1 1-.01 0zM9.4 9 12 3.5 14.600 9z', stroke: 'M12 21.500v-5' },
};

/** The symbol of a mark, as the field card draws what it stands for. */
export function MarkSymbol({ what }: { readonly what: FilmMarkName }) {
  const { stroke, fill, way } = PATHS[what];
  return (
    <svg
      className="film-mark-symbol"
      data-what={what}
      viewBox="0 0 24 24"
      width="26"
      height="26"
      aria-hidden="true"
    >
      {way !== undefined && <path className="film-mark-way" d={way} />}
      {stroke !== undefined && <path className="film-mark-stroke" d={stroke} />}
      {fill !== undefined && <path className="film-mark-fill" d={fill} />}
    </svg>
  );
}
