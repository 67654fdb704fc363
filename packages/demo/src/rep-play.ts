import type { Ask, CauseName, Leg, RepRecorded } from '@sedgeline/journal';
import { type Dice, rounded } from './dice.ts';
import type { DogMind } from './dog-mind.ts';
import type { AskedLeg, Exercise } from './exercises.ts';
import type { Outcome } from './ladder.ts';

/** What happened at a rep: its record's body without names, and what the handler takes from it. */
export interface PlayedRep {
  readonly legs: readonly Leg[];
  readonly expectation?: 'none' | 'hangs-back' | 'stops-unasked';
  readonly gotItAnyway?: boolean;
  readonly reward?: NonNullable<RepRecorded['reward']>;
  readonly note?: string;
  /** How the whole rep went. */
  readonly outcome: Outcome;
}

/** Chance that something of the set-up spoils a rep, and what that takes from the cue (our judgement, 2026). */
const SPOILT = 0.025;
const SPOILT_BY = 0.35;
/** Skills whose miss ends the chain: there is nothing left to go on with. */
const ENDS_CHAIN = new Set([
  'steady',
  'line',
  'stop',
  'cast-left',
  'cast-right',
  'cast-back',
  'hunt',
  'mark',
  'pickup',
]);

const later = (ask: Ask, dice: Dice): Ask => {
  const by = dice.pick([0.1, 0.15, 0.2]);
  const was = ask.wayFraction ?? 0.1;
  const wayFraction = rounded(Math.min(0.95, was + by), 2);
  return { ...ask, wayFraction, distanceM: rounded(((ask.distanceM ?? 5) * wayFraction) / was) };
};

const isExcused = (cause: CauseName | undefined): boolean => cause === 'handler' || cause === 'setup';

function causeOf(
  grade: Leg['grade'],
  wasLate: boolean,
  wasSpoilt: boolean,
  dice: Dice,
): CauseName | undefined {
  if (grade === 'good') return undefined;
  if (wasSpoilt) return 'setup';
  if (wasLate) return dice.chance(0.85) ? 'handler' : 'unsure';
  const roll = dice.unit();
  return roll < 0.06 ? 'unsure' : roll < 0.5 ? 'dog' : undefined;
}

/** What a handler takes from some legs: the worst of them counts, and a miss is excused where every miss is. */
export function outcomeOf(legs: readonly Leg[]): Outcome {
  const misses = legs.filter(({ grade }) => grade === 'missed');
  if (misses.length > 0) return misses.every(({ cause }) => isExcused(cause)) ? 'excused' : 'missed';
  return legs.every(({ grade }) => grade === 'good') ? 'well' : 'so-so';
}

/** Plays one rep: each leg asked in turn until one ends the chain; the dog learns from each leg that was its own. */
export function playRep(
  exercise: Exercise,
  mind: DogMind,
  ground: string,
  lateChance: number,
  dice: Dice,
): PlayedRep {
  const isSend = exercise.legs.some(({ skill }) => skill === 'line');
  const stopped = exercise.legs.some(({ skill }) => skill === 'stop');
  const expectation = isSend ? mind.send(stopped) : 'none';
  const spoiltAt = dice.chance(SPOILT) ? dice.whole(0, exercise.legs.length - 1) : -1;
  const legs: Leg[] = [];
  let gotItAnyway = false;
  const playLeg = ({ skill, ask }: AskedLeg, at: number): Leg => {
    const wasLate = skill === 'stop' && dice.chance(lateChance);
    const done = wasLate ? later(ask, dice) : ask;
    const wasSpoilt = at === spoiltAt;
    const slowed =
      expectation !== 'none' && skill === 'line' ? (expectation === 'stops-unasked' ? 0.3 : 0.08) : 0;
    const { grade, latencyS } = mind.respond(skill, done, ground, slowed + (wasSpoilt ? SPOILT_BY : 0));
    const cause = causeOf(grade, wasLate, wasSpoilt, dice);
    const timed = latencyS !== null && (skill === 'stop' || (skill === 'recall' && dice.chance(0.4)));
    if (grade === 'missed' && skill === 'stop' && (ask.temptation ?? 'none') !== 'none')
      gotItAnyway = dice.chance(0.6);
    if (!isExcused(cause)) mind.learn(skill, ground, grade, gotItAnyway);
    return {
      skill,
      ask: done,
      grade,
      ...(cause === undefined ? {} : { cause }),
      ...(timed ? { latencyS: rounded(Math.min(latencyS, 12), 1) } : {}),
      ...(wasLate ? { planned: ask } : {}),
      ...(wasSpoilt && grade !== 'good' ? { note: 'ran over the scent of the rep before' } : {}),
    };
  };
  for (const [at, asked] of exercise.legs.entries()) {
    const leg = playLeg(asked, at);
    legs.push(leg);
    if (leg.grade === 'missed' && ENDS_CHAIN.has(leg.skill)) break;
  }
  mind.endRep();
  const outcome = outcomeOf(legs);
  const last = legs.at(-1)?.skill;
  const reward = legs.some(({ grade }) => grade === 'missed')
    ? []
    : last === 'delivery'
      ? ['retrieve', 'praise']
      : ['marker', dice.pick(['food', 'play'])];
  return {
    legs,
    outcome,
    ...(exercise.clean === true ? { expectation } : {}),
    ...(gotItAnyway ? { gotItAnyway } : {}),
    ...(reward.length > 0 ? { reward: reward as NonNullable<RepRecorded['reward']> } : {}),
    ...(outcome === 'excused' ? { note: 'not held against the dog: set up again and left it quietly' } : {}),
  };
}
