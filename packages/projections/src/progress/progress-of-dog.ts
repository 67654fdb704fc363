import {
  type AbilityPriors,
  correctForecast,
  createAbilityFilter,
  demandVector,
  EASY_CONTEXT,
  type LegQuestion,
  type LogitEstimate,
  type SessionLevel,
  type Skill,
  shippedPriors,
  smoothedPath,
  statedChances,
} from '@sedgeline/engine/ability';
import { grouped } from '../grouped.ts';
import type { DogRecord, TrainingRecord } from '../record/training-record.ts';
import { usualAsk } from '../standing/reference-asks.ts';
import { KNOWN_LEGS } from '../standing/standing.ts';
import { ageMonths } from '../timeline/dog-walk.ts';
import { type OwnFigures, ownPriors } from '../timeline/own-figures.ts';
import { type HeardWord, replayPast, type StatedLeg } from '../timeline/record-walk.ts';
import type { ChanceOfGood, ProgressView } from '../views/progress-view.ts';
import { countLegs } from './count-legs.ts';

/** What progress is read from: the walk through the record. */
export interface WalkedLegs {
  readonly stated: readonly StatedLeg[];
  readonly heard: readonly HeardWord[];
  readonly own: OwnFigures;
}

/** Level at the usual ask when a session ended, and the dog's gap as known then. */
interface SessionEnd {
  readonly level: SessionLevel;
  readonly gap: LogitEstimate;
}

/**
 * How a dog came on at a skill: its chance of good at the usual ask at each session, as known then and as known now (`smoothedPath`),
 * and every leg at the chance stated before it. A filter goes through the whole record again with the kennel's last priors, so
 * this is asked for, not kept: about the time of one replay. The last point is the standing's usual ask on the day that the skill was last
 * worked, on ground the dog knows, but for stops running. No point where the skill was never worked; `null` for a dog that no fact names.
 */
export function progressOfDog(
  record: TrainingRecord,
  walked: WalkedLegs,
  dog: string,
  skill: Skill,
): ProgressView | null {
  const found = record.dogs.get(dog);
  if (found === undefined) return null;
  const priors = ownPriors(walked.own) ?? shippedPriors;
  const legs = walked.stated.filter(({ result }) => result.dog === dog && result.skill === skill);
  const bySession = inOrderOfEnd(legs);
  const lastLegs = new Set([...bySession.values()].map((inSession) => inSession.at(-1)!));
  const ends = sessionEnds(walked, lastLegs, found, priors);
  const levels = ends.map(({ level }) => level);
  const smoothed = smoothedPath(levels, priors, squaresOfUsual(skill));
  const stated = (level: LogitEstimate, gap: LogitEstimate): ChanceOfGood => {
    const eta = { mean: level.mean, variance: level.sd ** 2 + priors.formSd ** 2 };
    const plain = statedChances(eta, { mean: gap.mean, variance: gap.sd ** 2 });
    const { recalibration } = walked.own;
    const { chance, interval90 } = recalibration === null ? plain : correctForecast(plain, recalibration);
    return { chance: chance.good, interval90: interval90.good };
  };
  // The gap does not walk: looking back, it is the one known at the end.
  const gapNow = ends.at(-1)?.gap;
  return {
    dog,
    name: found.name,
    skill,
    ask: usualAsk(skill),
    known: legs.length >= KNOWN_LEGS,
    points: [...bySession].map(([session, inSession], n) => ({
      session,
      atMs: levels[n]!.atMs,
      counts: countLegs(inSession),
      filtered: stated(levels[n]!, ends[n]!.gap),
      smoothed: stated(smoothed[n]!, gapNow!),
    })),
    legs: legs.map(({ rep, result, cause, forecast }) => ({
      rep,
      session: result.session,
      atMs: result.atMs,
      grade: result.grade,
      cause,
      weight: result.weight,
      chance: forecast.chance.good,
    })),
  };
}

/** Legs by session, in the order in which the sessions' last legs came: two may have run side by side. */
function inOrderOfEnd(legs: readonly StatedLeg[]): ReadonlyMap<string, readonly StatedLeg[]> {
  const bySession = grouped(legs, ({ result }) => result.session);
  const place = new Map(legs.map((leg, n) => [leg, n] as const));
  const endOf = (inSession: readonly StatedLeg[]) => place.get(inSession.at(-1)!)!;
  return new Map([...bySession].sort(([, a], [, b]) => endOf(a) - endOf(b)));
}

/** The usual ask on ground that the dog knows, fresh, at its age. What is odd about that very ask is part of the level. */
function usualQuestion(dog: DogRecord, skill: Skill, atMs: number): LegQuestion {
  const context = { ...EASY_CONTEXT, ageMonths: ageMonths(dog, atMs) };
  return { dog: dog.dog, skill, session: null, atMs, ask: usualAsk(skill), context };
}

function squaresOfUsual(skill: Skill): number {
  return demandVector(skill, usualAsk(skill), EASY_CONTEXT).reduce((sum, x) => sum + x * x, 0);
}

function sessionEnds(
  { stated, heard }: WalkedLegs,
  lastLegs: ReadonlySet<StatedLeg>,
  dog: DogRecord,
  priors: AbilityPriors,
): SessionEnd[] {
  const filter = createAbilityFilter(priors);
  const meanOf = (question: LegQuestion) => filter.forecast(question).logOdds.mean;
  const ends: SessionEnd[] = [];
  let before: LegQuestion | null = null;
  replayPast(filter, stated, heard, (leg) => {
    if (!lastLegs.has(leg)) {
      filter.observe(leg.result);
      return;
    }
    const question = usualQuestion(dog, leg.result.skill, leg.result.atMs);
    const shift: number = before === null ? 0 : meanOf(question) - meanOf({ ...before, atMs: question.atMs });
    filter.observe(leg.result);
    const { mean, sd } = filter.forecast(question).logOdds;
    const sdOfLevel = Math.sqrt(Math.max(0, sd ** 2 - priors.formSd ** 2));
    ends.push({
      level: { atMs: question.atMs, mean, sd: sdOfLevel, shift },
      gap: filter.gap(dog.dog),
    });
    before = question;
  });
  return ends;
}
