import type { FilmOfSession, RepSummary } from '@sedgeline/projections';
import { Button } from '../../parts/button.tsx';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** The reps of the session beside the film: which is in hand, how it went, how many marks it has, and where to look for it. */
export function RepList({
  reps,
  film,
  chosen,
  onChoose,
  onGoTo,
}: {
  readonly reps: readonly RepSummary[];
  readonly film: FilmOfSession | null;
  readonly chosen: string | null;
  readonly onChoose: (rep: string) => void;
  /** `null` while no film is open. */
  readonly onGoTo: ((rep: string, atS: number) => void) | null;
}) {
  const { film: words, ask, trade } = useWords();
  return (
    <section className="film-reps" aria-labelledby="film-reps-title">
      <h2 id="film-reps-title">{words.reps.title}</h2>
      <ol>
        {reps.map((rep, n) => {
          const place = film?.places.find((one) => one.rep === rep.rep);
          const marks = film?.marks.filter((mark) => mark.rep === rep.rep).length ?? 0;
          const atS = place?.atS ?? null;
          return (
            <li key={rep.rep} data-chosen={rep.rep === chosen || undefined}>
              <button
                type="button"
                className="film-rep-choose"
                aria-pressed={rep.rep === chosen}
                onClick={() => onChoose(rep.rep)}
              >
                <b>{words.reps.short(n + 1)}</b> <span>{ask.rep(rep.legs)}</span>
                <span className="film-rep-grades">
                  {rep.legs.map(({ skill, grade }, leg) => (
                    <span key={leg}>
                      <GradeMark grade={grade} size={16} /> {trade.skill(skill)}
                      <span className="only-read-out">{trade.grade(grade)}</span>
                    </span>
                  ))}
                  {marks > 0 && <span className="soft">{words.reps.marks(marks)}</span>}
                </span>
              </button>
              {onGoTo !== null && place !== undefined && atS !== null && (
                <Button
                  look="quiet"
                  className="film-rep-go figures"
                  aria-label={words.reps.goTo(n + 1, words.reps.place(place.from, atS, false))}
                  onClick={() => onGoTo(rep.rep, atS)}
                >
                  {words.reps.place(place.from, atS, false)}
                </Button>
              )}
              {onGoTo !== null && place?.isOutside === true && (
                <span className="soft film-rep-go">{words.reps.place(place.from, null, true)}</span>
              )}
            </li>
          );
        })}
      </ol>
      {onGoTo !== null && film?.places.every(({ from }) => from === 'unknown') && (
        <p className="soft">{words.reps.place('unknown', null, false)}</p>
      )}
    </section>
  );
}
