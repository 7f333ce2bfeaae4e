import { itemKey } from '../item.ts';
import { itemNamed } from '../item-named.ts';
import type { Item, Step } from '../sequence.ts';

/** What an ending does to the word before it, that an order teaches no card for. */
export interface OfferedEnding {
  readonly rule: 'drop the e' | 'y to i';
  /** The cards with which such words are read, and which the order never names. */
  readonly items: readonly Item[];
  /** The number of the step from which its words could be read. */
  readonly step: number;
  /** Words that show what is meant, and words that open besides. */
  readonly example: string;
  readonly besides: string;
}

/**
 * *Drop the e* and *y to i* where an order has the words before the ending and
 * the ending (a_e and -ing; y and -ed or -s), but no card to read *making* or
 * *cried* with. Each comes with the last of what it leans on. Common practice,
 * no source.
 */
export function offeredEndings(steps: readonly Step[]): readonly OfferedEnding[] {
  const first = new Map<string, number>();
  for (const { items, number } of steps) {
    for (const item of items) {
      const key = itemKey(item);
      if (!first.has(key)) first.set(key, number);
    }
  }
  return RULES.flatMap(({ endings, pairs, ...rule }) => {
    const ending = earliest(endings.map((key) => first.get(key)));
    const open = pairs.filter(
      ({ base, cards }) => first.has(base) && cards.some((card) => !first.has(itemKey(card))),
    );
    if (ending === null || open.length === 0) return [];
    const items = open.flatMap(({ cards }) => cards.filter((card) => !first.has(itemKey(card))));
    const bases = open.map(({ base }) => first.get(base) ?? 0);
    return [{ ...rule, items, step: Math.max(ending, ...bases) }];
  });
}

function earliest(numbers: readonly (number | undefined)[]): number | null {
  const known = numbers.filter((number) => number !== undefined);
  return known.length === 0 ? null : Math.min(...known);
}

const pair = (base: string, cards: string) => ({
  base: itemKey(itemNamed(base)),
  cards: cards.split(' ').map(itemNamed),
});
const keys = (text: string) => text.split(' ').map((each) => itemKey(itemNamed(each)));

const RULES = [
  {
    rule: 'drop the e',
    endings: keys('ing ng er'),
    pairs: [
      pair('a_e', 'a=EY'),
      pair('i_e', 'i=AY'),
      pair('o_e', 'o=OW'),
      pair('u_e', 'u=UW u=Y+UW'),
    ],
    example: 'making, hoping',
    besides: 'basic, go',
  },
  {
    rule: 'y to i',
    endings: keys('ed ed=D s=Z es'),
    pairs: [pair('y=AY', 'ie=AY'), pair('y=IY', 'ie=IY')],
    example: 'cried, copies',
    besides: 'pie, brief',
  },
] as const;
