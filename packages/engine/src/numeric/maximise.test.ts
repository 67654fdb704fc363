import { describe, expect, it } from 'vitest';
import { type MaximiseOptions, maximise } from './maximise.ts';

const OPTIONS: MaximiseOptions = { steps: 2_000, tolerance: 1e-12 };

/** Rosenbrock's valley (Rosenbrock1960), upside down: the one maximum is 0 at (1, 1). */
const valley = ([a, b]: ArrayLike<number> & Iterable<number>) => -(100 * (b! - a! * a!) ** 2 + (1 - a!) ** 2);

describe('maximise', () => {
  it.each([[[-1.2, 1]], [[3, -2]], [[0, 0]]])("follows Rosenbrock's valley from %j", (start) => {
    const { end, x, value } = maximise(valley, start, OPTIONS);
    expect(end).toBe('converged');
    // The valley's floor bends by 0.4 at (1, 1): what is left under 1e-12 is a distance under 2.3e-6; 10 times that.
    expect(Math.abs(x[0]! - 1)).toBeLessThan(2e-5);
    expect(Math.abs(x[1]! - 1)).toBeLessThan(4e-5);
    expect(Math.abs(value)).toBeLessThan(1e-10);
  });

  it('finds the top of a slanted, ill-scaled hill', () => {
    // Top at (3, -40), bends 1e4 and 1e-2, correlation 0.9 between them: by hand.
    const hill = ([a, b]: ArrayLike<number> & Iterable<number>) => {
      const u = 100 * (a! - 3);
      const v = 0.1 * (b! + 40);
      return 7 - 0.5 * (u * u + v * v + 1.8 * u * v);
    };
    const { end, x, value } = maximise(hill, [0, 0], OPTIONS);
    expect(end).toBe('converged');
    expect(Math.abs(x[0]! - 3)).toBeLessThan(1e-6);
    expect(Math.abs(x[1]! + 40)).toBeLessThan(1e-3);
    expect(Math.abs(value - 7)).toBeLessThan(1e-10);
  });

  it('keeps inside where the function is finite', () => {
    // x ln-like edge: ln x - x is highest at 1, and not a number under 0.
    const { end, x } = maximise(([a]) => Math.log(a!) - a!, [0.01], OPTIONS);
    expect(end).toBe('converged');
    // Third derivative 2, central differences of 1e-4: 3e-9; tolerance 1e-12 leaves 1.4e-6.
    expect(Math.abs(x[0]! - 1)).toBeLessThan(5e-6);
  });

  it('rests at a kink, within a difference of it', () => {
    const { end, x } = maximise(([a, b]) => -Math.abs(a! - 0.3) - Math.abs(b! + 2), [0, 0], OPTIONS);
    expect(end).toBe('converged');
    expect(Math.abs(x[0]! - 0.3)).toBeLessThanOrEqual(1e-4);
    expect(Math.abs(x[1]! + 2)).toBeLessThanOrEqual(1e-4);
  });

  it('is deterministic, and says when steps run out', () => {
    const run = () => maximise(valley, [-1.2, 1], { ...OPTIONS, steps: 40 });
    expect(run().end).toBe('out-of-steps');
    expect(run().steps).toBe(40);
    expect(run().value).toBeGreaterThan(valley([-1.2, 1]));
    expect(run()).toEqual(run());
  });

  it('stops between two evaluations when told to, with the best so far', () => {
    let calls = 0;
    const seen: number[] = [];
    const { end, steps, value } = maximise(
      (x) => {
        calls += 1;
        return valley(x);
      },
      [-1.2, 1],
      {
        ...OPTIONS,
        onStep: ({ steps: done, best }) => {
          seen.push(best);
          return done < 17;
        },
      },
    );
    expect(end).toBe('stopped');
    expect(steps).toBe(17);
    expect(calls).toBe(17);
    expect(value).toBe(Math.max(...seen));
  });

  it('has converged at once where nothing changes', () => {
    expect(maximise(() => 5, [1, 2, 3], OPTIONS)).toMatchObject({ end: 'converged', value: 5 });
  });

  it('names what is wrong', () => {
    expect(() => maximise(() => Number.NaN, [0], OPTIONS)).toThrow(/^start: /);
    expect(() => maximise(() => 0, [], OPTIONS)).toThrow(/^start: /);
    expect(() => maximise(() => 0, [0], { ...OPTIONS, steps: 0 })).toThrow(/^steps: /);
    expect(() => maximise(() => 0, [0], { ...OPTIONS, tolerance: 0 })).toThrow(/^tolerance: /);
    expect(() => maximise(() => 0, [0], { ...OPTIONS, difference: -1 })).toThrow(/^difference: /);
  });
});
