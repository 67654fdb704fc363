import { describe, expect, it } from 'vitest';
import { type GoalDraft, goalFault, NEW_GOAL, withAsk } from './goal-draft.ts';

const NOW_MS = Date.UTC(2026, 10, 25, 16);
const stopAt = (distanceM: number) => ({ skill: 'stop' as const, ask: { distanceM } });

describe('withAsk', () => {
  it('asks one thing of a skill: the last tap is how hard, as sure as it was wanted', () => {
    const [first] = withAsk([], stopAt(20));
    expect(first).toEqual({ ...stopAt(20), chance: 0.8 });
    const surer = [{ ...stopAt(20), chance: 0.9 }];
    expect(withAsk(surer, stopAt(60))).toEqual([{ ...stopAt(60), chance: 0.9 }]);
    expect(withAsk(surer, { skill: 'line', ask: {} })).toEqual([
      ...surer,
      { skill: 'line', ask: {}, chance: 0.9 },
    ]);
  });
});

describe('goalFault', () => {
  const draft: GoalDraft = { ...NEW_GOAL, asks: withAsk([], stopAt(20)) };
  it('wants an ask; a date may be left out, today will do, yesterday and no date at all will not', () => {
    expect(goalFault(NEW_GOAL, NOW_MS)).toBe('no-ask');
    expect(goalFault(draft, NOW_MS)).toBeNull();
    expect(goalFault({ ...draft, by: '2026-11-25' }, NOW_MS)).toBeNull();
    for (const by of ['2026-11-24', '2026-13-01', '25.11.2026', 'soon'])
      expect(goalFault({ ...draft, by }, NOW_MS)).toBe('bad-date');
  });
});
