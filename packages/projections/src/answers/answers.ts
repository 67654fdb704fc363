import {
  type Ask,
  FITTED,
  type Interval90,
  type LegForecast,
  type Skill,
  scoreReplay,
} from '@sedgeline/engine/ability';
import type { NextAnswer, PlannedLeg, PlannedRep, Reason } from '@sedgeline/engine/session';
import type { KennelOfFacts } from '../kennel-of-facts.ts';
import type { OwnFigures } from '../timeline/own-figures.ts';
import type { StandingView, ToldView } from '../views/views.ts';

/** A moment as the contract writes it. */
function timeOf(atMs: number): string {
  return new Date(atMs).toISOString();
}

/** The answer of `standing`. `null` for a dog that no fact names. */
export function standingAnswer(kennel: KennelOfFacts, dog: string, atMs: number) {
  const view: StandingView | null = kennel.standing(dog, atMs);
  if (view === null) return null;
  return {
    dog,
    at: timeOf(atMs),
    skills: view.skills.map((standing) => ({
      skill: standing.skill,
      legs: standing.legs,
      known: standing.known,
      ability: standing.ability,
      asks: standing.asks,
      ...(standing.told === null ? {} : { told: toldField(standing.told) }),
      ...(standing.countingEverything === null ? {} : { countingEverything: standing.countingEverything }),
      unproved: standing.unproved.map(({ code, value }) => (value === undefined ? code : `${code}:${value}`)),
      lastWorked: standing.lastWorkedMs === null ? null : timeOf(standing.lastWorkedMs),
    })),
  };
}

/** What was told of a skill, as `standing` carries it: beside the contract's fields, and only where something is told. */
function toldField({ farthestM, ground, atMs, left }: ToldView) {
  return {
    ...(farthestM === null ? {} : { farthestM }),
    ...(ground === null ? {} : { ground }),
    at: timeOf(atMs),
    left,
  };
}

/** The answer of `chance`: of one leg asked at a moment, the day's form unknown. */
export function chanceAnswer(
  kennel: KennelOfFacts,
  asked: {
    readonly dog: string;
    readonly skill: Skill;
    readonly ask: Ask;
    readonly ground: string | null;
    readonly atMs: number;
  },
) {
  const { dog, skill, ask, ground, atMs } = asked;
  const timeline = kennel.timeline();
  const at = { session: null, ground, atMs, repsSinceBreak: 0 };
  const question = timeline.question(dog, skill, ask, at, kennel.record);
  const { chance, interval90, logOdds } = timeline.filter.forecast(question);
  const because = timeline.filter.because(question).filter(({ logit }) => logit !== 0);
  return { chance, interval90, logOdds, because, legs: timeline.walk(dog).legs[skill] ?? 0 };
}

/** What the stated chances owe to this kennel's own record, and from when on. */
export function ownFiguresAnswer({ fits, recalibration }: OwnFigures) {
  return {
    fits: fits.map(({ fromMs, legs, dogs, gainNats, priors }) => ({
      from: timeOf(fromMs),
      legs,
      dogs,
      gainNats,
      priors: Object.fromEntries(FITTED.map((name) => [name, priors[name]])),
    })),
    recalibration:
      recalibration === null
        ? null
        : {
            from: timeOf(recalibration.fromMs),
            legs: recalibration.legs,
            slope: recalibration.slope,
            intercepts: { notMissed: recalibration.notMissedIntercept, good: recalibration.goodIntercept },
            interval90: recalibration.interval90,
          },
  };
}

interface StatedChances {
  readonly chance: LegForecast['chance'];
  readonly interval90: { readonly good: Interval90; readonly notMissed: Interval90 };
}

/** The answer of `replay`: every leg's chance from what came strictly before it, scored against two baselines. */
export function replayAnswer(kennel: KennelOfFacts, dog: string | null) {
  const timeline = kennel.timeline();
  const stated = timeline.stated.filter(({ result }) => dog === null || result.dog === dog);
  const scores = scoreReplay(stated.map(({ result, forecast }) => ({ ...result, chance: forecast.chance })));
  const none = { legs: 0, logLoss: null, brier: null, rankedProbability: null };
  return {
    legs: stated.map(({ rep, leg, result, forecast }) => ({
      rep,
      leg,
      dog: result.dog,
      skill: result.skill,
      ...statedChances(forecast),
      grade: result.grade,
      weight: result.weight,
    })),
    scores: {
      ...(scores.stated ?? none),
      baselines: {
        'always-average': scores.baselines['always-average'] ?? none,
        'recent-average': scores.baselines['recent-average'] ?? none,
      },
    },
    calibration: scores.calibration,
    ...ownFiguresAnswer(timeline.own),
  };
}

function statedChances({ chance, interval90 }: LegForecast): StatedChances {
  return { chance, interval90 };
}

/** Says a list of reasons in words: the one place where figures become a sentence is handed in by the edge. */
export type Say = (reasons: readonly Reason[], legs: readonly PlannedLeg[]) => string;

/** The answer of `next`: the rep with its sentence, a break, or the end. */
export function nextAnswer(next: NextAnswer, say: Say) {
  const course = next.plan === undefined ? {} : { plan: next.plan };
  if (next.do !== 'rep') {
    const { reasons } = next;
    const minutes = next.do === 'break' ? { minutes: next.minutes } : {};
    return { do: next.do, ...minutes, reasons, sentence: say(reasons, []), ...course };
  }
  const rep = spoken(next.rep, say);
  return {
    do: next.do,
    rep,
    easier: spoken(next.easier, say),
    reasons: next.reasons,
    sentence: rep.sentence,
    ...course,
  };
}

function spoken(rep: PlannedRep, say: Say) {
  return { ...rep, sentence: say(rep.reasons, rep.legs) };
}
