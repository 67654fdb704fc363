/** Nodes and weights for integrals against a normal density. */
export interface GaussHermiteRule {
  /** Standard-normal abscissae (already multiplied by sqrt 2), ascending. */
  readonly nodes: Float64Array;
  /** Weights that add up to 1. */
  readonly weights: Float64Array;
}

const PI_QUARTER = Math.PI ** -0.25;

/** Orthonormal Hermite function recursion: value of H_n and of its derivative's factor H_(n-1) at x. */
function hermite(n: number, x: number): { value: number; previous: number } {
  let value = PI_QUARTER;
  let previous = 0;
  for (let j = 1; j <= n; j++) {
    const next = x * Math.sqrt(2 / j) * value - Math.sqrt((j - 1) / j) * previous;
    previous = value;
    value = next;
  }
  return { value, previous };
}

/** Roots of H_n, largest first, by Newton from between the roots found so far (Golub1969 gives the same). */
function roots(n: number): number[] {
  const half = Math.floor((n + 1) / 2);
  const found: number[] = [];
  for (let i = 0; i < half; i++) {
    let x: number;
    if (i === 0) x = Math.sqrt(2 * n + 1) - 1.85575 * (2 * n + 1) ** (-1 / 6);
    else if (i === 1) x = found[0]! - (1.14 * n ** 0.426) / found[0]!;
    else if (i === 2) x = 1.86 * found[1]! - 0.86 * found[0]!;
    else if (i === 3) x = 1.91 * found[2]! - 0.91 * found[1]!;
    else x = 2 * found[i - 1]! - found[i - 2]!;
    for (let step = 0; step < 50; step++) {
      const { value, previous } = hermite(n, x);
      const move = value / (Math.sqrt(2 * n) * previous);
      x -= move;
      if (Math.abs(move) < 1e-15 * (1 + Math.abs(x))) break;
    }
    found.push(n % 2 === 1 && i === half - 1 ? 0 : x);
  }
  return found;
}

/**
 * Gauss-Hermite rule for `E f(Z)`, Z standard normal: `sum_k weights[k] f(nodes[k])` (Golub1969); exact for
 * polynomials of degree 2n - 1, which the test checks against the normal moments.
 * @throws RangeError unless n is a whole number in 2..64
 */
export function gaussHermite(n: number): GaussHermiteRule {
  if (!Number.isInteger(n) || n < 2 || n > 64)
    throw new RangeError(`n: expected a whole number 2..64, got ${n}`);
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  roots(n).forEach((x, i) => {
    const { previous } = hermite(n, x);
    const weight = 1 / (n * previous * previous * Math.sqrt(Math.PI));
    nodes[i] = -x * Math.SQRT2;
    nodes[n - 1 - i] = x * Math.SQRT2;
    weights[i] = weight;
    weights[n - 1 - i] = weight;
  });
  return { nodes, weights };
}
