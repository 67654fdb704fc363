import { searchMaximum } from './search-maximum.ts';

export interface MaximiseOptions {
  /** Most evaluations; then the end is `out-of-steps`. */
  readonly steps: number;
  /** It has converged when what is still to be gained is under this, in the value's own unit. */
  readonly tolerance: number;
  /** Length of the difference that gradients are taken with, in the parameters' unit; 1e-4 if left out. */
  readonly difference?: number;
  /** Asked after each evaluation whether to go on. */
  readonly onStep?: (progress: { readonly steps: number; readonly best: number }) => boolean;
}

export interface Maximised {
  readonly end: 'converged' | 'stopped' | 'out-of-steps';
  /** The best point seen, and its value. */
  readonly x: Float64Array;
  readonly value: number;
  readonly steps: number;
}

/**
 * Maximises a smooth function of a few parameters (hyper-parameters: put them on a scale where 1 is a big move,
 * logs of sds), by `searchMaximum`. Deterministic. A local maximum: start it from more than one place if there may
 * be several. A value that is not finite counts as minus infinity.
 * @throws RangeError if the value at the start is not finite, or an option is not positive
 */
export function maximise(
  valueAt: (x: Float64Array) => number,
  start: ArrayLike<number>,
  { steps, tolerance, difference = 1e-4, onStep }: MaximiseOptions,
): Maximised {
  if (!(steps >= 1)) throw new RangeError(`steps: expected 1 or more, got ${steps}`);
  const search = searchMaximum(start, tolerance, difference);
  let best: Float64Array = Float64Array.from(start);
  let value = -Infinity;
  let asked = search.next();
  for (let step = 1; !asked.done; step++) {
    const x = asked.value;
    const got = valueAt(x);
    if (step === 1 && !Number.isFinite(got))
      throw new RangeError(`start: expected a finite value there, got ${got}`);
    if (got > value && got < Infinity) {
      best = x;
      value = got;
    }
    const ended = (end: Maximised['end']): Maximised => ({ end, x: best, value, steps: step });
    if (onStep?.({ steps: step, best: value }) === false) return ended('stopped');
    asked = search.next(got);
    if (asked.done) return ended('converged');
    if (step >= steps) return ended('out-of-steps');
  }
  throw new RangeError('start: expected at least one parameter, got none');
}
