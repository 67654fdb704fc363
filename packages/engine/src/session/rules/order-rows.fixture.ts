import type { Plan } from '../plan/plan.ts';
import {
  cast,
  changed,
  facts,
  finish,
  goodPlan,
  missing,
  planOf,
  rep,
  stopped,
  straight,
} from './hand-made-plan.fixture.ts';
import type { RuleRow } from './rule-row.fixture.ts';

const good = goodPlan();
const legsOf = (n: number, legs: Plan['reps'][number]['legs']) => changed(good, n, () => ({ legs }));

/** `reps` stopped or clean sends between a known first and a sure finish: "S" stopped, "C" straight through. */
const sends = (order: string) =>
  planOf([
    rep(1, 'check', straight()),
    ...[...order].map((kind, at) =>
      kind === 'S' ? rep(at + 2, 'vary', stopped(at % 2 ? 0.5 : 0.2)) : rep(at + 2, 'clean', straight()),
    ),
    finish(order.length + 2),
  ]);

/** Plans by hand, for order and sides. Limits are the contract's: common practice, no source. */
export const ORDER_ROWS: readonly RuleRow[] = [
  ['even-sides', 'one left, one right', good, null],
  ['even-sides', 'two left, one right', legsOf(2, cast('left')), null],
  [
    'even-sides',
    'three left, one right',
    changed(legsOf(2, cast('left')), 3, () => ({ legs: cast('left') })),
    {
      why: { code: 'sides-uneven', reps: [2, 3, 5], left: 3, right: 1 },
      mend: { code: 'turn-to-the-other-side', reps: [5], side: 'right' },
      could: true,
    },
  ],
  [
    'even-sides',
    'one side asked for alone',
    planOf([rep(1, 'check', cast('left')), rep(2, 'vary', cast('left')), finish(3)]),
    { why: { code: 'sides-uneven', left: 2, right: 0 }, could: false },
    facts({ skills: ['cast-left'] }),
  ],
  ['clean-runs-unpredictable', 'few sends, both kinds', good, null],
  [
    'clean-runs-unpredictable',
    'a clean send not marked',
    changed(good, 4, () => ({ clean: false })),
    { why: { code: 'clean-marked-wrongly', reps: [4] }, mend: { code: 'mark-by-its-legs' } },
  ],
  [
    'clean-runs-unpredictable',
    'a stopped send marked clean',
    changed(good, 2, () => ({ clean: true })),
    { why: { code: 'clean-marked-wrongly', reps: [2] } },
  ],
  ['clean-runs-unpredictable', 'seven stopped sends running', sends('SSSSSSS'), null],
  [
    'clean-runs-unpredictable',
    'eight stopped sends running',
    sends('SSSSSSSS'),
    {
      why: { code: 'no-clean-run', is: 0, limit: 1, count: 8 },
      mend: { code: 'run-clean', to: 1 },
      could: true,
    },
  ],
  // 10 sends at a share of 0.6: 6 - 2.5 sqrt(2.4) = 2.13, so three at least.
  [
    'clean-runs-unpredictable',
    'two clean in ten where the record wants 6',
    sends('SSCSSSSCSS'),
    { why: { code: 'too-few-clean-runs', is: 2, limit: 3 } },
    facts({ cleanShareWanted: 0.6 }),
  ],
  [
    'clean-runs-unpredictable',
    'three clean in ten where the record wants 6',
    sends('SSCSCSSSCS'),
    null,
    facts({ cleanShareWanted: 0.6 }),
  ],
  [
    'clean-runs-unpredictable',
    'turn and turn about',
    sends('SCSCSC'),
    {
      why: { code: 'order-can-be-guessed', reps: [2, 3, 4, 5, 6, 7] },
      mend: { code: 'draw-the-order-anew' },
    },
  ],
  ['clean-runs-unpredictable', 'every third', sends('SSCSSCSS'), { why: { code: 'order-can-be-guessed' } }],
  [
    'clean-runs-unpredictable',
    'every fourth',
    sends('SSSCSSSCSS'),
    { why: { code: 'order-can-be-guessed' } },
  ],
  [
    'clean-runs-unpredictable',
    'first the ones',
    sends('CCCSSSSS'),
    { why: { code: 'order-can-be-guessed' } },
  ],
  ['clean-runs-unpredictable', 'no round in it', sends('SCSSCCSS'), null],
  ['clean-runs-unpredictable', 'no stop at all', sends('CCCCCCCC'), null],
  [
    'clean-runs-unpredictable',
    'as in the last session',
    sends('SCSSCCSS'),
    { why: { code: 'order-as-before' } },
    facts({ lateOrders: [[true], [false, true, false, false, true, true, false, false, true]] }),
  ],
  ['vary-where-the-stop-comes', 'over 0.45 of the way', good, null],
  [
    'vary-where-the-stop-comes',
    'over 0.25 exactly',
    changed(
      changed(good, 3, () => ({ legs: stopped(0.55) })),
      5,
      () => ({ legs: stopped(0.4) }),
    ),
    null,
  ],
  [
    'vary-where-the-stop-comes',
    'over 0.24',
    changed(
      changed(good, 3, () => ({ legs: stopped(0.54) })),
      5,
      () => ({ legs: stopped(0.4) }),
    ),
    {
      why: { code: 'stops-in-one-place', reps: [2, 3, 5], limit: 0.25 },
      mend: { code: 'stop-elsewhere', reps: [2] },
      could: true,
    },
  ],
  ['vary-where-the-stop-comes', 'two stops in one place', sends('SCSCC'), null],
  [
    'vary-where-the-stop-comes',
    'three at the easy end, and a later one out of reach',
    planOf([1, 2, 3].map((n) => rep(n, 'vary', stopped(0.1)))),
    { why: { code: 'stops-in-one-place', is: 0 }, could: false },
    facts({ chances: (_plan, _at, legs) => legs.map(() => missing(0.36)) }),
  ],
  [
    'vary-where-the-stop-comes',
    'three at the easy end, and a later one within reach',
    planOf([1, 2, 3].map((n) => rep(n, 'vary', stopped(0.1)))),
    { why: { code: 'stops-in-one-place' }, mend: { reps: [3], to: 0.35 }, could: true },
    facts({ chances: (_plan, _at, legs) => legs.map(() => missing(0.35)) }),
  ],
];
