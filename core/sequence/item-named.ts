import { parseItem } from './item.ts';
import type { Item } from './sequence.ts';

/** The item that a text of our own tables names; throws where it names none. */
export function itemNamed(text: string): Item {
  const read = parseItem(text);
  if ('error' in read) throw new Error(read.error.message);
  return read.item;
}
