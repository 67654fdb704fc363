import type { Plan } from '../plan/plan.ts';
import { changed, facts, finish, goodPlan, leg, planOf, rep } from './hand-made-plan.fixture.ts';
import type { RuleRow } from './rule-row.fixture.ts';

const good = goodPlan();
const legsOf = (n: number, legs: Plan['reps'][number]['legs']) => changed(good, n, () => ({ legs }));

/** So many reps, alternately straight and from a sit, so many minutes in all. */
const long = (count: number, p50: number, more: Partial<Plan> = {}) =>
  planOf(
    Array.from({ length: count }, (_, at) =>
      at === count - 1 ? finish(count) : rep(at + 1, 'vary', [leg('recall', { distanceM: 20 })]),
    ),
    { minutes: 60, minutesExpected: { p50, p90: p50 * 1.3 }, ...more },
  );

const young = (ageMonths: number) => facts({ ageMonths });

const warm = (airC: number, humidityPct?: number) => facts({ weather: { airC, humidityPct } });

/** Plans by hand, for time, age and heat. Limits are the contract's: common practice, no source. */
export const TIME_ROWS: readonly RuleRow[] = [
  ['break', '12 reps in 12 minutes', long(12, 12), null],
  [
    'break',
    '13 reps',
    long(13, 11),
    {
      why: { code: 'too-long-without-break', reps: [13], count: 13 },
      mend: { code: 'put-in-a-break', reps: [7], to: 3 },
      could: true,
    },
  ],
  ['break', '13 reps with a break', long(13, 13, { breaks: [{ afterRep: 7, minutes: 3 }] }), null],
  [
    'break',
    '13 reps and a pause of half a minute',
    long(13, 11, { breaks: [{ afterRep: 7, minutes: 0.5 }] }),
    { why: { code: 'too-long-without-break' } },
  ],
  [
    'break',
    '13 reps and a break at the end',
    long(13, 14, { breaks: [{ afterRep: 13, minutes: 3 }] }),
    { why: { code: 'too-long-without-break' } },
  ],
  [
    'break',
    '12 minutes and a little',
    long(6, 12.1),
    { why: { code: 'too-long-without-break', reps: [6], count: 6 } },
  ],
  ['break', 'minutes not stated', long(6, Number.NaN), { why: { code: 'time-not-stated' } }],
  [
    'break',
    'long reps, as the record has them',
    long(6, 9),
    { why: { code: 'too-long-without-break', reps: [5], count: 5, minutes: 12.5 } },
    facts({ repMinutes: () => 2.5 }),
  ],
  ['fits-the-time', 'the minutes exactly', { ...good, minutes: 10.5 }, null],
  [
    'fits-the-time',
    'a tenth over',
    { ...good, minutes: 10.4 },
    {
      why: { code: 'over-the-time', is: 10.5, limit: 10.4 },
      mend: { code: 'drop-reps', to: 6 },
      could: true,
    },
  ],
  ['fits-the-time', 'reps of 25 s', long(6, 2.5), null],
  [
    'fits-the-time',
    'reps of 24.9 s',
    long(6, 2.49),
    {
      why: { code: 'reps-too-short', reps: [1, 2, 3, 4, 5, 6], limit: 25 },
      mend: { code: 'leave-reps-more-time', to: 25 },
      could: true,
    },
  ],
  [
    'fits-the-time',
    'breaks that leave reps no time',
    long(4, 4, { breaks: [{ afterRep: 2, minutes: 3 }] }),
    { why: { code: 'reps-too-short' } },
  ],
  [
    'fits-the-time',
    'one short rep by the record',
    good,
    { why: { code: 'reps-too-short', reps: [4], is: 24 } },
    facts({ repMinutes: ({ n }) => (n === 4 ? 0.4 : 1) }),
  ],
  [
    'fits-the-time',
    'no minutes stated',
    { ...good, minutesExpected: { p50: Number.NaN, p90: 9 } },
    { why: { code: 'time-not-stated' } },
  ],
  [
    'fits-the-time',
    'no time for a rep',
    { ...good, minutes: 0.4 },
    { why: { code: 'over-the-time' }, could: false },
  ],
  ['safe', 'a grown dog', legsOf(3, [leg('line', { distanceM: 120, obstacle: 3 })]), null, young(12)],
  [
    'safe',
    'a fence under a year',
    legsOf(3, [leg('line', { obstacle: 2 })]),
    {
      why: { code: 'obstacle-too-hard-for-age', reps: [3], is: 2, limit: 2 },
      mend: { code: 'lower-the-obstacle', to: 1 },
      could: true,
    },
    young(11.9),
  ],
  ['safe', 'a ditch under a year', legsOf(3, [leg('line', { obstacle: 1.9 })]), null, young(11.9)],
  ['safe', '80 m under a year', legsOf(3, [leg('line', { distanceM: 80 })]), null, young(11)],
  [
    'safe',
    '81 m under a year',
    legsOf(3, [leg('line', { distanceM: 81 })]),
    { why: { code: 'line-too-long-for-age', reps: [3], is: 81 }, mend: { code: 'shorten-the-line', to: 80 } },
    young(11),
  ],
  [
    'safe',
    'a fence in the fall-back',
    changed(good, 3, () => ({ easier: { legs: [leg('recall', { obstacle: 2 })] } })),
    { why: { code: 'obstacle-too-hard-for-age', reps: [3] } },
    young(8),
  ],
  ['safe', '12 minutes under six months', long(8, 12), null, young(5)],
  [
    'safe',
    'more under six months',
    long(8, 12.1),
    { why: { code: 'too-long-for-age', is: 12.1, limit: 12 }, mend: { code: 'drop-reps', to: 7 } },
    young(5),
  ],
  ['safe', 'more at six months', long(8, 12.1), null, young(6)],
  ['safe', '8 reps in 10 minutes at 30 C', long(8, 10), null, warm(30)],
  [
    'safe',
    '9 reps at 30 C',
    long(9, 10),
    { why: { code: 'too-much-for-the-heat', count: 9, limit: 8 }, mend: { code: 'drop-reps', to: 8 } },
    warm(30),
  ],
  [
    'safe',
    '10.1 minutes at 30 C',
    long(8, 10.1),
    { why: { code: 'too-much-for-the-heat', minutes: 10.1 } },
    warm(30),
  ],
  ['safe', '9 reps at 29.9 C', long(9, 10), null, warm(29.9, 69)],
  ['safe', '9 reps at 27 C and 70 %', long(9, 10), { why: { code: 'too-much-for-the-heat' } }, warm(27, 70)],
  ['safe', '9 reps at 27 C and 69 %', long(9, 10), null, warm(27, 69)],
  ['safe', '9 reps at 26.9 C and 90 %', long(9, 10), null, warm(26.9, 90)],
  ['safe', 'none in heat', planOf([]), null, warm(40)],
];
