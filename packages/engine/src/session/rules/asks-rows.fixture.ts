import type { Plan } from '../plan/plan.ts';
import { changed, facts, goodPlan, leg, missing, stopped, straight } from './hand-made-plan.fixture.ts';
import type { RuleRow } from './rule-row.fixture.ts';

const good = goodPlan();
const legsOf = (n: number, legs: Plan['reps'][number]['legs']) => changed(good, n, () => ({ legs }));

const firstLegs = (missed: number) => straight().map((each) => ({ ...each, chance: missing(missed) }));

const easy = { distanceM: 40 } as const;

/** Plans by hand, for what is asked: known first, one thing at a time, within reach, finishing well. Limits are the contract's: common practice, no source. */
export const ASKS_ROWS: readonly RuleRow[] = [
  ['known-first', 'known and sure', good, null],
  ['known-first', '0.85 exactly', legsOf(1, firstLegs(0.15)), null],
  [
    'known-first',
    'a hair under 0.85',
    legsOf(1, firstLegs(0.151)),
    {
      why: { code: 'first-not-sure', reps: [1], is: 1 - 0.151, limit: 0.85 },
      mend: { code: 'begin-with-known' },
    },
  ],
  [
    'known-first',
    'a metre farther than ever went well',
    legsOf(1, [leg('line', { distanceM: 41 })]),
    {
      why: { code: 'first-raises', reps: [1], fields: ['distanceM'] },
      mend: { code: 'begin-with-known', reps: [1] },
    },
  ],
  [
    'known-first',
    'a skill that never went well',
    legsOf(1, [leg('hunt', {}, 0.05)]),
    { why: { code: 'nothing-known-yet', reps: [1] } },
  ],
  [
    'known-first',
    'a dog without a record could not have kept it',
    good,
    { why: { code: 'nothing-known-yet' }, could: false },
    facts({ successes: new Map() }),
  ],
  [
    'known-first',
    'a known chain that would have done',
    legsOf(1, firstLegs(0.2)),
    { why: { code: 'first-not-sure' }, could: true },
    facts({
      known: [[{ skill: 'recall', ask: {} }]],
      chances: (_plan, _at, legs) => legs.map(() => missing(0.15)),
    }),
  ],
  ['one-thing-at-a-time', 'one later stop on the same line is one thing', good, null],
  [
    'one-thing-at-a-time',
    'two fields of one leg',
    legsOf(3, [leg('line', { distanceM: 50, cover: 1 })]),
    {
      why: { code: 'raises-too-much', reps: [3], fields: ['distanceM', 'cover'], is: 2, limit: 1 },
      mend: { code: 'keep-one-thing', reps: [3] },
      could: true,
    },
  ],
  [
    'one-thing-at-a-time',
    'two fields over the chain',
    legsOf(3, [leg('line', { distanceM: 50 }), leg('pickup', { temptation: 'thrown-dummy' })]),
    {
      why: {
        code: 'raises-too-much',
        fields: ['distanceM', 'temptation'],
        to: { distanceM: 50, temptation: 'thrown-dummy' },
      },
    },
  ],
  [
    'one-thing-at-a-time',
    'one field in two legs is one thing',
    legsOf(3, [leg('line', { distanceM: 40, cover: 1 }), leg('pickup', { cover: 1 })]),
    null,
  ],
  [
    'one-thing-at-a-time',
    'two things under another name',
    legsOf(4, [leg('line', { distanceM: 50, cover: 1 })]),
    { why: { code: 'raises-too-much', reps: [4] } },
  ],
  [
    'one-thing-at-a-time',
    'a build that raises nothing',
    legsOf(3, stopped(0.5)),
    { why: { code: 'raises-nothing', reps: [3] }, mend: { code: 'call-it-vary', reps: [3] } },
  ],
  [
    'one-thing-at-a-time',
    'an earlier rep of the plan is a base: 50 m, then 50 m in cover',
    changed(
      changed(legsOf(3, [leg('line', { distanceM: 50 })]), 4, () => ({
        legs: [leg('line', { distanceM: 50, cover: 1 })],
      })),
      4,
      () => ({ purpose: 'build' }),
    ),
    null,
  ],
  [
    'one-thing-at-a-time',
    'a base older than the last ten successes is none',
    legsOf(4, [leg('line', { distanceM: 60, cover: 1 })]),
    { why: { code: 'raises-too-much', reps: [4] } },
    facts({
      successes: new Map([
        ...facts().successes,
        ['line', [{ distanceM: 60, cover: 1 }, ...Array.from({ length: 10 }, () => easy)]],
      ]),
    }),
  ],
  [
    'one-thing-at-a-time',
    'of bases that tie, the one of least stretch',
    legsOf(3, [leg('line', { distanceM: 40, cover: 1 }), leg('pickup', { cover: 1 })]),
    { why: { code: 'raises-too-much', fields: ['distanceM', 'cover'] } },
    facts({
      successes: new Map([...facts().successes, ['line', [{ distanceM: 30, cover: 1 }, easy]]]),
      // Ten metres are less than a step of cover.
      stretch: (_skill, now, then) => ((now.distanceM ?? 5) > (then.distanceM ?? 5) ? 0.2 : 0.5),
    }),
  ],
  ['one-thing-at-a-time', 'a new skill at its easy end', legsOf(3, [leg('hunt')]), null],
  [
    'one-thing-at-a-time',
    'a new skill beyond its easy end',
    legsOf(3, [leg('hunt', { cover: 2 })]),
    {
      why: { code: 'beyond-the-easy-end', reps: [3], fields: ['cover'] },
      mend: { code: 'to-the-easy-end', fields: ['cover'] },
    },
  ],
  ['finish-well', 'a sure finish', good, null],
  ['finish-well', '0.85 exactly', legsOf(7, [leg('recall', {}, 0.15)]), null],
  [
    'finish-well',
    'one leg a hair under',
    legsOf(7, [leg('recall', {}, 0.05), leg('delivery', {}, 0.151)]),
    { why: { code: 'finish-not-sure', reps: [7], limit: 0.85 }, mend: { code: 'end-with-known', reps: [7] } },
  ],
  [
    'finish-well',
    'sure, but no finish',
    changed(good, 7, () => ({ purpose: 'vary' })),
    { why: { code: 'last-is-no-finish', reps: [7] }, could: true },
  ],
  [
    'finish-well',
    'another rep of the plan would have done',
    legsOf(7, [leg('recall', {}, 0.3)]),
    { why: { code: 'finish-not-sure' }, could: true },
    facts({ chances: (_plan, _at, legs) => legs.map(() => missing(0.1)) }),
  ],
  [
    'finish-well',
    'a last rep that is locked',
    legsOf(7, [leg('recall', {}, 0.3)]),
    { why: { code: 'finish-not-sure' }, could: false },
    facts({ locked: [7], chances: (_plan, _at, legs) => legs.map(() => missing(0.1)) }),
  ],
  ['within-reach', 'all within reach', good, null],
  ['within-reach', '0.65 exactly', legsOf(3, stopped(0.75, 0.35)), null],
  [
    'within-reach',
    'a hair under 0.65',
    legsOf(3, stopped(0.75, 0.351)),
    {
      why: { code: 'out-of-reach', reps: [3], is: 1 - 0.351, limit: 0.65 },
      mend: { code: 'take-the-easier', reps: [3] },
      could: true,
    },
  ],
  [
    'within-reach',
    'nor its fall-back',
    changed(legsOf(3, stopped(0.75, 0.4)), 3, () => ({ easier: { legs: [leg('line', {}, 0.4)] } })),
    { why: { code: 'out-of-reach' }, mend: { code: 'drop-reps', reps: [3], to: 6 }, could: true },
  ],
  [
    'within-reach',
    'a chance that is none',
    legsOf(3, stopped(0.75, Number.NaN)),
    { why: { code: 'chance-not-stated', reps: [3] } },
  ],
  ['within-reach', 'a rep without legs', legsOf(3, []), { why: { code: 'chance-not-stated', reps: [3] } }],
];
