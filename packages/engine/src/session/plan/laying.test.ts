import { describe, expect, it } from 'vitest';
import { distanceBetweenM } from '../../ground/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { LAYING } from './duration-priors.ts';
import { layAfter } from './laying.ts';

const memory = (distanceM: number, more: LaidLeg['ask'] = {}): LaidLeg => ({
  skill: 'line',
  ask: { distanceM, temptation: 'placed-dummy', ...more },
});
const HOME: readonly LaidLeg[] = [
  { skill: 'pickup', ask: {} },
  { skill: 'delivery', ask: {} },
];
const stop: LaidLeg = { skill: 'stop', ask: { distanceM: 15, wayFraction: 0.5 } };
const names = (list: readonly { readonly thing: string }[]) => list.map(({ thing }) => thing);

describe('what is done on the ground before a rep', () => {
  it('walks out and back to put a dummy out, and reckons the minutes', () => {
    const { before, laysS } = layAfter([], [memory(30), ...HOME]);
    expect(before).toEqual([
      { do: 'walk', metres: 60 },
      { do: 'place', thing: 'asked', metres: 30 },
    ]);
    expect(laysS).toBeCloseTo(60 / LAYING.walkMPerS + LAYING.placeS, 9);
  });

  it('a dummy that was picked up is gone; one that was stopped short of lies there still', () => {
    expect(layAfter([], [memory(30), ...HOME]).leaves).toEqual([]);
    const stopped = layAfter([], [memory(30), stop]);
    expect(names(stopped.leaves)).toEqual(['asked']);
    // The same send straight through needs nothing more.
    expect(layAfter(stopped.leaves, [memory(30), ...HOME]).before).toEqual([]);
  });

  it('moves the send point rather than the dummy: five metres more is five metres to walk', () => {
    const { leaves } = layAfter([], [memory(30), stop]);
    const { before, layout } = layAfter(leaves, [memory(35), ...HOME]);
    expect(before).toEqual([{ do: 'walk', metres: 5 }]);
    expect(names(layout.things)).toEqual(['asked']);
  });

  it('lifts what is not wanted, so that what lies out is what the asks say', () => {
    const { leaves } = layAfter([], [memory(30, { otherDummies: 2, gapDeg: 60 }), ...HOME]);
    expect(names(leaves)).toEqual(['other-1', 'other-2']);
    const { before, layout } = layAfter(leaves, [{ skill: 'recall', ask: { distanceM: 10 } }]);
    expect(layout.things).toEqual([]);
    expect(before.filter((errand) => errand.do === 'lift').map(({ thing }) => thing)).toEqual([
      'other-1',
      'other-2',
    ]);
  });

  it('keeps names and distances of what stays', () => {
    const first = layAfter([], [memory(30, { otherDummies: 2, gapDeg: 60 }), stop]);
    const second = layAfter(first.leaves, [memory(30, { otherDummies: 2, gapDeg: 60 }), ...HOME]);
    expect(second.before).toEqual([]);
    for (const a of second.layout.things) {
      for (const b of second.layout.things) {
        const [was, is] = [a, b].map(({ thing }) => first.layout.things.find((one) => one.thing === thing)!);
        expect(distanceBetweenM(a, b)).toBeCloseTo(distanceBetweenM(was!, is!), 9);
      }
    }
  });

  it('throws a mark for every rep, and from no farther than a throw carries', () => {
    const mark: LaidLeg = { skill: 'mark', ask: { distanceM: 40, temptation: 'thrown-dummy' } };
    expect(layAfter([], [mark, ...HOME]).before).toEqual([
      { do: 'walk', metres: 2 * (40 - LAYING.throwM) },
      { do: 'throw', thing: 'asked', metres: 40 },
    ]);
    expect(layAfter([], [{ ...mark, ask: { distanceM: 20 } }, ...HOME]).before).toEqual([
      { do: 'throw', thing: 'asked', metres: 20 },
    ]);
  });

  it('sends nobody to lay out game', () => {
    expect(layAfter([], [{ skill: 'steady', ask: { temptation: 'game' } }]).before).toEqual([]);
  });
});
