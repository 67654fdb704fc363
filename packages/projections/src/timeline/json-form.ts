/**
 * Plain data with maps, arrays of doubles and numbers without an end, as JSON can hold it, and back, to the bit: JSON writes the
 * shortest text that reads back as the same double. A `$` key marks what is not an ordinary object.
 */
export function toJsonForm(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? value : { $number: String(value) };
  if (typeof value !== 'object' || value === null) return value;
  if (value instanceof Float64Array)
    return { $doubles: value.every(Number.isFinite) ? Array.from(value) : Array.from(value, toJsonForm) };
  if (value instanceof Map) return { $map: Array.from(value, ([key, held]) => [key, toJsonForm(held)]) };
  if (Array.isArray(value)) return value.map(toJsonForm);
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, toJsonForm(held)]));
}

const numberOf = (n: unknown): number => (typeof n === 'number' ? n : (fromJsonForm(n) as number));

/** What `toJsonForm` was given. A value of another make comes back as it may: the reader checks it. */
export function fromJsonForm(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(fromJsonForm);
  const { $number, $doubles, $map } = value as Readonly<Record<string, unknown>>;
  if (typeof $number === 'string') return Number($number);
  if (Array.isArray($doubles)) return Float64Array.from($doubles, numberOf);
  if (Array.isArray($map)) {
    return new Map($map.map((entry: readonly unknown[]) => [entry[0], fromJsonForm(entry[1])]));
  }
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, fromJsonForm(held)]));
}
