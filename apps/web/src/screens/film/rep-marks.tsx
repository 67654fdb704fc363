import type { FilmMark, FilmOfSession, HeardWhistle, RepSummary } from '@sedgeline/projections';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { MarkSymbol } from './mark-symbol.tsx';
import { RepWay } from './rep-way.tsx';

/** What can be done with a mark that stands. */
export interface MarkActs {
  /** `null` while no film is open to go to. */
  readonly goTo: ((mark: FilmMark) => void) | null;
  /** Moves a mark to the frame that is shown; `null` while none is. */
  readonly moveHere: ((mark: FilmMark) => void) | null;
  /** Marks a whistle that was heard in the film's sound; `null` while nothing can be marked. */
  readonly heard: ((whistle: HeardWhistle) => void) | null;
  readonly takeOff: (mark: FilmMark) => void;
  readonly putBack: (mark: FilmMark) => void;
  readonly keep: (
    rep: string,
    latencies: readonly { readonly leg: number; readonly latencyS: number | null }[],
  ) => void;
}

/** A rep's marks on a film, what they come to, and what may be kept of it. */
export function RepMarks({
  film,
  rep,
  number,
  heard,
  acts,
}: {
  readonly film: FilmOfSession;
  readonly rep: RepSummary;
  readonly number: number;
  /** Whistles of the rep that were heard and are not marked. */
  readonly heard: readonly HeardWhistle[];
  readonly acts: MarkActs;
}) {
  const { film: words } = useWords();
  const marks = film.marks.filter((mark) => mark.rep === rep.rep);
  const takenOff = film.takenOff.find((mark) => mark.rep === rep.rep);
  return (
    <section className="film-rep" aria-label={words.marks.list(number)}>
      <h2>{words.marks.list(number)}</h2>
      {marks.length === 0 ? <p>{words.marks.none}</p> : <RepWay marks={marks} />}
      <ol className="film-marks">
        {marks.map((mark) => (
          <li key={mark.mark} data-mark={mark.what}>
            <MarkSymbol what={mark.what} />
            {acts.goTo === null ? (
              <span className="film-mark-at figures">
                {words.marks.name(mark.what)}, {words.player.moment(mark.atS)}
              </span>
            ) : (
              <button
                type="button"
                className="film-mark-at figures"
                aria-label={words.marks.goTo(mark.what, mark.atS)}
                onClick={() => acts.goTo?.(mark)}
              >
                {words.marks.name(mark.what)}, {words.player.moment(mark.atS)}
              </button>
            )}
            {mark.heard && <span className="soft">{words.marks.heard}</span>}
            <span className="film-mark-acts">
              {acts.moveHere !== null && (
                <Button
                  look="quiet"
                  onClick={() => acts.moveHere?.(mark)}
                  aria-label={words.marks.here(mark.what)}
                >
                  {words.marks.hereShort}
                </Button>
              )}
              <Button
                look="quiet"
                onClick={() => acts.takeOff(mark)}
                aria-label={words.marks.takeOff(mark.what, mark.atS)}
              >
                {words.marks.takeOffShort}
              </Button>
            </span>
          </li>
        ))}
      </ol>
      {acts.heard !== null &&
        heard.map((whistle) => (
          <Button key={whistle.atS} onClick={() => acts.heard?.(whistle)}>
            {words.marks.markHeard(whistle.atS)}
          </Button>
        ))}
      {takenOff !== undefined && (
        <Notice action={<Button onClick={() => acts.putBack(takenOff)}>{words.marks.putBackShort}</Button>}>
          {words.marks.gone(takenOff.what, takenOff.atS)}
        </Notice>
      )}
      {marks.length > 0 && <RepFigures film={film} rep={rep} number={number} acts={acts} />}
    </section>
  );
}

function RepFigures({
  film,
  rep,
  number,
  acts,
}: {
  readonly film: FilmOfSession;
  readonly rep: RepSummary;
  readonly number: number;
  readonly acts: MarkActs;
}) {
  const { film: words, filmFigures } = useWords();
  const on = film.marked.find((one) => one.rep === rep.rep);
  if (on === undefined) return null;
  const lines = filmFigures.figures(on.figures);
  const isUnclear =
    on.figures.halts.some(({ leg }) => leg === null) && rep.legs.some(({ skill }) => skill === 'stop');
  const kept = on.figures.halts.flatMap(({ leg, latency }) => {
    const latencyS = leg === null ? undefined : rep.legs[leg]?.latencyS;
    const isFound = on.found.some((found) => found.leg === leg);
    return leg === null || latencyS === undefined || latency === null || isFound ? [] : [{ leg, latencyS }];
  });
  return (
    <>
      <h3>{words.figures.title(number)}</h3>
      {lines.length === 0 ? (
        <p>{words.figures.none}</p>
      ) : (
        <ul className="film-figures figures">
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {isUnclear && <p className="soft">{words.figures.which}</p>}
      {on.found.map((found) => (
        <Button key={found.leg} onClick={() => acts.keep(rep.rep, [found])}>
          {words.figures.keep(found.latencyS, found.before)}
        </Button>
      ))}
      {kept.map(({ leg, latencyS }) => (
        <Notice
          key={leg}
          action={
            <Button look="quiet" onClick={() => acts.keep(rep.rep, [{ leg, latencyS: null }])}>
              {words.figures.takeOut}
            </Button>
          }
        >
          {words.figures.kept(latencyS)}
        </Notice>
      ))}
    </>
  );
}
