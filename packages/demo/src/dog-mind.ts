import type { Ask, GradeName, SkillName } from '@sedgeline/journal';
import type { Dice } from './dice.ts';
import type { Temperament } from './temperament.ts';

/**
 * How an invented dog behaves: a cue's strength against the pull of everything else, with a threshold. Strength is learnt
 * by the error-correcting rule of Rescorla and Wagner over two elements, the cue anywhere and the cue on this ground
 * [rescorla1972]. It is a mechanism of its own on purpose: what the program later finds in this record was not put there by
 * the program's own model.
 */
export interface DogMind {
  /** Begins a day: the mood drifts, and what was not worked fades a little with the days since the last session. */
  beginDay(daysAway: number): void;
  /** One cue on a ground: what the dog does. `hindrance` is what spoilt the set-up, on the scale of strengths. */
  respond(skill: SkillName, ask: Ask, ground: string, hindrance?: number): Response;
  /** What the leg taught: rewarded or not, and whether a disobedient dog got its prize anyway. */
  learn(skill: SkillName, ground: string, grade: GradeName, gotItAnyway: boolean): void;
  /** A send on a line went by, stopped or clean; for a clean one, what it looked like. */
  send(stopped: boolean): 'none' | 'hangs-back' | 'stops-unasked';
  endRep(): void;
  rest(): void;
  /** How it feels today: 0 ordinary, a tenth up or down is a good or a bad day. */
  readonly mood: number;
}

export interface Response {
  readonly grade: GradeName;
  /** Time from the cue to the response, in seconds; `null` where there was none. */
  readonly latencyS: number | null;
}

/** How strongly what lies ahead pulls (our judgement, 2026). */
const PULL = {
  none: 0,
  post: 0.05,
  'placed-dummy': 0.16,
  'thrown-dummy': 0.26,
  'shot-and-dummy': 0.34,
  game: 0.5,
} as const;
/** How much of that pull is left with the handler between, beside, away. */
const LEFT_BY_PLACE = { between: 0.55, beside: 0.8, apart: 1 } as const;
/** Strength over the pull from which a leg is fair, and from which it is good. */
const FAIR_FROM = 0.17;
const GOOD_FROM = 0.28;
const NOISE = 0.11;
/** What a neat job takes beside the cue itself: a dog may know it well and still mouth the dummy. */
const NICETY: Readonly<Partial<Record<SkillName, number>>> = {
  delivery: 0.2,
  pickup: 0.12,
  steady: 0.12,
  recall: 0.1,
  heel: 0.1,
  hunt: 0.12,
};

const atCueWhileRunning = (skill: SkillName): boolean => skill === 'stop' || skill.startsWith('cast-');

/** What works against a cue, on the scale of strengths; at its easy end only what a neat job takes. */
export function pullOf(skill: SkillName, ask: Ask, { drive, curiosity }: Temperament): number {
  const place = LEFT_BY_PLACE[ask.handlerPlace ?? 'between'];
  const nearness = atCueWhileRunning(skill) ? 0.45 + 0.8 * (ask.wayFraction ?? 0.1) : 0.5;
  const prize = PULL[ask.temptation ?? 'none'] * place * nearness * 2 * drive;
  const around = 0.07 * curiosity * (ask.distraction ?? 0) + 0.02 * curiosity * (ask.crew ?? 0);
  const going = 0.05 * (ask.cover ?? 0) + 0.06 * (ask.obstacle ?? 0) + 0.005 * (ask.windAcrossMPerS ?? 0);
  const others = 0.045 * (ask.otherDummies ?? 0) + Math.max(0, 60 - (ask.gapDeg ?? 180)) / 600;
  const unseen = ask.blind === true ? 0.09 : 0;
  const waiting = 0.002 * (ask.waitS ?? 0);
  const turn = skill === 'cast-back' ? 180 - (ask.turnDeg ?? 180) : Math.abs((ask.turnDeg ?? 90) - 90);
  const cast = skill.startsWith('cast-') ? turn / 700 + (ask.castM ?? 5) / 600 : 0;
  return (NICETY[skill] ?? 0) + prize + around + going + others + unseen + waiting + cast;
}

/** An invented dog's mind; all chance comes from the dice. */
export function dogMind(temperament: Temperament, dice: Dice): DogMind {
  const { habits, otherHabit, groundShare, learning, carryM, moodiness, fatigue, expecting } = temperament;
  const anywhere = new Map<SkillName, number>();
  const here = new Map<string, number>();
  const anywhereOf = (skill: SkillName) =>
    anywhere.get(skill) ?? (habits[skill] ?? otherHabit) * (1 - groundShare);
  const hereOf = (skill: SkillName, ground: string) => here.get(`${skill} ${ground}`) ?? 0;
  let mood = 0;
  let tiredReps = 0;
  let lately = 0;
  let overTime = 0;
  return {
    get mood() {
      return mood;
    },
    beginDay(daysAway) {
      mood = 0.5 * mood + moodiness * dice.bell();
      tiredReps = 0;
      const kept = 1 - Math.min(0.06, 0.0015 * Math.max(0, daysAway - 4));
      for (const [skill, strength] of anywhere) anywhere.set(skill, strength * kept);
    },
    respond(skill, ask, ground, hindrance = 0) {
      const learnt = anywhereOf(skill) + hereOf(skill, ground);
      const heard = 1 / (1 + (ask.distanceM ?? 5) / carryM);
      const side = skill === 'cast-right' ? temperament.rightWeakness : 0;
      const form = 1 + mood - fatigue * tiredReps;
      const against = pullOf(skill, ask, temperament) + side + hindrance;
      const margin = learnt * heard * form - against + NOISE * dice.bell();
      const grade = margin > GOOD_FROM ? 'good' : margin > FAIR_FROM ? 'fair' : 'missed';
      const slackS = 0.12 / Math.max(0.06, margin - 0.1) + 0.15 * Math.abs(dice.bell());
      return { grade, latencyS: grade === 'missed' ? null : temperament.quickestS + slackS };
    },
    learn(skill, ground, grade, gotItAnyway) {
      const strength = anywhereOf(skill) + hereOf(skill, ground);
      const rate = grade === 'missed' ? (gotItAnyway ? learning : 0.25 * learning) : learning;
      const aim = grade === 'good' ? 1 : grade === 'fair' ? 0.85 : 0.2;
      const change = rate * (aim - strength);
      anywhere.set(skill, anywhereOf(skill) + (1 - groundShare) * change);
      here.set(`${skill} ${ground}`, hereOf(skill, ground) + groundShare * 3 * change);
    },
    send(stopped) {
      const expected = expecting * (0.45 * lately + 0.55 * overTime) + 0.13 * dice.bell();
      // Half-lives of 4 and of 30 sends: what the last ones were like, and what sends have come to mean.
      lately += 0.159 * ((stopped ? 1 : 0) - lately);
      overTime += 0.0228 * ((stopped ? 1 : 0) - overTime);
      if (stopped || expected < 0.52) return 'none';
      return expected < 0.68 ? 'hangs-back' : 'stops-unasked';
    },
    endRep() {
      tiredReps += 1;
    },
    rest() {
      tiredReps *= 0.4;
    },
  };
}
