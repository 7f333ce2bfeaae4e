/**
 * The same items in an order that parts those that are alike: each is the first of those left that is not
 * like the one before it; when all that are left are, they go between earlier ones that they are not
 * like. Where items are alike in groups, two stand side by side with their like only when no order at
 * all parts them. O(items²). `before` is what the order comes after.
 */
export function keepApart<Item>(
  items: readonly Item[],
  alike: (one: Item, other: Item) => boolean,
  before?: Item,
): readonly Item[] {
  const left = [...items];
  const ordered: Item[] = before === undefined ? [] : [before];
  const fixed = ordered.length;
  const parts = (item: Item, at: number) =>
    at >= fixed &&
    [ordered[at - 1], ordered[at]].every((next) => next === undefined || !alike(next, item));
  while (left.length > 0) {
    const fits = left.findIndex((item) => parts(item, ordered.length));
    const [item] = left.splice(Math.max(0, fits), 1) as [Item];
    const between = fits < 0 ? ordered.findIndex((_, at) => parts(item, at)) : -1;
    ordered.splice(between < 0 ? ordered.length : between, 0, item);
  }
  return ordered.slice(fixed);
}
