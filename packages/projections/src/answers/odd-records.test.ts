import { ASK_RANGES, type Ask, SKILLS } from '@sedgeline/engine/ability';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { progressOfDog } from '../progress/progress-of-dog.ts';
import { proofingOfDog } from '../proofing/proofing-map.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { chanceAnswer, nextAnswer, replayAnswer, standingAnswer } from './answers.ts';
import { patternsAnswer } from './patterns-answer.ts';
import { whyAnswer } from './why-answer.ts';

const DAY = '2026-03-01T06:00:00Z';
const day = () => new TrainingDay(DAY).dog('d', { born: '2024-01-01' });

const hardest: Ask = {
  distanceM: 400,
  wayFraction: 1,
  temptation: 'game',
  handlerPlace: 'apart',
  cover: 3,
  distraction: 3,
  turnDeg: 0,
  castM: 150,
  otherDummies: 6,
  gapDeg: 0,
  blind: true,
  waitS: 300,
  obstacle: 3,
  windAcrossMPerS: 15,
  crew: 12,
};
const least: Ask = Object.fromEntries(Object.entries(ASK_RANGES).map(([field, [low]]) => [field, low]));

/** Records that are nobody's and may be anybody's (issue's list of bad input). */
const RECORDS: Readonly<Record<string, () => TrainingDay>> = {
  'no legs at all': day,
  'a session and nothing in it': () => day().open('s', 'd'),
  'every miss excused': () => {
    const record = day().open('s', 'd');
    for (let n = 0; n < 40; n++)
      record.rep([
        { skill: 'stop', ask: { distanceM: 20 }, grade: 'missed', cause: n % 2 ? 'handler' : 'setup' },
      ]);
    return record;
  },
  ...Object.fromEntries(
    (['good', 'fair', 'missed'] as const).map((grade) => [
      `only ${grade}`,
      () => {
        const record = day();
        for (let s = 0; s < 30; s++) {
          record.open(`s${s}`, 'd', { ground: `g${s % 3}` }).wait(60 * 24);
          for (const skill of ['stop', 'cast-left', 'cast-right'] as const)
            for (let n = 0; n < 4; n++) record.rep([{ skill, ask: { distanceM: 5 * 2 ** n }, grade }]);
        }
        return record;
      },
    ]),
  ),
  'a thousand legs in one day': () => {
    const record = day().open('s', 'd');
    for (let n = 0; n < 1000; n++)
      record.rep([
        {
          skill: SKILLS[n % SKILLS.length]!,
          ask: { distanceM: n % 100 },
          grade: n % 3 === 0 ? 'missed' : 'good',
        },
      ]);
    return record;
  },
  'asks at the edges of their ranges': () => {
    const record = day().open('s', 'd');
    for (const skill of SKILLS)
      for (const ask of [hardest, least, {}])
        for (const grade of ['good', 'missed'] as const) record.rep([{ skill, ask, grade }]);
    return record;
  },
  'a dog born after its session': () => {
    const record = new TrainingDay(DAY).dog('d', { born: '2026-12-24' }).open('s', 'd');
    for (let n = 0; n < 20; n++)
      record.rep([{ skill: 'recall', ask: { distanceM: 20 }, grade: n % 4 ? 'good' : 'fair' }]);
    return record;
  },
};

/** Paths of numbers that are none: what a screen would show as NaN or Infinity. */
function broken(value: unknown, path = 'answer'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => broken(held, `${path}.${key}`));
}

describe('odd records', () => {
  it.each(Object.keys(RECORDS))(
    '%s: every question has an answer or a plain "cannot say", and no number is none',
    (name) => {
      const { facts, atMs } = RECORDS[name]!();
      const kennel = createKennel();
      kennel.add(facts);
      const answers: Record<string, unknown> = {
        standing: standingAnswer(kennel, 'd', atMs),
        replay: replayAnswer(kennel, 'd'),
        patterns: patternsAnswer(kennel.record, kennel.timeline(), 'd', ({ pattern }) => pattern),
      };
      for (const skill of SKILLS) {
        answers[`progress ${skill}`] = progressOfDog(kennel.record, kennel.timeline(), 'd', skill);
        answers[`proofing ${skill}`] = proofingOfDog(kennel.record, kennel.timeline(), 'd', skill, atMs);
        for (const ask of [{}, hardest, least]) {
          const chance = chanceAnswer(kennel, { dog: 'd', skill, ask, ground: 'nowhere', atMs });
          answers[`chance ${skill} ${JSON.stringify(ask)}`] = chance;
          expect(chance.chance.missed + chance.chance.fair + chance.chance.good).toBeCloseTo(1, 12);
          for (const [low, high] of Object.values(chance.interval90)) {
            expect(low).toBeGreaterThanOrEqual(0);
            expect(high).toBeLessThanOrEqual(1);
            expect(low).toBeLessThanOrEqual(high);
          }
        }
      }
      for (const session of kennel.record.sessions) {
        for (const rep of [session.reps.at(0), session.reps.at(-1)])
          if (rep !== undefined) answers[`why ${rep.rep}`] = whyAnswer(kennel, rep.rep);
        const next = kennel.next(session.session, atMs, 0);
        answers[`next ${session.session}`] = next === null ? null : nextAnswer(next, () => '');
      }
      expect(Object.values(answers).every((answer) => answer !== null)).toBe(true);
      expect(broken(answers)).toEqual([]);
    },
    60_000,
  );
});
