import { type Counting, SKILLS, type Skill, scoreReplay } from '@sedgeline/engine/ability';
import { grouped } from '../grouped.ts';
import { restNow } from '../record/rest-now.ts';
import type { TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import type { OwnFigures } from '../timeline/own-figures.ts';
import type { StatedLeg } from '../timeline/record-walk.ts';
import type { SkillStanding, StandingAsk, StandingView } from '../views/views.ts';
import { referenceAsks } from './reference-asks.ts';
import { toldOf } from './told-of.ts';
import { unproved } from './unproved.ts';

/** Fewer legs than this at a skill: "not known yet". */
export const KNOWN_LEGS = 10;
/** Where counting every miss moves a chance by more than this, the screen says so. */
const FLATTERED_BY = 0.05;
const RECENT_LEGS = 20;

/** A skill's named asks with their chances of good, asked on ground the dog knows, fresh, on an unknown day. */
export function statedAsks(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  dog: string,
  skill: Skill,
  atMs: number,
): StandingAsk[] {
  const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
  return referenceAsks(skill).map(({ name, ask }) => {
    const { chance, interval90 } = timeline.filter.forecast(timeline.question(dog, skill, ask, at, record));
    return { name, ask, chance: chance.good, interval90: interval90.good };
  });
}

function skillStanding(
  record: TrainingRecord,
  timelines: Readonly<Record<Counting, AbilityTimeline>>,
  dog: string,
  skill: Skill,
  legs: readonly StatedLeg[],
  atMs: number,
): SkillStanding {
  const asks = statedAsks(record, timelines.excused, dog, skill, atMs);
  const everything = statedAsks(record, timelines.everything, dog, skill, atMs);
  const parts = everything.some((ask, n) => Math.abs(ask.chance - asks[n]!.chance) > FLATTERED_BY);
  return {
    skill,
    legs: legs.length,
    known: legs.length >= KNOWN_LEGS,
    ability: timelines.excused.filter.ability(dog, skill, atMs),
    asks,
    countingEverything: parts ? everything.map(({ name, chance }) => ({ name, chance })) : null,
    told: toldOf(record, timelines.excused.filter, dog, skill),
    unproved: unproved(skill, legs),
    lastWorkedMs: timelines.excused.walk(dog).lastWorkedMs[skill] ?? null,
    recent: legs.slice(-RECENT_LEGS).map(({ rep, result, cause }) => ({ rep, grade: result.grade, cause })),
  };
}

function ownFigures({
  fits,
  recalibration,
}: OwnFigures): Pick<StandingView['honesty'], 'fit' | 'recalibration'> {
  const fit = fits.at(-1);
  return {
    fit: fit === undefined ? null : { fromMs: fit.fromMs, dogs: fit.dogs, legs: fit.legs },
    recalibration:
      recalibration === null
        ? null
        : { fromMs: recalibration.fromMs, slope: recalibration.slope, legs: recalibration.legs },
  };
}

/**
 * What a dog can do: every skill it has worked or of which something is told, with its ability, its chances at named asks and their 90 % intervals, what
 * was never proved, and how often the stated chances were right. `null` for a dog that no fact names.
 */
export function standingView(
  record: TrainingRecord,
  timelines: Readonly<Record<Counting, AbilityTimeline>>,
  dog: string,
  atMs: number,
): StandingView | null {
  const found = record.dogs.get(dog);
  if (found === undefined) return null;
  const legs = timelines.excused.stated.filter(({ result }) => result.dog === dog);
  const bySkill = grouped(legs, ({ result }) => result.skill);
  const isTold = (skill: Skill) => timelines.excused.filter.toldLeft(dog, skill) !== null;
  const scores = scoreReplay(legs.map(({ result, forecast }) => ({ ...result, chance: forecast.chance })));
  return {
    dog,
    name: found.name,
    atMs,
    rest: restNow(found.rest, atMs),
    legs: legs.length,
    skills: SKILLS.filter((skill) => bySkill.has(skill) || isTold(skill)).map((skill) =>
      skillStanding(record, timelines, dog, skill, bySkill.get(skill) ?? [], atMs),
    ),
    honesty: {
      legs: scores.stated?.legs ?? 0,
      logLoss: scores.stated?.logLoss ?? null,
      alwaysAverageLogLoss: scores.baselines['always-average']?.logLoss ?? null,
      bins: scores.calibration.map(({ stated, happened, legs: n }) => ({ stated, happened, legs: n })),
      ...ownFigures(timelines.excused.own),
    },
  };
}
