/**
 * The value itself, for a caller that must hand in a number.
 * @throws RangeError unless it is finite and within the bounds, both included
 */
export function finiteBetween(name: string, value: number, low: number, high: number): number {
  if (value >= low && value <= high && Number.isFinite(value)) return value;
  throw new RangeError(`${name}: expected ${low}..${high}, got ${value}`);
}
