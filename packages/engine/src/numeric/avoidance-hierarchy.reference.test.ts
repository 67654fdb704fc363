import { describe, expect, it } from 'vitest';
import avoidance from '../../reference/avoidance-learning.json' with { type: 'json' };
import { gaussHermite } from './gauss-hermite.ts';
import { importanceSample } from './importance-sample.ts';
import { laplaceByDifferences } from './laplace-by-differences.ts';
import { logistic, logLogistic } from './logistic.ts';
import { maximise } from './maximise.ts';
import { seededRandom } from './random.ts';
import { effectiveSize, sampleError, sampleMean } from './weighted-sample.ts';

/**
 * A whole hierarchy, hyper-parameters and all: each dog's two constants integrated by a product rule, the five
 * hyper-parameters found by `maximise` and then integrated by draws. Provenance, status and the tolerances'
 * reasons stand in the reference file.
 */
const { multilevel } = avoidance;
const TRIALS = 25;
const DOGS = avoidance.dogs.map((digits) => {
  const shock = Uint8Array.from(digits, Number);
  const shocksBefore = new Uint8Array(TRIALS);
  for (let t = 1; t < TRIALS; t++) shocksBefore[t] = shocksBefore[t - 1]! + shock[t - 1]!;
  return { shock, shocksBefore };
});
// 8 nodes a side: 12 move the log joint by 1e-5 at the mode.
const { nodes, weights } = gaussHermite(8);

/** Means of the logits, their sds, and the inverse tanh of their correlation. */
const correlation = (u: Float64Array) => Math.tanh(u[4]!);
const powers = (base: number) => {
  const list = new Float64Array(TRIALS).fill(1);
  for (let t = 1; t < TRIALS; t++) list[t] = list[t - 1]! * base;
  return list;
};

/** Each dog's likelihood with its own two constants integrated, and their means. */
function dogsGiven(u: Float64Array) {
  const rho = correlation(u);
  const likelihood = new Float64Array(DOGS.length);
  const sumA = new Float64Array(DOGS.length);
  const sumB = new Float64Array(DOGS.length);
  nodes.forEach((first, k) => {
    const a = powers(logistic(u[0]! + u[2]! * first));
    nodes.forEach((second, l) => {
      const b = powers(logistic(u[1]! + u[3]! * (rho * first + Math.sqrt(1 - rho * rho) * second)));
      for (let dog = 0; dog < DOGS.length; dog++) {
        const { shock, shocksBefore } = DOGS[dog]!;
        let product = weights[k]! * weights[l]!;
        for (let t = 1; t < TRIALS; t++) {
          const p = a[shocksBefore[t]!]! * b[t - shocksBefore[t]!]!;
          product *= shock[t] === 1 ? p : 1 - p;
        }
        likelihood[dog]! += product;
        sumA[dog]! += product * a[1]!;
        sumB[dog]! += product * b[1]!;
      }
    });
  });
  return {
    likelihood,
    meanA: sumA.map((sum, dog) => sum / likelihood[dog]!),
    meanB: sumB.map((sum, dog) => sum / likelihood[dog]!),
  };
}

/**
 * Priors as the note says, constants left out; the sds on their own scale, for their density does not vanish
 * at 0, and on the scale of logs the draws would miss its long tail.
 */
function logJoint(u: Float64Array, remember?: (dogs: ReturnType<typeof dogsGiven>) => void): number {
  if (!(u[2]! > 0 && u[3]! > 0)) return -Infinity;
  const means = logLogistic(u[0]!) + logLogistic(-u[0]!) + logLogistic(u[1]!) + logLogistic(-u[1]!);
  const sds = -0.5 * (u[2]! ** 2 + u[3]! ** 2);
  // 1 - rho^2, twice: the prior, and the volume of the tanh.
  const prior = means + sds + 2 * Math.log1p(-(correlation(u) ** 2));
  const dogs = dogsGiven(u);
  remember?.(dogs);
  return dogs.likelihood.reduce((sum, value) => sum + Math.log(value), prior);
}

describe('avoidance learning, two constants for each dog', () => {
  const top = maximise((u) => logJoint(u), [2, 1, 0.4, 0.4, 0], { steps: 1_000, tolerance: 1e-8 });
  const fit = laplaceByDifferences((u) => logJoint(u), top.x)!;

  /** What was worked out on the way; draws with an sd under 0 have no weight and nothing here. */
  const drawn = new Map<Float64Array, ReturnType<typeof dogsGiven>>();
  const NONE = new Float64Array(DOGS.length);
  const remembering = (u: Float64Array) => logJoint(u, (dogs) => drawn.set(u, dogs));
  const draws = importanceSample(remembering, fit, 3_000, seededRandom(1953));
  const size = effectiveSize(draws);
  it('draws enough to say', () => {
    expect(top.end).toBe('converged');
    // Under 600 the errors below would be too wide to find a prior left out.
    expect(size).toBeGreaterThan(600);
  });
  it.each(multilevel.order.map((name, j) => [name, j] as const))('%s', (_, j) => {
    const of = (u: Float64Array) => (j === 4 ? correlation(u) : u[j]!);
    const mean = sampleMean(draws, of);
    const error = Math.hypot(multilevel.error[j]!, sampleError(draws, of));
    expect(Math.abs(mean - multilevel.mean[j]!)).toBeLessThan(4 * error);
    const square = (u: Float64Array) => (of(u) - mean) ** 2;
    const sd = Math.sqrt(sampleMean(draws, square));
    // d sd = d variance / (2 sd).
    expect(Math.abs(sd - multilevel.sd[j]!)).toBeLessThan((4 * sampleError(draws, square)) / (2 * sd));
  });
  it("each dog's two constants, over all draws", () => {
    multilevel.dogs.forEach(([a, sdOfA, b, sdOfB], dog) => {
      const ofA = (u: Float64Array) => (drawn.get(u)?.meanA ?? NONE)[dog]!;
      const ofB = (u: Float64Array) => (drawn.get(u)?.meanB ?? NONE)[dog]!;
      // Theirs: worth about 20,000 independent draws.
      const error = (of: typeof ofA, sd: number) =>
        Math.hypot(sampleError(draws, of), sd / Math.sqrt(20_000));
      expect(Math.abs(sampleMean(draws, ofA) - a!)).toBeLessThan(4 * error(ofA, sdOfA!));
      expect(Math.abs(sampleMean(draws, ofB) - b!)).toBeLessThan(4 * error(ofB, sdOfB!));
    });
  });
});
