import { itemKey, makeItem, parseItem } from '../core/sequence/item.ts';
import type { Item } from '../core/sequence/sequence.ts';

/** A common word as the ordering method sees it. */
export interface CommonWord {
  readonly word: string;
  /** 1 the commonest to 7. */
  readonly band: number;
  /** Item keys of the cards and habits that its ordinary reading asks for; none when irregular. */
  readonly needs: readonly string[];
  /** False when some letters follow no rule. */
  readonly regular: boolean;
}

const IRREGULAR = 'irregular';

/**
 * Reads the table of common words, commonest first: word, band, and what it
 * needs (items in text form, separated by spaces) or the word `irregular`. Lines that begin
 * with # are remarks. Throws on a line that it cannot read: the table is ours.
 */
export function parseCommonWords(text: string): readonly CommonWord[] {
  return text
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [word = '', band = '', needs = ''] = line.split('\t');
      const regular = needs !== IRREGULAR;
      const keys = regular ? needs.split(' ').map((part) => itemKey(readItem(part, word))) : [];
      return { word, band: Number(band), needs: keys, regular };
    });
}

/** One line of that table, without its end. `needs` is null for an irregular word. */
export function makeCommonWord(word: string, band: number, needs: readonly Item[] | null): string {
  return [word, band, needs ? needs.map(makeItem).join(' ') : IRREGULAR].join('\t');
}

function readItem(part: string, word: string): Item {
  const read = parseItem(part);
  if ('error' in read) throw new Error(`${word}: ${read.error.message}`);
  return read.item;
}
