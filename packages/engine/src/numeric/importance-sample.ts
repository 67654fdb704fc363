import { choleskyFactor } from './cholesky.ts';
import { logGamma } from './incomplete-beta.ts';
import type { LaplaceFit } from './logistic-map.ts';
import type { Random } from './random.ts';
import { type WeightedSample, weighSample } from './weighted-sample.ts';

/** Degrees of freedom of the proposal: tails heavier than any posterior with a normal prior. */
const FREEDOM = 7;

/**
 * Draws of a posterior by importance sampling from a Student t about Laplace's mode (Geweke1989): exact but for
 * chance, in any number of dimensions. `effectiveSize` says what the draws are worth.
 * @throws RangeError if the covariance is not positive definite or draws is not a whole number above 0
 */
export function importanceSample(
  logJoint: (x: Float64Array) => number,
  { mode, cov }: Pick<LaplaceFit, 'mode' | 'cov'>,
  draws: number,
  random: Random,
): WeightedSample {
  if (!Number.isInteger(draws) || draws < 1)
    throw new RangeError(`draws: expected a whole number above 0, got ${draws}`);
  const d = mode.length;
  const axes = choleskyFactor(cov, d);
  if (axes === null) throw new RangeError('cov: expected positive definite');
  let logVolume = 0;
  for (let j = 0; j < d; j++) logVolume += Math.log(axes[j * (d + 1)]!);
  const logWeights = new Float64Array(draws);
  const points = Array.from({ length: draws }, (_, draw) => {
    const z = Float64Array.from({ length: d }, () => random.normal());
    let chiSquare = 0;
    for (let k = 0; k < FREEDOM; k++) chiSquare += random.normal() ** 2;
    const stretch = Math.sqrt(FREEDOM / chiSquare);
    const x = mode.slice();
    let square = 0;
    for (let j = 0; j < d; j++) {
      const away = stretch * z[j]!;
      square += away * away;
      for (let i = j; i < d; i++) x[i]! += axes[i * d + j]! * away;
    }
    const logProposal = -0.5 * (FREEDOM + d) * Math.log1p(square / FREEDOM);
    logWeights[draw] = logJoint(x) - logProposal;
    return x;
  });
  const sample = weighSample(points, logWeights);
  const logNormal =
    logVolume + 0.5 * d * Math.log(FREEDOM * Math.PI) + logGamma(FREEDOM / 2) - logGamma((FREEDOM + d) / 2);
  return { ...sample, logEvidence: sample.logEvidence + logNormal - Math.log(draws) };
}
