/** The first `count` items, in the order given, that are wanted; asks about no more than it must. */
export function firstOf<T>(
  items: readonly T[],
  count: number,
  isWanted: (item: T) => boolean,
): T[] {
  const found: T[] = [];
  for (const item of items) {
    if (found.length === count) break;
    if (isWanted(item)) found.push(item);
  }
  return found;
}
