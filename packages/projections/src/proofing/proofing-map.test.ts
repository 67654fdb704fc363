import { SKILLS, TEMPTATIONS } from '@sedgeline/engine/ability';
import type { Fact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { usualAsk } from '../standing/reference-asks.ts';
import { proofingOfDog } from './proofing-map.ts';

const DAY_MS = 86_400_000;
const START_MS = Date.parse('2026-03-01T09:00:00Z');
const NOW_MS = START_MS + 20 * DAY_MS;

const fact = (id: string, kind: string, day: number, minute: number, body: object): Fact => ({
  id,
  kind,
  at: new Date(START_MS + day * DAY_MS + minute * 60_000).toISOString(),
  body: { ...body },
});
const stop = (distanceM: number, temptation: string, grade: string, cause?: string) => ({
  skill: 'stop',
  ask: { distanceM, temptation },
  grade,
  ...(cause === undefined ? {} : { cause }),
});

/** Two days: in the paddock with a post and a placed dummy, then on the heath, where the handler spoilt one. */
const DAYS = [
  [
    'paddock',
    [
      stop(10, 'post', 'good'),
      stop(10, 'post', 'fair'),
      stop(30, 'placed-dummy', 'good'),
      stop(80, 'placed-dummy', 'missed'),
    ],
  ],
  ['heath', [stop(10, 'post', 'missed', 'unsure'), stop(30, 'thrown-dummy', 'missed', 'handler')]],
] as const;
const FACTS: readonly Fact[] = [
  fact('d', 'dog-added', -1, 0, { dog: 'd', name: 'Teal' }),
  ...['paddock', 'heath', 'marsh'].map((ground) =>
    fact(ground, 'ground-added', -1, 1, { ground, name: `the ${ground}` }),
  ),
  ...DAYS.flatMap(([ground, legs], day) => [
    fact(`s${day}`, 'session-opened', day, 0, { session: `s${day}`, dog: 'd', ground }),
    ...legs.map((leg, n) =>
      fact(`${day}-${n}`, 'rep-recorded', day, n + 1, {
        rep: `${day}-${n}`,
        session: `s${day}`,
        legs: [leg],
      }),
    ),
  ]),
];
function kennelOf(facts: readonly Fact[]) {
  const kennel = createKennel();
  kennel.add(facts);
  return kennel;
}

describe('the map of six stops', () => {
  const kennel = kennelOf(FACTS);
  const view = proofingOfDog(kennel.record, kennel.timeline(), 'd', 'stop', NOW_MS)!;
  const row = (temptation: (typeof TEMPTATIONS)[number]) =>
    view.temptations.find(({ of }) => of === temptation)!.cells;
  const ground = (name: string) =>
    view.grounds.find(({ of }) => (of.kind === 'ground' ? of.ground : of.kind) === name)!.cells;
  const NONE = { good: 0, fair: 0, missed: 0, excused: 0 };

  it('has every temptation, every ground of the record and new ground, tried or not', () => {
    expect(view.legs).toBe(6);
    expect(view.bands.map(({ to }) => to)).toEqual([20, 40, null]);
    expect(view.temptations.map(({ of }) => of)).toEqual([...TEMPTATIONS]);
    expect(view.grounds.map(({ of }) => (of.kind === 'ground' ? of.name : of.kind))).toEqual([
      'new-ground',
      'the heath',
      'the paddock',
      'the marsh',
    ]);
  });

  it('counts the legs of a cell by grade, those not held against the dog apart', () => {
    expect(row('post').map(({ counts }) => counts)).toEqual([
      { good: 1, fair: 1, missed: 1, excused: 0 },
      NONE,
      NONE,
    ]);
    expect(row('thrown-dummy')[1]).toMatchObject({ counts: { ...NONE, excused: 1 }, tried: 'excused' });
    expect(ground('heath').map(({ counts }) => counts)).toEqual([
      { ...NONE, missed: 1 },
      { ...NONE, excused: 1 },
      NONE,
    ]);
    expect(ground('marsh').map(({ tried }) => tried)).toEqual(['never', 'never', 'never']);
    // Both days were the first on their ground.
    expect(ground('new-ground').map(({ counts }) => counts)).toEqual([
      { good: 1, fair: 1, missed: 1, excused: 0 },
      { ...NONE, good: 1, excused: 1 },
      { ...NONE, missed: 1 },
    ]);
  });

  it('knows when a cell was last worked, and what was never tried', () => {
    expect(row('post')[0]!.lastWorkedMs).toBe(START_MS + DAY_MS + 60_000);
    expect(row('post')[1]).toMatchObject({ tried: 'never', lastWorkedMs: null });
    expect(row('placed-dummy').map(({ tried }) => tried)).toEqual(['never', 'yes', 'yes']);
  });

  it('calls beyond what nothing as hard ever went well at', () => {
    // Best done: a placed dummy at 30 m. Beyond: anything farther, and anything more tempting.
    expect(row('none').map(({ beyond }) => beyond)).toEqual([false, false, true]);
    expect(row('placed-dummy').map(({ beyond }) => beyond)).toEqual([false, false, true]);
    expect(row('thrown-dummy').map(({ beyond }) => beyond)).toEqual([true, true, true]);
    expect(ground('marsh').every(({ beyond }) => beyond)).toBe(true);
    expect(ground('paddock').map(({ beyond }) => beyond)).toEqual([false, false, true]);
  });

  it('states the chance that the program states for that ask, there and now', () => {
    const timeline = kennel.timeline();
    const at = { session: null, ground: 'heath', atMs: NOW_MS, repsSinceBreak: 0 };
    const ask = { ...usualAsk('stop'), distanceM: 30 };
    const { chance, interval90 } = timeline.filter.forecast(
      timeline.question('d', 'stop', ask, at, kennel.record),
    );
    expect(ground('heath')[1]!.now).toEqual({ chance: chance.good, interval90: interval90.good });
  });

  it('a harder cell has a smaller chance: farther, more tempting, newer', () => {
    for (const { cells } of view.temptations) {
      expect(cells[0]!.now.chance).toBeGreaterThan(cells[1]!.now.chance);
      expect(cells[1]!.now.chance).toBeGreaterThan(cells[2]!.now.chance);
    }
    expect(row('game')[0]!.now.chance).toBeLessThan(row('none')[0]!.now.chance);
    expect(ground('new-ground')[0]!.now.chance).toBeLessThan(ground('paddock')[0]!.now.chance);
    expect(ground('new-ground')).toMatchObject(ground('marsh').map(({ now }) => ({ now })));
  });
});

describe('other records', () => {
  it('legs with no ground named have a row of their own, and are on no new ground', () => {
    const bare = FACTS.filter(({ kind }) => kind !== 'ground-added').map(({ body, ...rest }) => {
      const { ground: _, ...without } = body as Record<string, unknown>;
      return { ...rest, body: without };
    }) as readonly Fact[];
    const kennel = kennelOf(bare);
    const { grounds } = proofingOfDog(kennel.record, kennel.timeline(), 'd', 'stop', NOW_MS)!;
    expect(grounds.map(({ of }) => of.kind)).toEqual(['new-ground', 'no-ground']);
    expect(grounds[0]!.cells.every(({ tried }) => tried === 'never')).toBe(true);
    expect(grounds[1]!.cells[0]!.counts).toEqual({ good: 1, fair: 1, missed: 1, excused: 0 });
  });

  it('every skill has a map, worked or not, with chances that are chances', () => {
    const kennel = kennelOf(FACTS);
    for (const skill of SKILLS) {
      const view = proofingOfDog(kennel.record, kennel.timeline(), 'd', skill, NOW_MS)!;
      for (const { cells } of [...view.temptations, ...view.grounds]) {
        expect(cells).toHaveLength(3);
        for (const { now } of cells) {
          expect(now.interval90[0]).toBeLessThan(now.chance);
          expect(now.interval90[1]).toBeGreaterThan(now.chance);
        }
      }
    }
    expect(proofingOfDog(kennel.record, kennel.timeline(), 'nobody', 'stop', NOW_MS)).toBeNull();
  });
});
