import { inHundred } from './chances.ts';
import { raisedThings } from './raised-things.ts';
import type { RuleWhy, RuleWhyCode } from './rule-codes.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "Rep 4", "Reps 2 and 3"; "The plan" where no rep is named. */
export function repNames(t: Tongue, reps: readonly number[]): string {
  if (reps.length === 0) return 'The plan';
  return `${reps.length === 1 ? 'Rep' : 'Reps'} ${t.list(reps.map((n) => t.number(n)))}`;
}

/** Why a rule of the trade is not kept, one plain sentence for each code; a missing figure leaves its part out. */
export function ruleWhyWords(
  t: Tongue,
  trade: TradeWords,
): Readonly<Record<RuleWhyCode, (w: RuleWhy) => string>> {
  const things = raisedThings(t, trade);
  const reps = (w: RuleWhy): string => repNames(t, w.reps);
  /** The verb that goes with the reps. */
  const does = (w: RuleWhy, one: string, many: string): string => (w.reps.length > 1 ? many : one);
  const counted = (n: number): string => SMALL[n] ?? t.number(n);
  const listed = (w: RuleWhy): string => (w.fields?.length ? `: ${things(w.fields, w.to)}` : '');
  const chance = (w: RuleWhy, wanted: string): string =>
    w.is === undefined || w.limit === undefined
      ? ''
      : `: ${inHundred(w.is)} in 100, where ${inHundred(w.limit)} ${wanted}`;
  /** Whole minutes where that tells the two apart, tenths where it does not. */
  const minutes = (n: number, beside = n): string =>
    Math.round(n) === Math.round(beside) && n !== beside
      ? `${t.number(n, 1)} minutes`
      : t.count(Math.round(n), 'minute', 'minutes');
  const metres = (n: number | undefined): string => (n === undefined ? 'too far' : t.lengthInWords(n));

  return {
    'no-reps': () => 'There is no rep in this plan.',
    'nothing-known-yet': (w) => `${reps(w)} ${does(w, 'asks', 'ask')} something that never went well yet.`,
    'first-raises': (w) =>
      `${reps(w)} already ${does(w, 'asks', 'ask')} more than went well lately${listed(w)}.`,
    'first-not-sure': (w) => `${reps(w)} is not sure enough to begin with${chance(w, 'is wanted')}.`,
    'raises-too-much': (w) => {
      const count = w.fields?.length ? `${counted(w.fields.length)} things` : 'more than one thing';
      return `${reps(w)} ${does(w, 'raises', 'raise')} ${does(w, count, 'more than one thing')}${w.reps.length > 1 ? '' : listed(w)}.`;
    },
    'raises-nothing': (w) =>
      `${reps(w)} ${does(w, 'is there to raise one thing, and raises', 'are there to raise one thing each, and raise')} none.`,
    'beyond-the-easy-end': (w) =>
      `${reps(w)} ${does(w, 'asks', 'ask')} more than the easy end of something that never went well yet${w.reps.length > 1 ? '' : listed(w)}.`,
    'sides-uneven': (w) =>
      w.left === undefined || w.right === undefined
        ? 'The sides are not even.'
        : `The sides are not even: ${t.count(w.left, 'cast', 'casts')} to the left, ${t.number(w.right)} to the right.`,
    'clean-marked-wrongly': (w) =>
      `${reps(w)} ${does(w, 'is', 'are')} not marked as ${does(w, 'it is', 'they are')} run: a send without a stop is one straight through.`,
    'no-clean-run': (w) =>
      `${w.count === undefined ? 'Many sends' : t.count(w.count, 'send', 'sends')}, and none straight through: the dog will begin to expect the whistle.`,
    'too-few-clean-runs': (w) =>
      `Too few sends straight through${w.is === undefined || w.limit === undefined ? '' : `: ${t.number(w.is)}, where this dog needs ${t.number(w.limit)}`}.`,
    'order-can-be-guessed': () => 'The dog can learn from the order which send is stopped.',
    'order-as-before': () => 'Stops and runs straight through come in the order of an earlier session.',
    'stops-in-one-place': () =>
      'The stops come at nearly the same place, so the dog will stop by the place and not on the whistle.',
    'too-long-without-break': (w) => {
      const parts = [
        ...(w.count === undefined ? [] : [t.count(w.count, 'rep', 'reps')]),
        ...(w.minutes === undefined ? [] : [minutes(w.minutes)]),
      ];
      return parts.length === 0
        ? 'It goes on too long without a break.'
        : `${parts.join(', ')} without a break by the end of rep ${t.number(w.reps[0] ?? 0)}.`;
    },
    'last-is-no-finish': (w) => `${reps(w)} comes last and is no finish.`,
    'finish-not-sure': (w) => `${reps(w)} is not sure enough to finish on${chance(w, 'is wanted')}.`,
    'over-the-time': (w) =>
      w.is === undefined || w.limit === undefined
        ? 'It takes longer than there is time.'
        : `It takes ${minutes(w.is, w.limit)}, longer than the time there is: ${minutes(w.limit, w.is)}.`,
    'reps-too-short': (w) =>
      `${reps(w)} ${does(w, 'has', 'have')} too little time${w.limit === undefined ? '' : `: less than ${t.number(w.limit)} seconds`}.`,
    'time-not-stated': () => 'How long it takes is not known.',
    'out-of-reach': (w) => `${reps(w)} ${does(w, 'is', 'are')} out of reach${chance(w, 'is the least')}.`,
    'chance-not-stated': (w) => `How ${reps(w).toLowerCase()} will go is not known.`,
    'too-long-for-age': (w) =>
      w.is === undefined || w.limit === undefined
        ? 'That is too long for so young a dog.'
        : `${minutes(w.is, w.limit)} is too long for so young a dog: ${minutes(w.limit, w.is)} at most, and the vet’s word goes first.`,
    'line-too-long-for-age': (w) =>
      `${reps(w)} ${does(w, 'runs', 'run')} a dog under a year ${metres(w.is)}${w.limit === undefined ? '' : `: ${metres(w.limit)} at most`}.`,
    'obstacle-too-hard-for-age': (w) =>
      `${reps(w)} ${does(w, 'asks', 'ask')} a dog under a year for ${w.is === undefined ? 'too much in its way' : trade.obstacle(w.is)}.`,
    'too-much-for-the-heat': (w) => {
      const what =
        w.count !== undefined
          ? `: ${t.count(w.count, 'rep', 'reps')}${w.limit === undefined ? '' : `, ${t.number(w.limit)} at most`}`
          : w.minutes !== undefined && w.limit !== undefined
            ? `: ${minutes(w.minutes, w.limit)}, ${t.number(w.limit)} at most`
            : '';
      return `Too much for the heat${what}. None at all may be right.`;
    },
  };
}
