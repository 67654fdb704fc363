import type { DogRow as DogRowView } from '@sedgeline/projections';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** At most this many skills are named in a row; the rest stands on the dog's own page. */
const NAMED = 3;

/** One dog of the kennel: when it last worked, what slips, what was worked longest ago, and one key to go. */
export function DogRow({
  dog,
  nowMs,
  onWork,
}: {
  readonly dog: DogRowView;
  readonly nowMs: number;
  readonly onWork: (dog: string) => void;
}) {
  const words = useWords();
  const { row } = words.dogs;
  const worked =
    dog.openSession !== null
      ? row.open
      : dog.lastWorkedMs === null
        ? row.never
        : row.worked(words.time.ago(dog.lastWorkedMs, nowMs));
  const rest =
    dog.rest === null
      ? ''
      : row.resting(dog.rest.untilMs === null ? null : words.time.date(dog.rest.untilMs));
  const longest = [...dog.skills].sort((a, b) => a.lastWorkedMs - b.lastWorkedMs).slice(0, NAMED);
  return (
    <li className="dog-row">
      <div className="dog-row-head">
        <h2>
          <Link href={`/dog/${encodeURIComponent(dog.dog)}`} aria-label={row.standing(dog.name)}>
            {dog.name}
          </Link>
        </h2>
        <p className="soft">
          {[dog.ageMonths === null ? '' : words.time.age(dog.ageMonths), worked, rest]
            .filter((part) => part !== '')
            .join(' · ')}
        </p>
      </div>
      <ul className="dog-row-due">
        {dog.slipping.map((slip) => (
          <li key={slip.skill} className="dog-row-slip">
            {row.slips(
              words.trade.skillInWords(slip.skill),
              words.chances.inHundred(slip.then),
              words.chances.inHundred(slip.now),
            )}
          </li>
        ))}
        {longest.length > 0 && (
          <li>
            <span className="soft">{row.skills}: </span>
            {longest
              .map((each) => row.due(words.trade.skill(each.skill), words.time.ago(each.lastWorkedMs, nowMs)))
              .join(' · ')}
          </li>
        )}
      </ul>
      <p className="dog-row-load soft figures">
        {dog.minutesThisWeek > 0 && <span>{row.week(dog.minutesThisWeek)}</span>}
        {dog.legs > 0 && <span>{row.legs(dog.legs, dog.sessions)}</span>}
      </p>
      <div className="dog-row-keys">
        <Link
          className="button button-plain dog-row-plan"
          href={`/plan/${encodeURIComponent(dog.dog)}`}
          aria-label={words.planScreen.planFor(dog.name)}
        >
          {words.planScreen.plan}
        </Link>
        <Button
          look={dog.openSession === null ? 'plain' : 'main'}
          aria-label={dog.openSession === null ? row.work(dog.name) : row.carryOnWith(dog.name)}
          onClick={() => onWork(dog.dog)}
        >
          {dog.openSession === null ? row.start : row.carryOn}
        </Button>
      </div>
    </li>
  );
}
