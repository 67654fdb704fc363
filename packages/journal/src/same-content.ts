/** Whether two JSON values say the same, whatever the order of the keys. A key whose value is undefined is not there. */
export function sameContent(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((item, i) => sameContent(item, b[i]));
  }
  const inA = a as Record<string, unknown>;
  const inB = b as Record<string, unknown>;
  const keys = definedKeys(inA);
  if (keys.length !== definedKeys(inB).length) return false;
  return keys.every((key) => Object.hasOwn(inB, key) && sameContent(inA[key], inB[key]));
}

/** One text for all values that say the same: JSON with the keys in order of code units, undefined left out. */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const object = value as Record<string, unknown>;
  const pairs = definedKeys(object)
    .sort()
    .map((key) => `${JSON.stringify(key)}:${canonicalText(object[key])}`);
  return `{${pairs.join(',')}}`;
}

function definedKeys(object: Record<string, unknown>): string[] {
  return Object.keys(object).filter((key) => object[key] !== undefined);
}
