import { type Ask, type Skill, TEMPTATIONS, type Temptation } from '@sedgeline/engine/ability';
import { countLegs } from '../progress/count-legs.ts';
import type { TrainingRecord } from '../record/training-record.ts';
import { referenceAsks, usualAsk } from '../standing/reference-asks.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import type { StatedLeg } from '../timeline/record-walk.ts';
import type { ChanceOfGood } from '../views/progress-view.ts';
import type { ProofingCell, ProofingGround, ProofingRow, ProofingView } from '../views/proofing-view.ts';
import { amountOf, bandAt, proofingBands, proofingDemand, withAmount } from './proofing-bands.ts';

/** A kennel may use many grounds: the dog's own come first, and no more rows than this in all (our judgement, 2026). */
const MOST_GROUNDS = 12;
const COLUMNS = [0, 1, 2] as const;

/** A leg with the column it stands in. */
interface PlacedLeg extends StatedLeg {
  readonly column: 0 | 1 | 2;
}

function cellOf(legs: readonly StatedLeg[], asHard: readonly StatedLeg[], now: ChanceOfGood): ProofingCell {
  const counts = countLegs(legs);
  const held = counts.good + counts.fair + counts.missed;
  return {
    counts,
    tried: legs.length === 0 ? 'never' : held === 0 ? 'excused' : 'yes',
    lastWorkedMs:
      legs.length === 0 ? null : legs.reduce((so, { result }) => Math.max(so, result.atMs), -Infinity),
    now,
    beyond: !asHard.some(({ result }) => result.grade === 'good'),
  };
}

const temptationOf = ({ result }: StatedLeg): Temptation => result.ask.temptation ?? 'none';

/** The temptations in which a skill is proved, from that of its easy ask on, and any that was worked. */
function temptationRows(skill: Skill, legs: readonly StatedLeg[]): readonly Temptation[] {
  const easy = TEMPTATIONS.indexOf(referenceAsks(skill)[0]?.ask.temptation ?? 'none');
  const worked = new Set(legs.map(temptationOf));
  return TEMPTATIONS.filter((temptation, n) => n >= easy || worked.has(temptation));
}

interface GroundRow {
  readonly of: ProofingGround;
  readonly legs: readonly PlacedLeg[];
}

/** New ground first, then the dog's own grounds, the last worked first, then others of the record. */
function groundRows(record: TrainingRecord, dog: string, legs: readonly PlacedLeg[]): readonly GroundRow[] {
  const groundOf = new Map(record.sessions.map(({ session, ground }) => [session, ground] as const));
  const on = (ground: string | null) =>
    legs.filter(({ result }) => (groundOf.get(result.session) ?? null) === ground);
  const own = record.sessions.filter((session) => session.dog === dog).map(({ ground }) => ground);
  const lately = [...new Set(own.reverse().filter((ground) => ground !== null))];
  const offered = [...record.grounds.values()].filter(({ isPutAway }) => !isPutAway);
  const others = offered.map(({ ground }) => ground).filter((ground) => !lately.includes(ground));
  const rows: GroundRow[] = [
    {
      of: { kind: 'new-ground' },
      legs: legs.filter(({ result }) => result.context.earlierSessionsOnGround === 0),
    },
    ...[...lately, ...others].slice(0, MOST_GROUNDS).map((ground) => ({
      of: { kind: 'ground' as const, ground, name: record.grounds.get(ground)?.name ?? ground },
      legs: on(ground),
    })),
  ];
  const unnamed = on(null);
  return unnamed.length === 0 ? rows : [...rows, { of: { kind: 'no-ground' }, legs: unnamed }];
}

/**
 * What a dog has been tried at in one skill, and how it went: temptations and grounds, each against how far (how long, or with how
 * much about). Counts are of the legs themselves; only the chances are the model's, each at the row's and the column's own, all else as
 * in the usual ask. The map of temptations is stated on ground that the dog knows, that of grounds at the usual temptation.
 * Empty where the skill was never worked; `null` for a dog that no fact names.
 */
export function proofingOfDog(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  dog: string,
  skill: Skill,
  atMs: number,
): ProofingView | null {
  const found = record.dogs.get(dog);
  if (found === undefined) return null;
  const stated = timeline.stated.filter(({ result }) => result.dog === dog && result.skill === skill);
  const demand = proofingDemand(skill);
  const amounts = stated.map(({ result }) => amountOf(demand, result.ask));
  const bands = proofingBands(demand, amounts);
  const legs = stated.map((leg, n): PlacedLeg => ({ ...leg, column: bandAt(bands, amounts[n]!) }));

  const chanceOf = (ask: Ask, on: ProofingGround | null): ChanceOfGood => {
    const ground = on?.kind === 'ground' ? on.ground : null;
    const at = { session: null, ground, atMs, repsSinceBreak: 0 };
    const question = timeline.question(dog, skill, ask, at, record);
    const isNew = on?.kind === 'new-ground';
    const context = isNew ? { ...question.context, earlierSessionsOnGround: 0 } : question.context;
    const { chance, interval90 } = timeline.filter.forecast({ ...question, context });
    return { chance: chance.good, interval90: interval90.good };
  };
  const askAt = (column: 0 | 1 | 2) => withAmount(demand, usualAsk(skill), bands[column].at);

  const temptations = temptationRows(skill, stated).map((temptation): ProofingRow<Temptation> => {
    const step = TEMPTATIONS.indexOf(temptation);
    const asTempting = legs.filter((leg) => TEMPTATIONS.indexOf(temptationOf(leg)) >= step);
    const inRow = asTempting.filter((leg) => temptationOf(leg) === temptation);
    return {
      of: temptation,
      cells: COLUMNS.map((column) =>
        cellOf(
          inRow.filter((leg) => leg.column === column),
          asTempting.filter((leg) => leg.column >= column),
          chanceOf({ ...askAt(column), temptation }, null),
        ),
      ),
    };
  });
  const grounds = groundRows(record, dog, legs).map(
    ({ of, legs: inRow }): ProofingRow<ProofingGround> => ({
      of,
      cells: COLUMNS.map((column) =>
        cellOf(
          inRow.filter((leg) => leg.column === column),
          inRow.filter((leg) => leg.column >= column),
          chanceOf(askAt(column), of),
        ),
      ),
    }),
  );
  return { dog, name: found.name, skill, atMs, legs: stated.length, demand, bands, temptations, grounds };
}
