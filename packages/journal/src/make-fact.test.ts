import { describe, expect, it } from 'vitest';
import { newClock } from './clock.ts';
import { makeFact } from './make-fact.ts';

const parts = {
  kind: 'break-taken',
  body: { session: 's1', minutes: 3 },
  atMs: 1772355600000,
  clock: newClock('phone'),
  newId: () => 'f1',
} as const;

describe('makeFact', () => {
  it('stamps id, time, clock and device, and gives the clock on', () => {
    const first = makeFact({ ...parts, by: 'h1' });
    expect(first.fact).toEqual({
      id: 'f1',
      kind: 'break-taken',
      at: '2026-03-01T09:00:00.000Z',
      body: { session: 's1', minutes: 3 },
      clock: '1772355600000-0000-phone',
      device: 'phone',
      by: 'h1',
    });
    expect(makeFact({ ...parts, clock: first.clock }).fact.clock).toBe('1772355600000-0001-phone');
  });

  it('orders what is written down afterwards by when it was written down', () => {
    const { fact } = makeFact({ ...parts, nowMs: 1772355660000 });
    expect([fact.at, fact.clock]).toEqual(['2026-03-01T09:00:00.000Z', '1772355660000-0000-phone']);
  });

  it("refuses a caller's bug", () => {
    expect(() => makeFact({ ...parts, body: { session: '', minutes: 3 } })).toThrow(/body\.session/);
    expect(() => makeFact({ ...parts, atMs: Number.NaN })).toThrow(RangeError);
    expect(() => makeFact({ ...parts, newId: () => '' })).toThrow(RangeError);
  });
});
