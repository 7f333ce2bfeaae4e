import { type CardId, graphemeOf, isSightId, makeSightId } from '../language/card-id.ts';
import { correspondenceById, correspondencesByGrapheme } from '../language/correspondences.ts';
import { isHabit } from '../language/taught.ts';
import { LONGEST_ITEM, nearMisses } from './near-misses.ts';
import type { Item } from './sequence.ts';

/** Why a text names no item: the item as it was written, what may have been meant, a sentence. */
export interface ItemError {
  readonly code: 'unknown-card' | 'unknown-habit' | 'not-a-word';
  readonly item: string;
  readonly nearMisses: readonly string[];
  readonly message: string;
}

/**
 * Reads the text form of an item: a card by its grapheme (`sh`: its first
 * sound) or id (`ea=EH`), `word:said`, `habit:schwa` or a habit's bare name.
 * Forgives capitals, spaces around the sign, `a-e` for `a_e`, and the hyphens
 * of `-ck` and `bl-`.
 */
export function parseItem(text: string): { readonly item: Item } | { readonly error: ItemError } {
  const asked = text.trim();
  if (asked.length > LONGEST_ITEM) {
    const start = `${asked.slice(0, LONGEST_ITEM - 20)}…`;
    return failure('unknown-card', start, `“${start}” is too long for an item.`, []);
  }
  const prefixed = /^(word|habit)\s*:\s*(.*)$/i.exec(asked);
  if (prefixed) {
    const rest = (prefixed[2] as string).trim().toLowerCase();
    return prefixed[1]?.toLowerCase() === 'word' ? wordItem(rest, asked) : habitItem(rest, asked);
  }
  const bare = asked.toLowerCase();
  if (isHabit(bare)) return { item: { kind: 'habit', habit: bare } };
  const id = cardId(asked);
  if (id !== null) return { item: { kind: 'card', id } };
  return failure('unknown-card', asked, `We know no card “${asked}”.`);
}

/** Whether a text names an item, as `parseItem` reads it. */
export function isItem(text: string): boolean {
  const asked = text.trim().toLowerCase();
  if (asked.length > LONGEST_ITEM) return false;
  if (isHabit(asked) || cardId(asked) !== null) return true;
  return asked.includes(':') && 'item' in parseItem(text);
}

/** The text form of an item; the shortest that `parseItem` reads back. */
export function makeItem(item: Item): string {
  if (item.kind === 'word') return `word:${item.word}`;
  if (item.kind === 'habit') return `habit:${item.habit}`;
  const grapheme = graphemeOf(item.id);
  return correspondencesByGrapheme.get(grapheme)?.[0]?.id === item.id ? grapheme : item.id;
}

/** Items as one text, separated by spaces. */
export function makeItems(items: readonly Item[]): string {
  return items.map(makeItem).join(' ');
}

/**
 * Splits a list as people type it, at spaces, commas or semicolons. Spaces
 * beside the signs of one item (`ea = EH`, `word: said`) hold it together.
 */
export function splitItems(text: string): readonly string[] {
  return text
    .replace(/\s+/g, ' ')
    .replace(/ ?([=+:]) ?/g, '$1')
    .split(/[\s,;]+/)
    .filter((part) => part !== '');
}

/** Whether two items are the same thing to teach. */
export function sameItem(left: Item, right: Item): boolean {
  return itemKey(left) === itemKey(right);
}

/** The item that teaches a card: itself, or the word that is known by sight. */
export function itemOfCard(id: CardId): Item {
  return isSightId(id) ? { kind: 'word', word: graphemeOf(id) } : { kind: 'card', id };
}

/** What an item teaches to be read at once: a card, or a word known by sight; null for a habit. */
export function cardOfItem(item: Item): CardId | null {
  if (item.kind === 'habit') return null;
  return item.kind === 'card' ? item.id : makeSightId(item.word);
}

/** A string that is equal for equal items: the full text form. */
export function itemKey(item: Item): string {
  if (item.kind === 'card') return `card:${item.id}`;
  return item.kind === 'word' ? `word:${item.word}` : `habit:${item.habit}`;
}

function cardId(asked: string): CardId | null {
  const sign = asked.indexOf('=');
  const written = (sign < 0 ? asked : asked.slice(0, sign)).trim().toLowerCase();
  const grapheme = written.replace(/^([aeiouy])[-–—]e$/, '$1_e').replace(/^-+|-+$/g, '');
  if (sign < 0) return correspondencesByGrapheme.get(grapheme)?.[0]?.id ?? null;
  const sounds = asked
    .slice(sign + 1)
    .trim()
    .toUpperCase();
  const id: CardId = `${grapheme}=${sounds}`;
  return correspondenceById.has(id) ? id : null;
}

function wordItem(word: string, asked: string): ReturnType<typeof parseItem> {
  const straight = word.replaceAll('’', "'");
  if (/^[a-z]+(?:'[a-z]+)*$/.test(straight)) return { item: { kind: 'word', word: straight } };
  return failure('not-a-word', asked, `“${asked}” holds no single word after “word:”.`);
}

function habitItem(habit: string, asked: string): ReturnType<typeof parseItem> {
  if (isHabit(habit)) return { item: { kind: 'habit', habit } };
  return failure('unknown-habit', asked, `We know no spelling habit “${habit}”.`);
}

function failure(
  code: ItemError['code'],
  item: string,
  complaint: string,
  near: readonly string[] | null = null,
): { readonly error: ItemError } {
  // Looked for when someone asks: of a long list of unknown things nobody reads all.
  let found = near;
  const misses = () => {
    found ??= nearMisses(item);
    return found;
  };
  const error: ItemError = {
    code,
    item,
    get nearMisses() {
      return misses();
    },
    get message() {
      return `${complaint}${askFor(misses())}`;
    },
  };
  return { error };
}

function askFor(near: readonly string[]): string {
  if (near.length === 0) return '';
  const last = near.at(-1) as string;
  const list = near.length === 1 ? last : `${near.slice(0, -1).join(', ')} or ${last}`;
  return ` Did you mean ${list}?`;
}
