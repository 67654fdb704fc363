import type { Skill } from '../ask.ts';
import { DEMANDS, type DemandName, demandVector } from '../demands.ts';
import { shippedPriors } from '../priors.ts';
import { FlatRows, type GroupedRow } from './flat-rows.ts';
import type { GroupedPrior } from './grouped-ordinal.ts';
import type { PatternLeg } from './pattern.ts';
import type { NormalPrior } from './sizes.ts';

/** Our judgement, 2026: how freely one dog's own record may move each part. Wider than the filter's, which sees all dogs. */
const LEVEL_SD = 1.8;
const GROWTH: NormalPrior = { mean: 0.25, sd: 0.3 };
const STRETCH: NormalPrior = { mean: 0, sd: 0.3 };
const WEIGHT_SD = 0.3;
const FORM_SD = 0.5;
/** A stretch of the record in which ability may move freely, in sessions, and how many of them at most. */
const STRETCH_SESSIONS = 10;
const MOST_STRETCHES = 12;

/** One dog's legs as a regression: everything that moves a chance but is not looked for, with the effects looked for beside it. */
export interface DogDesign {
  /** One for each leg of weight over 0, in their order. */
  readonly rows: FlatRows;
  readonly prior: GroupedPrior;
  /** Column of an effect; a larger weight makes its legs harder. */
  readonly column: (effect: string) => number;
}

/** An effect looked for, beside the demands: what of it is in a leg (0 leaves the leg alone). */
export interface Effect {
  readonly name: string;
  readonly of: (leg: PatternLeg) => number;
  readonly prior: NormalPrior;
}

/** Left and right share one level, so that what tells them apart is one effect. */
const levelOf = (skill: Skill): string => (skill === 'cast-left' || skill === 'cast-right' ? 'cast' : skill);

/**
 * Rows and priors of one dog's regression: `eta = level[skill] + growth[skill] log2(1 + its sessions) + walk(session) +
 * form[session] - sum_j w_j x_j - sum_e effect_e z_e`. Level, growth and walk take what the dog learnt meanwhile, so that an effect
 * is not mistaken for the time at which it was asked; demands have the shipped weights, loosely. Legs of weight 0 are left out.
 */
export function dogDesign(
  legs: readonly PatternLeg[],
  effects: readonly Effect[],
  widened: Partial<Record<DemandName, NormalPrior>> = {},
): DogDesign {
  const columns = new Map<string, number>();
  const mean: number[] = [];
  const sd: number[] = [];
  const column = (name: string, prior: NormalPrior): number => {
    const known = columns.get(name);
    if (known !== undefined) return known;
    columns.set(name, mean.length);
    mean.push(prior.mean);
    sd.push(prior.sd);
    return mean.length - 1;
  };
  for (const { name, prior } of effects) column(name, prior);
  for (const [name, prior] of Object.entries(widened)) column(name, prior);
  const sessions = new Map<string, number>();
  for (const { session } of legs) if (!sessions.has(session)) sessions.set(session, sessions.size);
  const perStretch = Math.max(STRETCH_SESSIONS, sessions.size / MOST_STRETCHES);
  const worked = new Map<string, { readonly before: number; last: string; count: number }>();
  const x = new Float64Array(DEMANDS.length);
  const rows: GroupedRow[] = [];
  for (const leg of legs) {
    const group = sessions.get(leg.session)!;
    const level = levelOf(leg.skill);
    const seen = worked.get(level) ?? { before: 0, last: leg.session, count: 0 };
    if (seen.last !== leg.session) {
      seen.count += 1;
      seen.last = leg.session;
    }
    worked.set(level, seen);
    if (!(leg.weight > 0)) continue;
    const row: { columns: number[]; values: number[] } = { columns: [], values: [] };
    const put = (name: string, prior: NormalPrior, value: number) => {
      if (value === 0) return;
      row.columns.push(column(name, prior));
      row.values.push(value);
    };
    put(`level ${level}`, { mean: shippedPriors.abilityMean, sd: LEVEL_SD }, 1);
    put(`growth ${level}`, GROWTH, Math.log2(1 + seen.count));
    for (let s = 0; s * perStretch < group; s++)
      put(`stretch ${s}`, STRETCH, Math.min(1, group / perStretch - s));
    demandVector(leg.skill, leg.ask, leg.context, x);
    DEMANDS.forEach((name, j) => {
      put(name, { mean: shippedPriors.weightMean[name], sd: WEIGHT_SD }, -x[j]!);
    });
    for (const effect of effects) put(effect.name, effect.prior, -effect.of(leg));
    rows.push({ ...row, group, grade: leg.grade, weight: leg.weight });
  }
  return {
    rows: new FlatRows(rows),
    prior: {
      mean: Float64Array.from(mean),
      sd: Float64Array.from(sd),
      groups: sessions.size,
      groupSd: FORM_SD,
    },
    column: (effect) => columns.get(effect)!,
  };
}
