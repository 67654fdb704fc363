import { InvalidArgumentError } from 'commander';

/** A whole number of 0 and more. @throws InvalidArgumentError for anything else */
export function wholeNumber(text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || !Number.isSafeInteger(value)) {
    throw new InvalidArgumentError(`expected a whole number of 0 or more, got ${text}.`);
  }
  return value;
}
