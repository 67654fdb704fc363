import { stopAtPlace, usualStopConditions } from '@sedgeline/engine/whistle';
import { describe, expect, it } from 'vitest';
import { foldRecord } from '../record/record-builder.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { stopConditionsOfDog } from './stop-conditions-of-dog.ts';

const DAY = { handler: null, airC: null } as const;

function stops(latenciesS: readonly number[], more: Readonly<Record<string, unknown>> = {}) {
  const day = new TrainingDay('2026-03-01T09:00:00Z').dog('wren', more).open('s', 'wren');
  for (const latencyS of latenciesS) {
    day.write('rep-recorded', {
      rep: `r${day.facts.length}`,
      session: 's',
      legs: [{ skill: 'stop', ask: { distanceM: 30, wayFraction: 0.5 }, grade: 'good', latencyS }],
    });
  }
  return foldRecord(day.facts);
}

describe('what the place of a stop depends on', () => {
  it('is the usual for a dog that nobody timed', () => {
    expect(stopConditionsOfDog(stops([]), 'wren', DAY)).toEqual(usualStopConditions);
  });

  it('takes run speed, air and the handler from the record', () => {
    const day = new TrainingDay('2026-03-01T09:00:00Z')
      .dog('wren', { runSpeedMPerS: 7 })
      .write('handler-added', { handler: 'h', name: 'h', reactionS: 0.5 });
    const at = stopConditionsOfDog(foldRecord(day.facts), 'wren', { handler: 'h', airC: 2 });
    expect(at).toEqual({ ...usualStopConditions, runSpeedMPerS: 7, reactionHandlerS: 0.5, airC: 2 });
  });

  it('learns a slow reaction from timed stops, so that the whistle goes sooner', () => {
    // At 5 m/s and 6 m/s2 braking takes 0.833 s; the sound needs under 0.1 s: 1.7 s leave a reaction near 0.8 s.
    const slow = stopConditionsOfDog(stops(Array.from({ length: 20 }, () => 1.7)), 'wren', DAY);
    expect(slow.reactionDogS).toBeGreaterThan(0.65);
    expect(slow.reactionDogS).toBeLessThan(0.85);
    const blow = (at: typeof slow) => stopAtPlace(30, at).blowWhenDogAtM;
    expect(blow(slow)).toBeLessThan(blow(usualStopConditions) - 1);
    const few = stopConditionsOfDog(stops([1.7]), 'wren', DAY);
    expect(few.reactionDogS).toBeGreaterThan(usualStopConditions.reactionDogS);
    expect(few.reactionDogS).toBeLessThan(slow.reactionDogS);
  });

  it('leaves out a time that is less than the braking', () => {
    expect(stopConditionsOfDog(stops([0.2, 0.3]), 'wren', DAY)).toEqual(usualStopConditions);
  });
});
