import type { RuleMend, RuleMendCode } from '@sedgeline/engine/session';
import { RULE_MEND_CODES } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { madePlan } from './made-plan.fixture.ts';
import { mendWays } from './mend-ways.ts';

const ways = (code: RuleMendCode, more: Partial<RuleMend> = {}, locked: readonly number[] = []) =>
  mendWays({ rule: 'safe', kept: false, mend: { code, reps: [], ...more } }, madePlan(), locked);
const [recall20, , recall10] = madePlan().reps.map(({ legs }) =>
  legs.map(({ skill, ask }) => ({ skill, ask })),
);

describe('mendWays', () => {
  it('has something to try for every mend that does not want the plan drawn anew', () => {
    const anew: readonly RuleMendCode[] = ['run-clean', 'draw-the-order-anew', 'state-it-anew'];
    const figures = { reps: [2], side: 'right', to: 0.3 } as const;
    for (const code of RULE_MEND_CODES) {
      const tries = ways(code, code === 'shorten-the-line' ? { reps: [2], to: 30 } : figures);
      expect([code, tries.length > 0]).toEqual([code, !anew.includes(code)]);
      for (const way of tries) expect(way.length).toBeGreaterThan(0);
    }
  });

  it('begins with something of the plan that raises nothing', () => {
    // The finish and the fall-backs are known; the cast of rep 2 raises something.
    const asked = ways('begin-with-known').flatMap((way) =>
      way.flatMap((edit) => (edit.do === 'ask' ? [edit] : [])),
    );
    expect(asked.map(({ n }) => n)).toEqual(asked.map(() => 1));
    expect(asked.map(({ legs }) => legs)).toContainEqual(recall10);
    expect(asked.every(({ legs }) => legs.every(({ skill }) => skill === 'recall'))).toBe(true);
    const ended = ways('end-with-known').flatMap((way) =>
      way.flatMap((edit) => (edit.do === 'ask' ? [edit] : [])),
    );
    expect(ended.every(({ n }) => n === 3)).toBe(true);
    expect(ended.map(({ legs }) => legs)).toContainEqual(recall20);
  });

  it('turns a cast to the side that is wanted, its chain else the same', () => {
    const [[edit] = []] = ways('turn-to-the-other-side', { reps: [2], side: 'right' });
    if (edit?.do !== 'ask') throw new Error('mend: expected the rep to be asked otherwise');
    expect(edit.legs.map(({ skill }) => skill)).toEqual(['line', 'stop', 'cast-right']);
    expect(edit.legs[2]?.ask).toEqual(madePlan().reps[1]?.legs[2]?.ask);
  });

  it('moves the stop along its line, the cast with it', () => {
    const [[edit] = []] = ways('stop-elsewhere', { reps: [2], to: 0.8 });
    if (edit?.do !== 'ask') throw new Error('mend: expected the rep to be asked otherwise');
    // Eight tenths of a line of 40 m.
    expect(edit.legs[1]?.ask).toMatchObject({ distanceM: 32, wayFraction: 0.8 });
    expect(edit.legs[2]?.ask).toMatchObject({ distanceM: 32, wayFraction: 0.8 });
  });

  it('lowers what is too much to what is allowed', () => {
    const [[lower] = []] = ways('lower-the-obstacle', { reps: [2], to: 0 });
    expect(lower?.do === 'ask' ? lower.legs[2]?.ask.obstacle : null).toBe(0);
    const [[shorter] = []] = ways('shorten-the-line', { reps: [2], to: 30 });
    expect(shorter?.do === 'ask' ? shorter.legs[0]?.ask.distanceM : null).toBe(30);
  });

  it('drops from the inside, never the first nor the finish, and one more at every try', () => {
    expect(ways('drop-reps')).toEqual([[{ do: 'drop', n: 2 }]]);
    expect(ways('put-in-a-break', { reps: [2] })).toEqual([[{ do: 'break', after: 2, takes: true }]]);
  });

  it('leaves locked reps alone', () => {
    for (const code of ['take-the-easier', 'turn-to-the-other-side', 'drop-reps'] as const)
      expect(ways(code, { reps: [2], side: 'right' }, [2])).toEqual([]);
    expect(ways('begin-with-known', { reps: [1] }, [1])).toEqual([]);
  });

  it('offers nothing without a mend', () => {
    expect(mendWays({ rule: 'safe', kept: false }, madePlan(), [])).toEqual([]);
  });
});
