import { describe, expect, it } from 'vitest';
import { CONDITIONS, MOST_WRONG } from './conditions.ts';
import { engineJoiner } from './engine-joiner.ts';
import type { Joiner } from './joiner.ts';
import { judgeJoiners, keepsWanted, sureRightShare, sureWrongShare } from './judge-joiner.ts';
import { legKey, type MadeSession, madeSession } from './made-session.ts';
import { inOrder, lastBeforeTap, neverSure } from './wrong-joiners.ts';

/** Few sessions, so that the suite stays quick; seeds that the long form does not use. */
const SESSIONS = 12;
const SEED = 70_000;

describe('the judge of joining', () => {
  it('makes the same session of the same name, and another of another', () => {
    const [set] = CONDITIONS;
    expect(madeSession(set!, 'a')).toEqual(madeSession(set!, 'a'));
    expect(madeSession(set!, 'a').seen).not.toEqual(madeSession(set!, 'b').seen);
  });

  it('lets none pass that is wrong on purpose', () => {
    const scores = judgeJoiners([inOrder, lastBeforeTap, neverSure], SESSIONS, SEED);
    expect(scores.map(keepsWanted)).toEqual([false, false, false]);
    // The first two say wrong things for sure; the last is of no use.
    expect(sureWrongShare(scores[0]!)).toBeGreaterThan(0.2);
    expect(sureWrongShare(scores[1]!)).toBeGreaterThan(0.05);
    expect(scores[2]!.every(({ sureRight, sureWrong }) => sureRight + sureWrong === 0)).toBe(true);
  });

  it('lets pass what reads the truth, and counts one lie of it', () => {
    let at: MadeSession | null = null;
    const make = (...name: Parameters<typeof madeSession>) => {
      at = madeSession(...name);
      return at;
    };
    const reader = (lieS: number): Joiner => ({
      name: 'reads the truth',
      join: ({ reps }) =>
        reps.flatMap(({ rep, legs }) =>
          legs.flatMap((_, leg) =>
            (at?.truth.get(legKey(rep, leg)) ?? [])
              .slice(0, 1)
              .map((startS) => ({ rep, leg, startS: startS + lieS, isSure: true })),
          ),
        ),
    });
    const [honest, liar] = [reader(0), reader(0.1)].map((one) =>
      judgeJoiners([one], SESSIONS, SEED, CONDITIONS, make),
    );
    expect(keepsWanted(honest![0]!)).toBe(true);
    expect(sureWrongShare(liar![0]!)).toBe(1);
  });

  it('has legs of both kinds in every set, most of them heard', () => {
    const [scores] = judgeJoiners([neverSure], SESSIONS, SEED);
    for (const { legs, joinable } of scores!) {
      expect(legs).toBeGreaterThan(3 * SESSIONS);
      expect(joinable / legs).toBeGreaterThan(0.6);
      expect(joinable).toBeLessThan(legs);
    }
  });
});

describe('the engine’s joining', () => {
  const [scores] = judgeJoiners([engineJoiner], SESSIONS, SEED);
  const sum = (of: (score: (typeof scores & object)[number]) => number) =>
    scores!.reduce((all, score) => all + of(score), 0);

  it('is hardly ever surely wrong: a count that one run in a thousand would pass', () => {
    const wrong = sum(({ sureWrong }) => sureWrong);
    const mean = MOST_WRONG.overall * sum(({ sureRight, sureWrong }) => sureRight + sureWrong);
    // P(Poisson(mean) >= wrong), summed out.
    let [term, below] = [Math.exp(-mean), 0];
    for (let n = 0; n < wrong; n++) {
      below += term;
      term *= mean / (n + 1);
    }
    expect(1 - below).toBeGreaterThan(0.001);
  });

  it.each(scores!.filter(({ set }) => set !== 'class'))(
    'is sure often enough to be of use: $set',
    (score) => {
      // The whole aim is missed so far, and docs/joining.md says by how much; under half of it the joiner would have broken.
      expect(sureRightShare(score)).toBeGreaterThan(score.wantedSure / 2);
    },
  );

  it('asks rather than joins among others with the same whistle', () => {
    const crowd = scores!.find(({ set }) => set === 'class')!;
    expect(crowd.askedRight + crowd.askedWrong).toBeGreaterThan(crowd.sureRight + crowd.sureWrong);
  });
});
