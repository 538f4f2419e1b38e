/** An item that a list must have there; a mistake of ours, said as one, where it has none. */
export function itemAt<Item>(list: ArrayLike<Item>, index: number): Item {
  const item = list[index];
  if (item === undefined) throw new Error(`a list of ${list.length} has no item ${index}`);
  return item;
}

/** What a map must have under a key. */
export function valueAt<Key, Value>(map: ReadonlyMap<Key, Value>, key: Key): Value {
  const value = map.get(key);
  if (value === undefined) throw new Error(`a map of ${map.size} has nothing under ${String(key)}`);
  return value;
}

/** The last item of a list that must have one. */
export const lastOf = <Item>(list: ArrayLike<Item>): Item => itemAt(list, list.length - 1);
