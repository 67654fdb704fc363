import { type AskFigures, SKILLS, type Skill } from './ask.ts';
import type { Dice } from './dice.ts';
import type { Situation } from './mind.ts';

/** What can trouble a dog. */
const TROUBLES = [
  'distance',
  'way',
  'pull',
  'apart',
  'cover',
  'distraction',
  'off',
  'cast',
  'others',
  'narrow',
  'blind',
  'wait',
  'obstacle',
  'wind',
  'new',
  'tired',
  'young',
] as const;
export type Trouble = (typeof TROUBLES)[number];
export type Traits = Readonly<Record<Trouble, number>>;

/** How much each thing troubles a dog, times the ordinary: log-normal about `around`. */
export function traitsAround(dice: Dice, logSd: number, around?: Traits): Traits {
  const of = (trouble: Trouble) => (around?.[trouble] ?? 1) * Math.exp(logSd * dice.normal());
  return Object.fromEntries(TROUBLES.map((trouble) => [trouble, of(trouble)])) as Record<Trouble, number>;
}

/** A normal number for each skill. */
export function bySkill(dice: Dice, sd: number): Readonly<Record<Skill, number>> {
  return Object.fromEntries(SKILLS.map((skill) => [skill, sd * dice.normal()])) as Record<Skill, number>;
}

const clamped = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/**
 * What of each trouble there is in a leg, 0 to about 1, in straight lines of metres, ranks and degrees. Our judgement,
 * 2026 (common practice, no source). A mechanism makes of it what it will.
 */
export function troublesOf(figures: AskFigures, at: Situation): Readonly<Record<Trouble, number>> {
  return {
    distance: clamped((figures.distanceM - 5) / 95, 0, 1.5),
    way: figures.way - 0.1,
    pull: figures.pull / 5,
    apart: figures.apart / 2,
    cover: figures.cover / 3,
    distraction: figures.distraction / 3,
    off: figures.offDeg / 90,
    cast: clamped((figures.castM - 5) / 45, 0, 1.5),
    others: figures.others / 4,
    narrow: figures.others > 0 ? figures.narrow : 0,
    blind: figures.blind,
    wait: clamped(figures.waitS / 40, 0, 1),
    obstacle: figures.obstacle / 3,
    wind: figures.windMPerS / 15,
    new: 0.6 ** at.visits,
    tired: clamped((at.repsSinceBreak - 9) / 8, 0, 1.5),
    young: clamped((12 - at.ageMonths) / 6, 0, 1),
  };
}
