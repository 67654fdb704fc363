import {
  demandVector,
  type GradeChances,
  type LegResult,
  SKILLS,
  shippedPriors,
} from '@sedgeline/engine/ability';
import { meanLogistic } from '@sedgeline/engine/numeric';
import { DEMANDS } from '../../packages/engine/src/ability/demands.ts';
import { GapLearner, type GapState, gapMoments } from '../../packages/engine/src/ability/gap-learner.ts';
import { oddKey } from '../../packages/engine/src/ability/odd-key.ts';
import { type Moments, ordinalUpdate } from '../../packages/engine/src/ability/ordinal-update.ts';

/** A block as one would write it first: an array of arrays. */
interface Block {
  mean: number[];
  cov: number[][];
}
interface Skill extends Block {
  atMs: number;
  gained: number;
  waiting: string | null;
}
interface Dog {
  general: Moments;
  generalAtMs: number;
  skills: Map<string, Skill>;
  forms: Map<string, Moments & { worked: Set<string> }>;
  odd: Map<string, Moments>;
  gap: GapState;
}

const p = shippedPriors;
const DAY_MS = 86_400_000;
const weights = DEMANDS.map((name) => p.weightMean[name]);

const block = (mean: number[], first: number, others: number): Block => ({
  mean,
  cov: mean.map((_, i) => mean.map((_, j) => (i !== j ? 0 : i === 0 ? first : others))),
});
const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const times = (cov: readonly (readonly number[])[], h: readonly number[]) => cov.map((row) => dot(row, h));

function update(b: Block, h: readonly number[], shift: number, shrink: number): void {
  const gain = times(b.cov, h);
  b.mean = b.mean.map((m, i) => m + gain[i]! * shift);
  b.cov = b.cov.map((row, i) => row.map((value, j) => value - gain[i]! * gain[j]! * shrink));
}

function updateScalar(b: Moments, shift: number, shrink: number): void {
  b.mean += b.variance * shift;
  b.variance -= b.variance * b.variance * shrink;
}

/**
 * The ability filter's mathematics with arrays of arrays, dense vectors and whole matrices: what the flat, packed and sparse one is
 * measured against, and must agree with. States each leg's chances, then learns from it.
 */
export function nestedFilter(): (leg: LegResult) => GradeChances {
  const gaps = new GapLearner(p);
  const kennel = new Map(
    SKILLS.map((skill) => [
      skill,
      block([p.abilityMean, ...weights], p.kennelAbilitySd ** 2, p.kennelWeightSd ** 2),
    ]),
  );
  const dogs = new Map<string, Dog>();
  const newDog = (atMs: number): Dog => ({
    general: { mean: 0, variance: p.generalSd ** 2 },
    generalAtMs: atMs,
    skills: new Map(),
    forms: new Map(),
    odd: new Map(),
    gap: gaps.newcomer(),
  });
  const days = (atMs: number, sinceMs: number) =>
    Math.min(Math.max(0, atMs - sinceMs) / DAY_MS, p.walkDaysAtMost);
  return (leg) => {
    const h = [1, ...Array.from(demandVector(leg.skill, leg.ask, leg.context), (x) => -x)];
    const own = kennel.get(leg.skill)!;
    const dog = dogs.get(leg.dog) ?? newDog(leg.atMs);
    const isNewDog = !dogs.has(leg.dog);
    const known = dog.skills.get(leg.skill);
    const fresh = block(
      h.map(() => 0),
      p.dogAbilitySd ** 2,
      p.dogWeightSd ** 2,
    );
    const skill: Skill = known ?? { ...fresh, atMs: leg.atMs, gained: 0, waiting: null };
    const form = dog.forms.get(leg.session) ?? {
      mean: 0,
      variance: p.formSd ** 2,
      worked: new Set<string>(),
    };
    const key = oddKey(leg.skill, leg.ask);
    const odd = dog.odd.get(key) ?? { mean: 0, variance: p.oddSd ** 2 };
    const pays = skill.waiting !== null && skill.waiting !== leg.session;
    const gain = pays ? p.gainPerSession * p.gainFading ** skill.gained : 0;
    const walked = days(leg.atMs, skill.atMs);
    const generalWalk = (isNewDog ? 0 : days(leg.atMs, dog.generalAtMs)) * p.generalWalkPerDay;
    const mean = dot(own.mean, h) + dot(skill.mean, h) + gain + dog.general.mean + form.mean + odd.mean;
    const variance =
      dot(h, times(own.cov, h)) +
      dot(h, times(skill.cov, h)) +
      walked * (p.abilityWalkPerDay + p.weightWalkPerDay * dot(h.slice(1), h.slice(1))) +
      dog.general.variance +
      generalWalk +
      form.variance +
      odd.variance;
    const gap = { mean: 0, variance: 0 };
    gapMoments(dog.gap, gap);
    const notMissed = meanLogistic(mean, variance);
    const good = Math.min(notMissed, meanLogistic(mean - gap.mean, variance + gap.variance));
    dogs.set(leg.dog, dog);
    dog.skills.set(leg.skill, skill);
    if (!dog.forms.has(leg.session)) gaps.beginSession(dog.gap);
    dog.forms.set(leg.session, form);
    if (pays) {
      skill.mean[0]! += gain;
      skill.gained += 1;
      skill.waiting = null;
    }
    if (!form.worked.has(leg.skill)) skill.waiting = leg.session;
    form.worked.add(leg.skill);
    if (leg.weight > 0) {
      const posterior = { mean: 0, variance: 0 };
      const eta = { mean, variance };
      ordinalUpdate(eta, leg.grade, gapMoments(dog.gap, gap).mean, leg.weight, posterior);
      const shift = (posterior.mean - mean) / variance;
      const shrink = (variance - posterior.variance) / variance ** 2;
      gaps.learn(dog.gap, leg.grade, eta, leg.weight);
      skill.cov = skill.cov.map((row, i) =>
        row.map((c, j) => (i !== j ? c : c + walked * (i === 0 ? p.abilityWalkPerDay : p.weightWalkPerDay))),
      );
      skill.atMs = Math.max(skill.atMs, leg.atMs);
      dog.general.variance += generalWalk;
      dog.generalAtMs = Math.max(dog.generalAtMs, leg.atMs);
      dog.odd.set(key, odd);
      update(own, h, shift, shrink);
      update(skill, h, shift, shrink);
      for (const scalar of [dog.general, form, odd]) updateScalar(scalar, shift, shrink);
    }
    return { missed: 1 - notMissed, fair: notMissed - good, good };
  };
}
