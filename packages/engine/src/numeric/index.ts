export { jointModeWalk, sequentialModeWalk, type Trials, type WalkStart } from './binomial-walk.ts';
export { choleskyFactor, choleskyInverse, choleskyLogDet, choleskySolve } from './cholesky.ts';
export { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
export { type GroupPosterior, type GroupTerm, groupEvidence } from './group-evidence.ts';
export {
  type HierarchicalFit,
  type HierarchicalModel,
  type HierarchicalRow,
  hierarchicalMode,
} from './hierarchical-mode.ts';
export { importanceSample } from './importance-sample.ts';
export { betaCdf, logBeta } from './incomplete-beta.ts';
export { laplaceByDifferences } from './laplace-by-differences.ts';
export { filterLocalLevel, type LevelFilter, type LevelPath, smoothLevel } from './local-level.ts';
export { logistic, logisticSlope, logit, logLogistic } from './logistic.ts';
export { type LaplaceFit, type LogisticRow, logisticMap } from './logistic-map.ts';
export { meanLogistic } from './logistic-normal.ts';
export { binomialTerm, type LogitTerm, ordinalTerm } from './logit-term.ts';
export { type Maximised, type MaximiseOptions, maximise } from './maximise.ts';
export { type ConcavePoint, type Maximum, maximiseConcave } from './newton.ts';
export { normalCdf, normalDensity, normalQuantile } from './normal.ts';
export { fitOrdinal, type OrdinalFit, type OrdinalRow } from './ordinal-fit.ts';
export { posteriorQuadrature } from './posterior-quadrature.ts';
export { type Ends, newcombeInterval, wilsonInterval } from './proportion-interval.ts';
export { type Random, seededRandom } from './random.ts';
export { searchMaximum } from './search-maximum.ts';
export {
  sequentialModeVectorWalk,
  type VectorPath,
  type VectorReading,
  type VectorState,
} from './vector-walk.ts';
export {
  effectiveSize,
  type SampleMoments,
  sampleError,
  sampleMean,
  sampleMoments,
  type WeightedSample,
} from './weighted-sample.ts';
