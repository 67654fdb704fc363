import { describe, expect, it } from 'vitest';
import { joinCalls, SURE_FROM } from './join-calls.ts';
import { type SoundCall, soundCalls } from './sound-calls.ts';
import type { WantedCall } from './wanted-call.ts';

const blast = (startS: number, lastsS: number, pitchHz = 3000) => ({
  startS,
  endS: startS + lastsS,
  kind: lastsS >= 0.35 ? ('long' as const) : ('pip' as const),
  pitchHz,
});
const stop = (tappedAtS: number): WantedCall => ({
  kind: 'long',
  tappedAtS,
  lagS: 2,
  lagSpreadS: 1,
  cueTappedAtS: null,
});
const longs = (...starts: number[]): readonly SoundCall[] => soundCalls(starts.map((at) => blast(at, 0.6)));

/** Six stops at odd distances; the sound began at 5,000 s of the taps' clock and each was tapped 4 s after its whistle. */
const BLOWN_S = [60, 152, 205, 341, 390, 502];
const SIX = BLOWN_S.map((atS) => stop(5000 + atS + 4));

describe('calls', () => {
  it('take a second whistle as one with the first, and so a second run of pips; another pitch as another', () => {
    const calls = soundCalls(
      [
        blast(10, 0.5),
        blast(12, 0.5),
        blast(30, 0.15),
        blast(30.4, 0.15),
        blast(30.8, 0.15),
        blast(33, 0.15),
        blast(33.3, 0.15),
        blast(13, 0.5, 4000),
        blast(60, 0.2),
      ],
      [{ timeS: 40 }],
    );
    expect(calls.map(({ kind, startS, count }) => [kind, startS, count])).toEqual([
      ['long', 10, 2],
      ['long', 13, 1],
      ['pips', 30, 5],
      ['click', 40, 1],
      ['pip', 60, 1],
    ]);
  });
});

describe('joining', () => {
  it('finds the clock of a sound that nobody dated, by the pattern of its blasts', () => {
    const joined = joinCalls({ wants: SIX, calls: longs(...BLOWN_S), lengthS: 600, starts: null, own: null });
    expect(joined.wants.map(([best]) => best?.call)).toEqual([0, 1, 2, 3, 4, 5]);
    for (const [best] of joined.wants) expect(best?.sureness).toBeGreaterThan(SURE_FROM);
    // The clock with the thumb: 4 s of delay less the 2 s that a stop takes.
    expect(Math.abs(joined.shiftS - 5002)).toBeLessThan(2);
  });

  it('is not sure where every stop is as far from the next: any whole step fits', () => {
    const even = [0, 1, 2, 3, 4, 5].map((n) => 100 + 60 * n);
    const wants = even.slice(0, 5).map((atS) => stop(5000 + atS + 4));
    const { wants: found } = joinCalls({
      wants,
      calls: longs(...even),
      lengthS: 600,
      starts: null,
      own: null,
    });
    for (const [best] of found) expect(best?.sureness).toBeLessThan(SURE_FROM);
  });

  it('leaves out a rep whose whistle is not there, and a blast that no rep wants', () => {
    const there = BLOWN_S.filter((_, n) => n !== 2);
    const { wants } = joinCalls({
      wants: SIX,
      calls: longs(...there, 270),
      lengthS: 600,
      starts: { atS: 5000, withinS: 2 },
      own: null,
    });
    expect(wants[2]?.[0]?.sureness ?? 0).toBeLessThan(0.5);
    expect(wants[3]?.[0]?.call).toBe(3);
    expect(wants.some((all) => all.some(({ call, sureness }) => call === 2 && sureness > 0.5))).toBe(false);
  });

  it('takes the blast of the own whistle of two that fit as well', () => {
    const calls = soundCalls([blast(60, 0.6, 4100), blast(60.3, 0.6, 3000)]);
    const own = { pitchHz: 3000, spread: 0.015 };
    const starts = { atS: 5000, withinS: 2 };
    const { wants } = joinCalls({ wants: [stop(5064)], calls, lengthS: 120, starts, own });
    expect(calls[wants[0]?.[0]?.call ?? 0]?.pitchHz).toBe(3000);
    const other = joinCalls({
      wants: [stop(5064)],
      calls,
      lengthS: 120,
      starts,
      own: { ...own, pitchHz: 4100 },
    });
    expect(calls[other.wants[0]?.[0]?.call ?? 1]?.pitchHz).toBe(4100);
  });

  it('takes by two taps the blast that either tap alone would leave open', () => {
    const calls = longs(60, 75);
    const starts = { atS: 5000, withinS: 2 };
    const surenessOf = (cueTappedAtS: number | null) => {
      const want = { ...stop(5080), cueTappedAtS };
      return joinCalls({ wants: [want], calls, lengthS: 120, starts, own: null }).wants[0] ?? [];
    };
    const [alone] = surenessOf(null);
    const [early] = surenessOf(5062);
    expect(alone?.call).toBe(1);
    expect(early?.call).toBe(0);
    // A tap where one alone has it adds to that.
    const [both] = surenessOf(5077);
    expect(both?.call).toBe(1);
    expect(both?.sureness).toBeGreaterThan(alone?.sureness ?? 1);
  });

  it('joins a click to the rep that was marked, and never to a stop', () => {
    const calls = soundCalls([blast(60, 0.6)], [{ timeS: 63 }]);
    const click: WantedCall = {
      kind: 'click',
      tappedAtS: 5066,
      lagS: 4,
      lagSpreadS: 4,
      cueTappedAtS: null,
    };
    const starts = { atS: 5000, withinS: 2 };
    const { wants } = joinCalls({ wants: [stop(5065), click], calls, lengthS: 120, starts, own: null });
    expect(wants.map((all) => all.map(({ call }) => call))).toEqual([[0], [1]]);
  });

  it('has nothing to say of nothing, and refuses a sound of no length', () => {
    const none = { wants: SIX, calls: [], lengthS: 60, starts: null, own: null };
    expect(joinCalls(none).wants).toEqual(SIX.map(() => []));
    expect(joinCalls({ ...none, wants: [], calls: longs(1) }).wants).toEqual([]);
    expect(() => joinCalls({ ...none, lengthS: 0 })).toThrow(RangeError);
  });
});

describe('among others with the same whistle', () => {
  const own = { pitchHz: 3000, spread: 0.015 };
  const starts = { atS: 5000, withinS: 2 };
  const others = [20, 90, 120, 180, 230, 260, 300, 420, 450, 540];
  it('is crowded where most blasts of it are nobody’s, and not where they are of another pitch', () => {
    const joined = (pitchHz: number) => {
      const calls = soundCalls([
        ...BLOWN_S.map((atS) => blast(atS, 0.6)),
        ...others.map((atS) => blast(atS, 0.6, pitchHz)),
      ]);
      return joinCalls({ wants: SIX, calls, lengthS: 600, starts, own }).isCrowded;
    };
    expect([joined(3000), joined(4100)]).toEqual([true, false]);
  });

  it('takes five of eleven that are nobody’s for the handler’s own where nobody else is heard, and for others’ where somebody is', () => {
    const his = [...BLOWN_S, ...others.slice(0, 5)].map((atS) => blast(atS, 0.6));
    const strangers = [40, 75, 110, 265, 285, 320, 440, 470, 560, 580].map((atS) => blast(atS, 0.6, 4100));
    const isCrowded = (blasts: Parameters<typeof soundCalls>[0]) =>
      joinCalls({ wants: SIX, calls: soundCalls(blasts), lengthS: 600, starts, own }).isCrowded;
    expect([isCrowded(his), isCrowded([...his, ...strangers])]).toEqual([false, true]);
  });
});
