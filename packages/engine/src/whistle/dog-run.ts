/** How a dog gets going: from a standing start with steady acceleration to its running speed. */
export interface DogRun {
  readonly runSpeedMPerS: number;
  readonly accelerationMPerS2: number;
}

/** Where and when the dog has reached its running speed: `v^2 / 2a` and `v / a`. */
function atSpeed({ runSpeedMPerS, accelerationMPerS2 }: DogRun): { readonly m: number; readonly s: number } {
  return {
    m: (runSpeedMPerS * runSpeedMPerS) / (2 * accelerationMPerS2),
    s: runSpeedMPerS / accelerationMPerS2,
  };
}

/** Seconds after the send at which the dog is `distanceM` out. */
export function timeAtS(distanceM: number, run: DogRun): number {
  const reached = atSpeed(run);
  if (distanceM <= reached.m) return Math.sqrt((2 * distanceM) / run.accelerationMPerS2);
  return reached.s + (distanceM - reached.m) / run.runSpeedMPerS;
}

/** How far out the dog is `timeS` after the send. */
export function distanceAtM(timeS: number, run: DogRun): number {
  const reached = atSpeed(run);
  if (timeS <= reached.s) return 0.5 * run.accelerationMPerS2 * timeS * timeS;
  return reached.m + run.runSpeedMPerS * (timeS - reached.s);
}

/** Speed `distanceM` out: `min(v, sqrt(2 a x))`. */
export function speedAtMPerS(distanceM: number, run: DogRun): number {
  return Math.min(run.runSpeedMPerS, Math.sqrt(2 * run.accelerationMPerS2 * distanceM));
}

/**
 * When a sound that leaves the send point `leavesS` after the send meets the dog: the root of `x(t) = c (t - leavesS)`, a
 * quadratic while the dog gets going and a straight line after.
 */
export function meetsAtS(leavesS: number, run: DogRun, soundMPerS: number): number {
  const { runSpeedMPerS: v, accelerationMPerS2: a } = run;
  const reached = atSpeed(run);
  const root = soundMPerS * soundMPerS - 2 * a * soundMPerS * leavesS;
  if (root > 0) {
    const early = (2 * soundMPerS * leavesS) / (soundMPerS + Math.sqrt(root));
    if (early <= reached.s) return early;
  }
  return (soundMPerS * leavesS + reached.m - v * reached.s) / (soundMPerS - v);
}

/** Where a dog must begin to brake to halt `haltAtM` out: the closed form of `x + v(x)^2 / 2b = haltAtM`. */
export function brakesAtM(haltAtM: number, run: DogRun, brakingMPerS2: number): number {
  const reached = atSpeed(run);
  const atFullSpeed = haltAtM - run.runSpeedMPerS ** 2 / (2 * brakingMPerS2);
  if (atFullSpeed >= reached.m) return atFullSpeed;
  return haltAtM / (1 + run.accelerationMPerS2 / brakingMPerS2);
}
