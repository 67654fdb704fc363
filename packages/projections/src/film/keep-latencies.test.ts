import { validateFact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { foldRecord } from '../record/record-builder.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { filmBenchView } from './film-bench-view.ts';
import { latencyFact } from './keep-latencies.ts';

const mark = (id: string, what: string, atS: number) => ({
  mark: id,
  film: 'm',
  rep: 'a',
  what,
  atS,
  frameS: 0.04,
});

/** A stop that was slow, blown at 12 s, halted at 13.004 s: 1.004 s, kept as 1 s. */
function filmedDay(): TrainingDay {
  return new TrainingDay('2026-03-01T08:00:00Z')
    .dog('wren')
    .open('s', 'wren')
    .rep(
      [
        { skill: 'line', ask: { distanceM: 30 } },
        { skill: 'stop', grade: 'fair', cause: 'handler' },
      ],
      { rep: 'a' },
    )
    .write('film-linked', { film: 'm', session: 's', name: 'hedge.mp4', bytes: 900 })
    .write('film-marked', mark('k1', 'whistle', 12))
    .write('film-marked', mark('k2', 'halt', 13.004));
}

const repOf = (day: TrainingDay) => foldRecord(day.facts).sessions[0]!.reps[0]!;
const markedOf = (day: TrainingDay) => filmBenchView(foldRecord(day.facts), 's')!.films[0]!.marked;

describe('keeping a halt latency with its leg', () => {
  it('is found, and nothing is written by itself', () => {
    const day = filmedDay();
    expect(markedOf(day)).toMatchObject([{ rep: 'a', found: [{ leg: 1, latencyS: 1, before: null }] }]);
    expect(repOf(day).legs[1]?.latencyS).toBeUndefined();
  });

  it('once kept it stands in the record, all else as it was, and is found no more', () => {
    const day = filmedDay();
    const { legs } = repOf(day);
    const fact = latencyFact('a', legs, [{ leg: 1, latencyS: 1 }]);
    day.write(fact.kind, fact.body);
    expect(validateFact(day.facts.at(-1)).ok).toBe(true);
    expect(repOf(day).legs).toEqual([legs[0], { ...legs[1], latencyS: 1 }]);
    expect(markedOf(day)[0]?.found).toEqual([]);
  });

  it('is taken out again', () => {
    const day = filmedDay();
    const { legs } = repOf(day);
    const kept = latencyFact('a', legs, [{ leg: 1, latencyS: 1 }]);
    day.write(kept.kind, kept.body);
    const out = latencyFact('a', repOf(day).legs, [{ leg: 1, latencyS: null }]);
    day.write(out.kind, out.body);
    expect(repOf(day).legs).toEqual(legs);
  });

  it('a mark that is moved gives another latency, with what was kept before', () => {
    const day = filmedDay();
    const fact = latencyFact('a', repOf(day).legs, [{ leg: 1, latencyS: 1 }]);
    day.write(fact.kind, fact.body).write('film-marked', mark('k2', 'halt', 12.5));
    expect(markedOf(day)[0]?.found).toEqual([{ leg: 1, latencyS: 0.5, before: 1 }]);
  });

  it('longer than a minute is no latency', () => {
    const day = filmedDay().write('film-marked', mark('k2', 'halt', 72.04));
    expect(markedOf(day)[0]?.found).toEqual([]);
    expect(markedOf(day)[0]?.figures.halts[0]?.latency?.s).toBeCloseTo(60.04, 9);
  });
});
