import type { DemandName } from '../demands.ts';
import type { AbilityFilter, LogitEstimate } from '../forecaster.ts';
import type { AskField } from '../harder-fields.ts';
import type { Interval90, LegContext, LegForecast, LegQuestion } from '../leg.ts';
import { type BasedStep, basedStep, type WellDone } from './base.ts';
import { type StatedGood, statedChancePerLogit } from './chance-parts.ts';
import { type FactorValue, factorValue, fieldOf } from './factor-fields.ts';

/** One thing that changed since the base. */
export interface ChangedFactor {
  /** Name of the demand, as in the parts of a chance. */
  readonly factor: DemandName;
  readonly field: AskField | keyof LegContext | null;
  readonly from: FactorValue;
  readonly to: FactorValue;
  /** Its part of the stretch, in logits: above 0 it made the leg harder. */
  readonly logit: number;
  /** Its part of the change of the chance of good: below 0 it took some away. */
  readonly chance: number;
}

/** A leg held against its base. */
export interface WhyStep<Base extends WellDone = WellDone> {
  readonly base: Base;
  /** `sum_j w_j (x_j now - x_j then)`, logits; the `logit`s of `changed` add up to its mean. */
  readonly stretch: LogitEstimate;
  /** What changed, what took most first. */
  readonly changed: readonly ChangedFactor[];
  /** Chance of good of the base's ask, had it been asked again at the moment of this leg, all else as then. */
  readonly chanceAtBase: number;
  readonly intervalAtBase90: Interval90;
  /** What is odd about the two very asks, beside their demands. */
  readonly odd: { readonly logit: number; readonly chance: number };
  /** What is left of the change: the one ask is less well known than the other. */
  readonly sureness: { readonly chance: number };
}

/** Why a leg's chance was what it was, as far as could be known before it. */
export interface LegReasons<Base extends WellDone = WellDone> {
  readonly chanceBefore: number;
  readonly interval90: Interval90;
  /** `null` with no success before. */
  readonly step: WhyStep<Base> | null;
}

function statedGood({ logOdds, chance }: LegForecast, gap: LogitEstimate): StatedGood {
  return { mean: logOdds.mean - gap.mean, variance: logOdds.sd ** 2 + gap.sd ** 2, chance: chance.good };
}

function whyStep<Base extends WellDone>(
  filter: AbilityFilter,
  leg: LegQuestion,
  before: LegForecast,
  { base, stretch }: BasedStep<Base>,
): WhyStep<Base> {
  const again: LegQuestion = { ...base.question, session: leg.session, atMs: leg.atMs };
  const atBase = filter.forecast(again);
  const gap = filter.gap(leg.dog);
  const slope = statedChancePerLogit(statedGood(atBase, gap), statedGood(before, gap));
  const changed = stretch.parts.map(
    ({ factor, logit }): ChangedFactor => ({
      factor,
      field: fieldOf(factor),
      from: factorValue(factor, base.question),
      to: factorValue(factor, leg),
      logit,
      chance: -logit * slope,
    }),
  );
  changed.sort((a, b) => b.logit - a.logit);
  const oddLogit = before.logOdds.mean - atBase.logOdds.mean + stretch.mean;
  const told = (oddLogit - stretch.mean) * slope;
  return {
    base,
    stretch: { mean: stretch.mean, sd: stretch.sd },
    changed,
    chanceAtBase: atBase.chance.good,
    intervalAtBase90: atBase.interval90.good,
    odd: { logit: oddLogit, chance: oddLogit * slope },
    sureness: { chance: before.chance.good - atBase.chance.good - told },
  };
}

/**
 * Why a leg was as hard as it was: its chance of good before it, its base among the last ten successes, how much
 * harder it was than that one, and what each thing that changed did, in logits and in chance of good. `filter` and
 * `successes` (of this dog at this skill, oldest first) are what was known strictly before the leg; the form of the day
 * is in the chances as far as the day's earlier legs had told it. The parts of `changed` add up to the stretch; with
 * `odd` and `sureness` their chances add up to `chanceBefore - chanceAtBase`.
 * @throws RangeError for a leg with a field outside its range
 */
export function whyLeg<Base extends WellDone>(
  filter: AbilityFilter,
  leg: LegQuestion,
  successes: readonly Base[],
): LegReasons<Base> {
  const before = filter.forecast(leg);
  const based = basedStep(filter, leg, successes);
  return {
    chanceBefore: before.chance.good,
    interval90: before.interval90.good,
    step: based === null ? null : whyStep(filter, leg, before, based),
  };
}
