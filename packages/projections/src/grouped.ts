/** Things by their key, in order of first sight (Map.groupBy, which Node 20 has not). */
export function grouped<Key, Thing>(
  things: Iterable<Thing>,
  keyOf: (thing: Thing) => Key,
): Map<Key, Thing[]> {
  const groups = new Map<Key, Thing[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}
