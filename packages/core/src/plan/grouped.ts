/** Things by a key of theirs, the keys in the order in which they first came. */
export function grouped<T, Key>(things: readonly T[], keyOf: (thing: T) => Key): Map<Key, T[]> {
  const groups = new Map<Key, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group) group.push(thing);
    else groups.set(key, [thing]);
  }
  return groups;
}
