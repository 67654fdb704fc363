export { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
export { logistic, logisticSlope, logit, logLogistic } from './logistic.ts';
export { meanLogistic } from './logistic-normal.ts';
export { normalCdf, normalDensity, normalQuantile } from './normal.ts';
