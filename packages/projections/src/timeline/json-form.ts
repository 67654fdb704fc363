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

/** All at once, as the engine's own code does it: a kennel's state holds hundreds of thousands, read before the first screen is true. */
function doublesOf(numbers: readonly unknown[]): Float64Array {
  const doubles = new Float64Array(numbers as readonly number[]);
  // What was no number came out as none.
  if (!doubles.includes(Number.NaN)) return doubles;
  return Float64Array.from(numbers, (n) => (typeof n === 'number' ? n : (fromJsonForm(n) as number)));
}

/**
 * What `toJsonForm` was given. A value of another make comes back as it may: the reader checks it. A part that needed no form of
 * its own is shared with what was read, not copied.
 */
export function fromJsonForm(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    const held = value.map(fromJsonForm);
    return held.some((one, k) => one !== value[k]) ? held : value;
  }
  const { $number, $doubles, $map } = value as Readonly<Record<string, unknown>>;
  if (typeof $number === 'string') return Number($number);
  if (Array.isArray($doubles)) return doublesOf($doubles);
  if (Array.isArray($map)) {
    return new Map($map.map((entry: readonly unknown[]) => [entry[0], fromJsonForm(entry[1])]));
  }
  let changed: [string, unknown][] | null = null;
  for (const [key, one] of Object.entries(value)) {
    if (typeof one !== 'object' || one === null) continue;
    const held = fromJsonForm(one);
    if (held === one) continue;
    changed ??= [];
    changed.push([key, held]);
  }
  return changed === null ? value : { ...value, ...Object.fromEntries(changed) };
}
