import type { Ask, Skill } from '@sedgeline/engine/ability';
import type { ProofingBand, ProofingDemand } from '../views/proofing-view.ts';

type Bands = readonly [ProofingBand, ProofingBand, ProofingBand];

const DEMAND_OF: Readonly<Partial<Record<Skill, ProofingDemand>>> = {
  steady: 'wait',
  heel: 'distraction',
  leave: 'distraction',
  pickup: 'distraction',
};

/** The demand in which a skill is proved first: how far, how long, or with how much going on about. */
export function proofingDemand(skill: Skill): ProofingDemand {
  return DEMAND_OF[skill] ?? 'distance';
}

/** How much of a demand an ask has, its easy end where nothing was said: metres, seconds, or the scale. */
export function amountOf(demand: ProofingDemand, ask: Ask): number {
  if (demand === 'wait') return ask.waitS ?? 0;
  return demand === 'distraction' ? (ask.distraction ?? 0) : Math.max(5, ask.distanceM ?? 5);
}

/** An ask with so much of a demand. */
export function withAmount(demand: ProofingDemand, ask: Ask, amount: number): Ask {
  if (demand === 'wait') return { ...ask, waitS: amount };
  return demand === 'distraction' ? { ...ask, distraction: amount } : { ...ask, distanceM: amount };
}

/** Nobody about, one quiet person or dog, a group and more: the scale's own steps. */
const DISTRACTION: Bands = [
  { to: 0.5, at: 0 },
  { to: 1.5, at: 1 },
  { to: null, at: 2 },
];
/** Steps beyond the easy end, as the demands count them: doublings of 5 m; a wait of 5 s is one. */
const STEPS = {
  distance: {
    of: (metres: number) => Math.log2(Math.max(metres, 5) / 5),
    at: (steps: number) => 5 * 2 ** steps,
    most: 400,
  },
  wait: {
    of: (seconds: number) => Math.log2(1 + seconds / 5),
    at: (steps: number) => 5 * (2 ** steps - 1),
    most: 300,
  },
} as const;
/** Three columns cover one and a half doublings at least, so that the far one is not what was just done (our judgement, 2026). */
const LEAST_STEPS = 1.5;

/** To the metre or second below 10, to 5 below 50, to 10 above: as people pace and say it. */
function neat(amount: number): number {
  const unit = amount < 10 ? 1 : amount < 50 ? 5 : 10;
  return unit * Math.round(amount / unit);
}

function middleOf(amounts: readonly number[]): number {
  const sorted = [...amounts].sort((a, b) => a - b);
  return sorted[(sorted.length - 1) >> 1]!;
}

/**
 * Three bands of a demand from the amounts worked, equal in steps between the least and the most of them. Each is stated at the
 * middle one of its own amounts (the lower of two), or in its own middle where it has none.
 */
export function proofingBands(demand: ProofingDemand, worked: readonly number[]): Bands {
  if (demand === 'distraction') return DISTRACTION;
  const { of, at, most } = STEPS[demand];
  const amounts = worked.length === 0 ? [at(0)] : worked;
  const nearest = of(amounts.reduce((a, b) => Math.min(a, b)));
  const least = Math.min(nearest, of(most) - LEAST_STEPS);
  const greatest = Math.max(of(amounts.reduce((a, b) => Math.max(a, b))), least + LEAST_STEPS);
  const third = (greatest - least) / 3;
  const ends = [neat(at(least + third)), neat(at(least + 2 * third)), Infinity] as const;
  const band = (n: 0 | 1 | 2): ProofingBand => {
    const above = n === 0 ? Number.NEGATIVE_INFINITY : ends[n - 1]!;
    const inside = amounts.filter((amount) => amount > above && amount <= ends[n]);
    const middle = Math.min(most, neat(at(least + (n + 0.5) * third)));
    return { to: n === 2 ? null : ends[n], at: inside.length === 0 ? middle : middleOf(inside) };
  };
  return [band(0), band(1), band(2)];
}

/** Which column an amount stands in. */
export function bandAt(bands: Bands, amount: number): 0 | 1 | 2 {
  if (amount <= bands[0].to!) return 0;
  return amount <= bands[1].to! ? 1 : 2;
}
