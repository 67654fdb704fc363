import { choleskyFactor } from './cholesky.ts';
import type { GaussHermiteRule } from './gauss-hermite.ts';
import type { LaplaceFit } from './logistic-map.ts';
import { type WeightedSample, weighSample } from './weighted-sample.ts';

const MOST_POINTS = 1_000_000;

/**
 * The posterior of a few parameters to many digits: the product of Gauss-Hermite rules laid along Laplace's
 * axes (Naylor1982). What Laplace is measured against. `logJoint` may be -Infinity where the prior ends,
 * at the price of digits.
 * @throws RangeError if the covariance is not positive definite, or the points would be more than a million
 */
export function posteriorQuadrature(
  logJoint: (x: Float64Array) => number,
  { mode, cov }: Pick<LaplaceFit, 'mode' | 'cov'>,
  { nodes, weights }: GaussHermiteRule,
): WeightedSample {
  const d = mode.length;
  const axes = choleskyFactor(cov, d);
  if (axes === null) throw new RangeError('cov: expected positive definite');
  const count = nodes.length ** d;
  if (count > MOST_POINTS)
    throw new RangeError(`nodes: expected at most ${MOST_POINTS} points, got ${count}`);
  let logVolume = 0.5 * d * Math.log(2 * Math.PI);
  for (let j = 0; j < d; j++) logVolume += Math.log(axes[j * (d + 1)]!);
  const logWeights = new Float64Array(count);
  const points = Array.from({ length: count }, (_, index) => {
    const x = mode.slice();
    let logWeight = logVolume;
    let rest = index;
    for (let j = 0; j < d; j++) {
      const k = rest % nodes.length;
      rest = Math.floor(rest / nodes.length);
      const z = nodes[k]!;
      logWeight += Math.log(weights[k]!) + 0.5 * z * z;
      for (let i = j; i < d; i++) x[i]! += axes[i * d + j]! * z;
    }
    logWeights[index] = logWeight + logJoint(x);
    return x;
  });
  return weighSample(points, logWeights);
}
