/** The items under their keys, in their order. */
export function groupBy<Item, Key>(some: Iterable<Item>, keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of some) {
    const key = keyOf(item);
    const others = groups.get(key);
    if (others) others.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
