import { InvalidArgumentError } from 'commander';

/** Reads a number between two bounds, both included, in plain or e-notation. The reader throws InvalidArgumentError for anything else. */
export function measuredNumber(what: string, low: number, high: number): (text: string) => number {
  return (text) => {
    const value = Number(text);
    if (/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text) && value >= low && value <= high) return value;
    throw new InvalidArgumentError(`expected ${what}, ${low} to ${high}, got ${text}.`);
  };
}
