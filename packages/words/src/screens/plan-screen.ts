import type { AskWords } from '../ask.ts';
import type { StepWords } from '../steps.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Skill } from '../vocabulary.ts';
import { planEditWords } from './plan-edits.ts';
import { planWishWords } from './plan-wishes.ts';

/** The figures over a plan, as far as they are told. */
interface ToldStrip {
  readonly minutes: { readonly p50: number; readonly p90: number; readonly of: number };
  readonly breaksAfter: readonly number[];
  readonly casts: { readonly left: number; readonly right: number };
  readonly weaker: 'left' | 'right' | null;
  readonly sends: { readonly clean: number; readonly all: number };
  readonly cleanShareWanted: number;
  readonly stops: {
    readonly count: number;
    readonly distancesM: readonly number[];
    readonly ways: readonly number[];
  };
  readonly most: { readonly n: number; readonly skill: Skill; readonly stretch: number | null } | null;
}

/** A figure of the strip: what it is, and what it is to be held against. */
export interface StripWords {
  readonly figure: string;
  readonly beside: string;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of the Plan screen and of its printed card. */
export function planScreenWords(t: Tongue, trade: TradeWords, ask: AskWords, steps: StepWords) {
  const minutesStrip = ({ minutes: { p50, p90, of }, breaksAfter }: ToldStrip): StripWords => {
    const [low, high] = [Math.round(p50), Math.round(p90)];
    const rest = breaksAfter.length === 0 ? 'no break' : `break after ${t.list(breaksAfter.map(String))}`;
    return { figure: low === high ? `${low} min` : `${low} to ${high} min`, beside: `of ${of}, ${rest}` };
  };
  const sidesStrip = ({ casts: { left, right }, weaker }: ToldStrip): StripWords =>
    left + right === 0
      ? { figure: 'No side casts', beside: 'nothing to keep even' }
      : {
          figure: `${left} left, ${right} right`,
          beside: weaker === null ? 'neither is weaker' : `${weaker} is weaker`,
        };
  const cleanStrip = ({ sends: { clean, all }, cleanShareWanted }: ToldStrip): StripWords => {
    if (all === 0) return { figure: 'No sends', beside: 'nothing to let run' };
    const oneIn = cleanShareWanted > 0.02 ? `1 in ${t.number(1 / cleanShareWanted)} is wanted` : '';
    return { figure: `${clean} let run of ${all}`, beside: oneIn || 'none is wanted' };
  };
  const stopsStrip = ({ stops: { count, distancesM, ways } }: ToldStrip): StripWords => {
    if (count === 0) return { figure: 'No stops', beside: 'no whistle' };
    const [near, far] = [Math.min(...distancesM), Math.max(...distancesM)];
    const figure =
      distancesM.length === 0
        ? t.count(count, 'stop', 'stops')
        : t.bareLength(near) === t.bareLength(far)
          ? `${count === 1 ? 'Stop' : 'Stops'} at ${t.length(far)}`
          : `Stops ${t.bareLength(near)} to ${t.length(far)}`;
    const places = [...new Set([...ways].sort((a, b) => a - b).map(ask.wayOut))].map((place) =>
      place.replace(' on the line', ''),
    );
    return { figure, beside: places.length === 0 ? t.count(count, 'stop', 'stops') : t.list(places) };
  };
  const mostStrip = ({ most }: ToldStrip): StripWords =>
    most === null
      ? { figure: 'Nothing asked', beside: '' }
      : {
          figure:
            most.stretch !== null && most.stretch <= 0 ? 'No step up' : capital(steps.phrase(most.stretch)),
          beside:
            most.stretch !== null && most.stretch <= 0
              ? 'all of it known'
              : `rep ${t.number(most.n)}, ${trade.skillInWords(most.skill).toLowerCase()}`,
        };

  return {
    ...planWishWords(t),
    ...planEditWords(t),
    title: (dog: string): string => `Plan: ${dog}`,
    choose: 'Plan a session',
    chooseDog: 'With which dog?',
    planFor: (dog: string): string => `Plan a session for ${dog}`,
    plan: 'Plan',
    noDogs: 'First a dog: a name is enough.',
    planning: 'Working it out',
    failed: 'No plan could be worked out. What was planned before is still here; try again.',
    strip: {
      title: 'The plan in figures',
      minutes: minutesStrip,
      sides: sidesStrip,
      clean: cleanStrip,
      stops: stopsStrip,
      most: mostStrip,
    },
    allKept: 'Every rule of the trade is kept.',
    notKept: (n: number): string => (n === 1 ? 'One rule is not kept' : `${t.number(n)} rules are not kept`),
    nearest: 'It can’t be kept here: this is the nearest that can be had with this time, kit and record.',
    reps: 'The reps, in order',
    rep: (n: number): string => `Rep ${t.number(n)}`,
    noneMissed: 'no leg missed',
    legs: 'Not missed, leg by leg, in 100',
    step: (stretch: number | null): string => capital(steps.phrase(stretch)),
    before: 'Before it',
    why: 'Why (chances of good)',
    ifWrong: 'If it goes wrong',
    minutes: (n: number): string => t.count(Math.round(n), 'minute', 'minutes'),
    breakCard: 'play, water, shade',
    inMind: 'Have in mind',
    always: 'Before you go out',
    empty: {
      title: 'No session is planned',
      moreTime: (n: number): string => `Plan ${t.count(n, 'minute', 'minutes')}`,
      allKit: `Plan with as many ${t.dummies} as it takes`,
      weather: 'Change the weather',
      anything: 'Plan whatever is due',
    },
    work: 'Work this plan',
    carryOn: 'Carry on',
    print: 'Print the card',
    printed: {
      title: (dog: string, day: string): string => `${dog}, ${day}`,
      notes: 'Notes',
      whistle: (halts: string, blow: string): string => `${halts}, ${blow}`,
      minutes: (p50: number, p90: number): string =>
        `${Math.round(p50)} to ${Math.round(p90)} minutes, laying and walking among them`,
      chance: (inHundred: string): string => `${inHundred} in 100`,
      foot: 'Chances are that no leg is missed. The vet for the dog, the landowner for the ground: their word goes first.',
    },
    season: 'The season',
  };
}

export type PlanScreenWords = ReturnType<typeof planScreenWords>;
