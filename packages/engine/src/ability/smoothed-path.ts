import { type LevelPath, smoothLevel } from '../numeric/local-level.ts';
import { MS_PER_DAY } from '../quantity/time.ts';
import type { LogitEstimate } from './forecaster.ts';
import type { AbilityPriors } from './priors.ts';

/** What the filter knew of one level when a session ended, the gain of that session in it. Logits. */
export interface SessionLevel extends LogitEstimate {
  readonly atMs: number;
  /** Known change since the session before, other than the gain: a dog grown older. 0 when left out. */
  readonly shift?: number;
}

/** The figures of the priors that move a level between sessions. */
export type LevelWalk = Pick<
  AbilityPriors,
  | 'abilityWalkPerDay'
  | 'weightWalkPerDay'
  | 'generalWalkPerDay'
  | 'walkDaysAtMost'
  | 'gainPerSession'
  | 'gainFading'
>;

/**
 * What a dog could do at each session in which a skill was worked, as far as it is known now, by the backward pass of Rauch, Tung
 * and Striebel (Rauch1965) over what the filter knew at the end of each. The level is the log-odds at one ask: whole ability at
 * the easy reference ask, or, with `squares = sum_j x_j^2` of its demands, at another. From session to session
 * `level += gain x fading^n + shift + N(0, q)`, `q = days x (ability walk + general walk + squares x weight walk)`, days capped.
 * Logits in and out; one estimate a session, none for none; the last is the filtered one, and no sd is larger than it was.
 *
 * Exact for a linear local level (`smoothed-path.reference.test.ts`: the Nile, Durbin2012). An approximation here: legs speak
 * to the level through a logistic; what other skills, other asks and other dogs taught between two sessions counts as learnt at
 * the later one; the walk of general ability is taken as independent of what was learnt of it, and capped from session to
 * session of this skill; what is shared by the kennel does not walk. Where the filter was less sure after a session than the walk
 * allows, the walk is taken to be that much larger.
 * @throws RangeError for a moment, mean, shift or sd that is no number, or an sd or squares below 0
 */
export function smoothedPath(
  sessions: readonly SessionLevel[],
  walk: LevelWalk,
  squares = 0,
): readonly LogitEstimate[] {
  if (!(squares >= 0 && squares < Infinity)) throw new RangeError(`squares: expected >= 0, got ${squares}`);
  const filtered = emptyPath(sessions.length);
  const predicted = emptyPath(sessions.length);
  for (const [t, session] of sessions.entries()) {
    check(session);
    filtered.mean[t] = session.mean;
    filtered.variance[t] = session.sd ** 2;
    const before = sessions[t - 1];
    if (before === undefined) continue;
    predicted.mean[t] = before.mean + walk.gainPerSession * walk.gainFading ** t + (session.shift ?? 0);
    const widened = filtered.variance[t - 1]! + walkVariance(before.atMs, session.atMs, walk, squares);
    // Two levels known exactly have nothing to tell each other: the least number keeps 0/0 out.
    predicted.variance[t] = Math.max(widened, filtered.variance[t]!, Number.MIN_VALUE);
  }
  const { mean, variance } = smoothLevel({ predicted, filtered });
  return sessions.map((session, t) => ({
    mean: mean[t]!,
    sd: Math.min(session.sd, Math.sqrt(Math.max(0, variance[t]!))),
  }));
}

function walkVariance(fromMs: number, toMs: number, walk: LevelWalk, squares: number): number {
  const days = Math.min(Math.max(0, toMs - fromMs) / MS_PER_DAY, walk.walkDaysAtMost);
  return days * (walk.abilityWalkPerDay + walk.generalWalkPerDay + squares * walk.weightWalkPerDay);
}

function emptyPath(length: number): LevelPath {
  return { mean: new Float64Array(length), variance: new Float64Array(length) };
}

function check({ atMs, mean, sd, shift = 0 }: SessionLevel): void {
  for (const [name, value] of Object.entries({ atMs, mean, shift })) {
    if (!Number.isFinite(value)) throw new RangeError(`${name}: expected a number, got ${value}`);
  }
  if (!(sd >= 0 && sd < Infinity)) throw new RangeError(`sd: expected >= 0, got ${sd}`);
}
