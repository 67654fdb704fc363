import { raisedThings } from './raised-things.ts';
import type { RuleMend, RuleMendCode, RuleName, RuleVerdict } from './rule-codes.ts';
import { repNames, ruleWhyWords } from './rule-whys.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';

/** The rules in the strip over a plan. */
const TITLES: Readonly<Record<RuleName, string>> = {
  'known-first': 'Known things first',
  'one-thing-at-a-time': 'One thing at a time',
  'even-sides': 'Both sides even',
  'clean-runs-unpredictable': 'No telling which send is stopped',
  'vary-where-the-stop-comes': 'The stop comes in different places',
  break: 'A break in time',
  'finish-well': 'A good finish',
  'fits-the-time': 'Fits the time',
  'within-reach': 'Within reach',
  safe: 'Safe for age and heat',
};

/** The rules of the trade in words: their names, why one is not kept, and what would mend it. */
export function ruleWords(t: Tongue, trade: TradeWords) {
  const things = raisedThings(t, trade);
  const whys = ruleWhyWords(t, trade);
  /** "rep 4", "reps 2 and 3", in the middle of a sentence. */
  const reps = (m: RuleMend): string => repNames(t, m.reps).toLowerCase();
  const atMost = (m: RuleMend, text: (to: number) => string, without: string): string =>
    m.to === undefined ? without : text(m.to);

  const mends: Readonly<Record<RuleMendCode, (m: RuleMend) => string>> = {
    'begin-with-known': () => 'Begin with something that went well lately.',
    'keep-one-thing': () => 'Keep one.',
    'call-it-vary': () => 'Raise one thing, or do it only for the change.',
    'to-the-easy-end': (m) =>
      m.fields?.length ? `Begin at the easy end: without ${things(m.fields)}.` : 'Begin at the easy end.',
    'turn-to-the-other-side': (m) => `Cast to the ${m.side ?? 'other side'} in ${reps(m)}.`,
    'mark-by-its-legs': () => 'Mark it as it is run.',
    'run-clean': (m) =>
      atMost(
        m,
        (to) => `Run ${t.number(to)} of them straight through, at a place nobody can tell.`,
        'Run more of them straight through.',
      ),
    'draw-the-order-anew': () => 'Draw the order again.',
    'stop-elsewhere': (m) =>
      `Stop the dog elsewhere in ${reps(m)}${atMost(m, (to) => `: ${t.number(to * 100)} in 100 of the way out`, '')}.`,
    'put-in-a-break': (m) =>
      `Take a break after ${reps(m)}${atMost(m, (to) => `, ${t.count(Math.round(to), 'minute', 'minutes')}`, '')}.`,
    'end-with-known': () => 'End with something sure.',
    'drop-reps': (m) =>
      atMost(
        m,
        (to) => (to < 1 ? 'Leave it for today.' : `Drop some: ${t.count(to, 'rep', 'reps')} will do.`),
        'Drop some.',
      ),
    'leave-reps-more-time': () => 'Leave each its time, with fewer of them.',
    'take-the-easier': (m) => `Take the easier way in ${reps(m)}.`,
    'state-it-anew': () => 'Have the plan worked out again.',
    'shorten-the-line': (m) =>
      atMost(m, (to) => `Shorten it to ${t.lengthInWords(to)} or less.`, 'Shorten it.'),
    'lower-the-obstacle': (m) =>
      atMost(m, (to) => `No more than ${trade.obstacle(to)}.`, 'Take it out of the way.'),
  };

  return {
    title: (rule: RuleName): string => TITLES[rule],
    /** Why a rule is not kept and what would mend it; a kept rule is said by its name alone. */
    sentence: ({ rule, kept, why, mend }: RuleVerdict): string =>
      kept || why === undefined
        ? `${TITLES[rule]}.`
        : [whys[why.code](why), ...(mend === undefined ? [] : [mends[mend.code](mend)])].join(' '),
  };
}

export type RuleWords = ReturnType<typeof ruleWords>;
