import { describe, expect, it } from 'vitest';
import {
  createAbilityFilter,
  EASY_CONTEXT,
  GRADES,
  type LegQuestion,
  type Skill,
} from '../../ability/index.ts';
import { seededRandom } from '../../numeric/index.ts';
import type { NextInput } from '../next/session-state.ts';
import { PlanRecord } from './plan-moment.ts';

const question = (skill: Skill, ask: LegQuestion['ask'], daysSinceWorked = 0): LegQuestion => ({
  dog: 'wren',
  skill,
  session: null,
  atMs: 10 * 86_400_000,
  ask,
  context: { ...EASY_CONTEXT, daysSinceWorked, stopsRunning: 2 },
});

/** A filter that has seen some recalls go well and badly. */
function learnt() {
  const filter = createAbilityFilter();
  for (let n = 0; n < 20; n++) {
    const grade = n % 3 === 0 ? 'missed' : n % 3 === 1 ? 'fair' : 'good';
    const leg = question('recall', { distanceM: 10 + n });
    filter.observe({ ...leg, session: `s${n >> 2}`, atMs: n * 3_600_000, grade, weight: 1 });
  }
  return filter;
}

const known = (filter = learnt(), daysSinceWorked = 0): NextInput => ({
  filter,
  question: (skill, ask) => question(skill, ask, daysSinceWorked),
  successes: new Map(),
  worked: [],
  goals: [],
  ageMonths: null,
  earlierSessionsOnGround: null,
  reps: [],
  plan: null,
  atHand: null,
  focus: null,
  minutes: 0,
  minutesSinceBreak: 0,
  repsSinceBreak: 0,
  breaks: 0,
  cleanShareWanted: 0.3,
  random: seededRandom(1),
});

describe('the record seen from a later place of a plan', () => {
  it('states a later rep as the mean over all that may come of an earlier one (law of total probability)', () => {
    const first = question('recall', { distanceM: 25 });
    const later = question('recall', { distanceM: 30 });
    const before = learnt().forecast(first);
    const mean = { missed: 0, fair: 0, good: 0 };
    for (const grade of GRADES) {
      const filter = learnt();
      filter.observe({ ...first, session: 'today', grade, weight: 1 });
      // The session's gain is paid at the next session; here both reps are of one, so it is asked there too.
      const { chance } = filter.forecast({ ...later, session: 'today' });
      for (const one of GRADES) mean[one] += before.chance[grade] * chance[one];
    }
    const record = new PlanRecord(known());
    const moment = record.after(record.start, [{ skill: 'recall', ask: { distanceM: 25 } }], false);
    const stated = record.inputAt(moment);
    const { chance } = stated.filter.forecast(stated.question('recall', { distanceM: 30 }));
    // 0.01: the filter matches moments leg by leg (its own error is under 0.005 a leg), and the last session's gain waits.
    for (const grade of GRADES) expect(Math.abs(chance[grade] - mean[grade])).toBeLessThan(0.012);
  });

  it('moves on what is certain: reps since the break, stops running, and that the skill was worked today', () => {
    const record = new PlanRecord(known(learnt(), 30));
    const contextAt = (moment: typeof record.start) => record.inputAt(moment).question('line', {}).context;
    expect(contextAt(record.start)).toMatchObject({
      repsSinceBreak: 0,
      stopsRunning: 2,
      daysSinceWorked: 30,
    });
    const stopped = record.after(
      record.start,
      [
        { skill: 'line', ask: {} },
        { skill: 'stop', ask: {} },
      ],
      false,
    );
    expect(contextAt(stopped)).toMatchObject({ repsSinceBreak: 1, stopsRunning: 3, daysSinceWorked: 0 });
    const straight = record.after(stopped, [{ skill: 'line', ask: {} }], true);
    expect(contextAt(straight)).toMatchObject({ repsSinceBreak: 0, stopsRunning: 0, daysSinceWorked: 0 });
    // A recall is no send: the run of stops goes on. From the ninth rep on the dog tires (demand table).
    let recalled = stopped;
    for (let n = 0; n < 9; n++) recalled = record.after(recalled, [{ skill: 'recall', ask: {} }], false);
    expect(contextAt(recalled)).toMatchObject({ repsSinceBreak: 10, stopsRunning: 3 });
  });

  it("counts the plan's own earlier reps among the bases (contract, Details), ten at most", () => {
    const record = new PlanRecord(known());
    let moment = record.start;
    for (let n = 1; n <= 12; n++)
      moment = record.after(moment, [{ skill: 'recall', ask: { distanceM: n + 5 } }], false);
    const kept = (moment.successes.get('recall') ?? []).map(({ question: leg }) => leg.ask.distanceM);
    expect(kept).toEqual([8, 9, 10, 11, 12, 13, 14, 15, 16, 17]);
  });
});
