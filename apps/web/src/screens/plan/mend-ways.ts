import type { Ask } from '@sedgeline/engine/ability';
import type { LaidLeg, Plan, PlanEdit, PlannedLeg, PlannedRep, RuleVerdict } from '@sedgeline/engine/session';
import { setAskField } from '../../parts/ask-editor/set-ask-field.ts';

/** One way to mend a rule: edits of the plan, one after the other. */
export type Mending = readonly PlanEdit[];

const OTHER_SIDE = { 'cast-left': 'cast-right', 'cast-right': 'cast-left' } as const;
/** As many other reps are tried in a place before it is given up (our judgement, 2026). */
const SWAPS = 4;

/**
 * The ways in which a rule that is not kept might be mended as its verdict says, the gentlest first; whether one does is for the
 * judge to say. None where nothing but a plan drawn anew would do.
 */
export function mendWays({ mend }: RuleVerdict, plan: Plan, locked: readonly number[]): readonly Mending[] {
  if (mend === undefined) return [];
  const named = mend.reps.filter((n) => n >= 1 && n <= plan.reps.length && !locked.includes(n));
  const legsOf = (n: number): readonly LaidLeg[] => bareLegs(plan.reps[n - 1]?.legs ?? []);
  const asks = (change: (n: number) => readonly LaidLeg[] | null): readonly Mending[] => {
    const edits = named.flatMap((n): PlanEdit[] => {
      const legs = change(n);
      return legs === null || legs.length === 0 ? [] : [{ do: 'ask', n, legs }];
    });
    return edits.length === 0 ? [] : [edits];
  };
  const set = (n: number, field: keyof Ask, isIts: (leg: LaidLeg) => boolean, to: number | undefined) => {
    const legs = legsOf(n);
    const at = legs.findIndex(isIts);
    return at < 0 || to === undefined ? null : setAskField(legs, at, field, to);
  };
  const swaps = (): readonly Mending[] =>
    named.length === 0
      ? []
      : Array.from({ length: SWAPS }, (_, turn) => named.map((n) => ({ do: 'swap' as const, n, turn })));
  const known = (n: number): readonly Mending[] =>
    locked.includes(n) ? [] : knownLegs(plan, n).map((legs): Mending => [{ do: 'ask', n, legs }]);

  switch (mend.code) {
    case 'begin-with-known':
      return [...known(1), ...swaps()];
    case 'end-with-known':
      return [...known(plan.reps.length), ...swaps()];
    case 'keep-one-thing':
    case 'call-it-vary':
    case 'to-the-easy-end':
    case 'take-the-easier':
      return [...asks((n) => easierLegs(plan, n)), ...swaps()];
    case 'turn-to-the-other-side':
      return [...asks((n) => mirrored(legsOf(n), mend.side)), ...swaps()];
    case 'stop-elsewhere':
      return [...asks((n) => set(n, 'wayFraction', ({ skill }) => skill === 'stop', mend.to)), ...swaps()];
    case 'shorten-the-line':
      return asks((n) => set(n, 'distanceM', ({ ask }) => (ask.distanceM ?? 0) > (mend.to ?? 0), mend.to));
    case 'lower-the-obstacle':
      return asks((n) => set(n, 'obstacle', ({ ask }) => (ask.obstacle ?? 0) > (mend.to ?? 0), mend.to));
    case 'mark-by-its-legs':
      return asks(legsOf);
    case 'put-in-a-break':
      return mend.reps.slice(0, 1).map((after): Mending => [{ do: 'break', after, takes: true }]);
    case 'drop-reps':
    case 'leave-reps-more-time': {
      const order = leastMissed(plan, locked);
      return order.map((_, at): Mending => drops(order.slice(0, at + 1)));
    }
    case 'run-clean':
    case 'draw-the-order-anew':
    case 'state-it-anew':
      return [];
  }
}

const bareLegs = (legs: readonly LaidLeg[]): readonly LaidLeg[] =>
  legs.map(({ skill, ask }) => ({ skill, ask }));

/** Chains of the plan that raise nothing, the surest first; their fall-backs too. */
function knownLegs({ reps }: Plan, except: number): readonly (readonly LaidLeg[])[] {
  const chains = reps.flatMap((rep) => (rep.n === except ? [rep.easier.legs] : [rep.legs, rep.easier.legs]));
  const least = (legs: readonly PlannedLeg[]): number =>
    Math.min(...legs.map(({ chance }) => 1 - chance.missed));
  return chains
    .filter((legs) => legs.every(({ stretch }) => stretch !== null && stretch <= 0))
    .toSorted((a, b) => least(b) - least(a))
    .slice(0, SWAPS)
    .map(bareLegs);
}

/** Drops of these reps, the last first, so that the numbers of the others hold. */
const drops = (numbers: readonly number[]): Mending =>
  numbers.toSorted((a, b) => b - a).map((n) => ({ do: 'drop' as const, n }));

function easierLegs({ reps }: Plan, n: number): readonly LaidLeg[] | null {
  const legs = reps[n - 1]?.easier.legs;
  return legs === undefined ? null : bareLegs(legs);
}

function mirrored(legs: readonly LaidLeg[], side: 'left' | 'right' | undefined): readonly LaidLeg[] | null {
  const turned = legs.map((leg): LaidLeg => {
    if (leg.skill !== 'cast-left' && leg.skill !== 'cast-right') return leg;
    return leg.skill === `cast-${side}` ? leg : { ...leg, skill: OTHER_SIDE[leg.skill] };
  });
  return turned.some((leg, at) => leg !== legs[at]) ? turned : null;
}

/** Reps inside the session in the order in which they are missed least: those that build nothing first, the later first. */
function leastMissed({ reps }: Plan, locked: readonly number[]): number[] {
  const inside = reps.filter(({ n }) => n > 1 && n < reps.length && !locked.includes(n)).toReversed();
  const builds = ({ purpose }: PlannedRep): number => (purpose === 'build' ? 1 : 0);
  return inside.toSorted((a, b) => builds(a) - builds(b)).map(({ n }) => n);
}
