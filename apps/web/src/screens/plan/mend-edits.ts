import type { Ask } from '@sedgeline/engine/ability';
import type { LaidLeg, Plan, PlanEdit, RuleVerdict } from '@sedgeline/engine/session';
import { setAskField } from '../work/set-ask-field.ts';

/** What the key "Mend it" does: edits of the plan one after the other, or a plan drawn anew round the locked reps. */
export type Mending = { readonly by: 'edits'; readonly edits: readonly PlanEdit[] } | { readonly by: 'anew' };

const OTHER_SIDE = { 'cast-left': 'cast-right', 'cast-right': 'cast-left' } as const;

/** How a rule that is not kept would be mended as its verdict says; `null` where only the handler can tell. */
export function mendEdits(
  { mend }: RuleVerdict,
  plan: Plan,
  locked: readonly number[],
  turn: number,
): Mending | null {
  if (mend === undefined) return null;
  const named = mend.reps.filter((n) => n >= 1 && n <= plan.reps.length && !locked.includes(n));
  const legsOf = (n: number): readonly LaidLeg[] =>
    (plan.reps[n - 1]?.legs ?? []).map(({ skill, ask }) => ({ skill, ask }));
  const asks = (change: (n: number) => readonly LaidLeg[] | null): Mending | null => {
    const edits = named.flatMap((n): PlanEdit[] => {
      const legs = change(n);
      return legs === null || legs.length === 0 ? [] : [{ do: 'ask', n, legs }];
    });
    return edits.length === 0 ? null : { by: 'edits', edits };
  };
  const set = (n: number, field: keyof Ask, isIts: (leg: LaidLeg) => boolean, to: number | undefined) => {
    const legs = legsOf(n);
    const at = legs.findIndex(isIts);
    return at < 0 || to === undefined ? null : setAskField(legs, at, field, to);
  };
  const swaps = (): Mending | null =>
    named.length === 0 ? null : { by: 'edits', edits: named.map((n) => ({ do: 'swap' as const, n, turn })) };

  switch (mend.code) {
    case 'begin-with-known':
    case 'end-with-known':
      return swaps();
    case 'keep-one-thing':
    case 'call-it-vary':
    case 'to-the-easy-end':
    case 'take-the-easier':
      return asks((n) => easierLegs(plan, n));
    case 'turn-to-the-other-side':
      return asks((n) => mirrored(legsOf(n), mend.side));
    case 'stop-elsewhere':
      return asks((n) => set(n, 'wayFraction', ({ skill }) => skill === 'stop', mend.to));
    case 'shorten-the-line':
      return asks((n) => set(n, 'distanceM', ({ ask }) => (ask.distanceM ?? 0) > (mend.to ?? 0), mend.to));
    case 'lower-the-obstacle':
      return asks((n) => set(n, 'obstacle', ({ ask }) => (ask.obstacle ?? 0) > (mend.to ?? 0), mend.to));
    case 'mark-by-its-legs':
      return asks(legsOf);
    case 'put-in-a-break': {
      const [after] = mend.reps;
      return after === undefined ? null : { by: 'edits', edits: [{ do: 'break', after, takes: true }] };
    }
    case 'drop-reps':
    case 'leave-reps-more-time': {
      const n = leastMissed(plan, locked);
      return n === null ? null : { by: 'edits', edits: [{ do: 'drop', n }] };
    }
    case 'run-clean':
    case 'draw-the-order-anew':
    case 'state-it-anew':
      return { by: 'anew' };
  }
}

function easierLegs({ reps }: Plan, n: number): readonly LaidLeg[] | null {
  return reps[n - 1]?.easier.legs.map(({ skill, ask }) => ({ skill, ask })) ?? null;
}

function mirrored(legs: readonly LaidLeg[], side: 'left' | 'right' | undefined): readonly LaidLeg[] | null {
  const turned = legs.map((leg): LaidLeg => {
    if (leg.skill !== 'cast-left' && leg.skill !== 'cast-right') return leg;
    return leg.skill === `cast-${side}` ? leg : { ...leg, skill: OTHER_SIDE[leg.skill] };
  });
  return turned.some((leg, at) => leg !== legs[at]) ? turned : null;
}

/** The rep that is missed least when it is dropped: the last that builds nothing, neither the first nor the finish. */
function leastMissed({ reps }: Plan, locked: readonly number[]): number | null {
  const open = reps.filter(({ n }) => !locked.includes(n));
  const inside = open.filter(({ n }) => n > 1 && n < reps.length);
  const found = inside.findLast(({ purpose }) => purpose !== 'build') ?? inside.at(-1) ?? open.at(-1);
  return found?.n ?? null;
}
