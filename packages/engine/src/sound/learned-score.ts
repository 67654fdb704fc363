/** Numbers of a score: how each figure is centred and scaled, then a layer of a few hyperbolic tangents beside a plain sum. */
export interface ScoreNumbers {
  readonly mean: readonly number[];
  readonly sd: readonly number[];
  readonly hidden: number;
  /** For each hidden one its weights and offset, then what each counts, then the plain sum's weights and offset. */
  readonly weights: readonly number[];
}

/**
 * Log odds that a candidate is what is looked for: z = c + sum a_i x_i + sum v_k tanh(b_k + sum w_ki x_i), x the figures less their mean over
 * their spread. The numbers are fitted once, by `studies/sound-detector`, and fixed; a figure out of the fitted range is held at 5 spreads.
 * @throws RangeError where the numbers do not fit together
 */
export function createScore({ mean, sd, hidden, weights }: ScoreNumbers) {
  const inputs = mean.length;
  const plainAt = hidden * (inputs + 1) + hidden;
  if (sd.length !== inputs || weights.length !== plainAt + inputs + 1)
    throw new RangeError(
      `weights: expected ${plainAt + inputs + 1} for ${inputs} figures, got ${weights.length}`,
    );
  const x = new Float64Array(inputs);
  return (figures: Float64Array): number => {
    let z = weights[plainAt + inputs]!;
    for (let i = 0; i < inputs; i++) {
      x[i] = Math.max(-5, Math.min(5, (figures[i]! - mean[i]!) / sd[i]!));
      z += weights[plainAt + i]! * x[i]!;
    }
    for (let k = 0; k < hidden; k++) {
      const row = k * (inputs + 1);
      let sum = weights[row + inputs]!;
      for (let i = 0; i < inputs; i++) sum += weights[row + i]! * x[i]!;
      z += weights[hidden * (inputs + 1) + k]! * Math.tanh(sum);
    }
    return z;
  };
}
