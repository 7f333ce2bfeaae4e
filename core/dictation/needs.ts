import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
import { sameItem } from '../sequence/item.ts';
import type { Item } from '../sequence/sequence.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { needsOf } from '../words/needs.ts';
import { nameReading } from './sentences/names.ts';

/** A word of a sentence and what a child must have been taught to read and write it. */
export interface SentenceWord {
  /** Lower case, as the word list has it. */
  readonly word: string;
  /** Every card in order; empty when the word is unknown. */
  readonly cardIds: readonly string[];
  /** Cards and habits; null when the word is neither in the word list nor a listed name. */
  readonly needs: readonly Item[] | null;
  /** False where some card follows no rule: then only the word learned by heart will do. */
  readonly regular: boolean;
}

/** The words of a sentence in order. Only letters count; a possessive or contraction is one word. */
export function sentenceWords(text: string, lexicon: Lexicon): readonly SentenceWord[] {
  let known = parsed.get(lexicon);
  if (!known) {
    known = new Map();
    parsed.set(lexicon, known);
  }
  let words = known.get(text);
  if (!words) {
    words = (text.match(/[A-Za-z]+(?:['’][A-Za-z]+)*/g) ?? []).map((word) => read(word, lexicon));
    known.set(text, words);
  }
  return words;
}

/** Whether a group can write this word with what it was taught. */
export function isWritable({ word, needs, regular }: SentenceWord, taught: Taught): boolean {
  if (taught.irregularWords.has(word)) return true;
  return regular && (needs?.every((item) => isTaught(item, taught)) ?? false);
}

/**
 * Whether a word is an example of an item: it holds the card, asks for the
 * habit, or is the irregular word.
 */
export function shows({ word, cardIds, needs }: SentenceWord, item: Item): boolean {
  if (item.kind === 'word') return item.word === word;
  if (item.kind === 'habit') return needs?.some((need) => sameItem(need, item)) ?? false;
  return holdsCard(cardIds, item.id);
}

/** Whether these cards hold a card; a cluster or welded card, when they hold its parts in a row. */
export function holdsCard(cardIds: readonly string[], id: CardId): boolean {
  const parts = correspondenceById.get(id)?.parts ?? [];
  if (parts.length === 0) return cardIds.includes(id);
  return cardIds.some((_, at) => parts.every((part, offset) => cardIds[at + offset] === part));
}

function isTaught(item: Item, taught: Taught): boolean {
  if (item.kind === 'card') return taught.correspondences.has(item.id);
  return item.kind === 'habit'
    ? taught.habits.has(item.habit)
    : taught.irregularWords.has(item.word);
}

/** Sentences are few and lexicons fewer, so each is taken apart once. */
const parsed = new WeakMap<Lexicon, Map<string, readonly SentenceWord[]>>();

function read(written: string, lexicon: Lexicon): SentenceWord {
  const word = written.toLowerCase().replaceAll('’', "'");
  const index = lexicon.indexOf(word);
  if (index >= 0) {
    const cardIds = lexicon.cardIds(index);
    const needs = itemsOf(cardIds, lexicon.syllableCount(index));
    return { word, cardIds, needs, regular: lexicon.isRegular(index) };
  }
  const reading = written === word ? null : nameReading(word);
  if (!reading) return { word, cardIds: [], needs: null, regular: false };
  const cardIds = reading.cards.map(({ id }) => id);
  return {
    word,
    cardIds,
    needs: itemsOf(cardIds, reading.syllables.length),
    regular: reading.cards.every(({ regular }) => regular),
  };
}

function itemsOf(cardIds: readonly CardId[], syllables: number): readonly Item[] {
  const { ids, habits } = needsOf(cardIds, syllables);
  return [
    ...ids.map((id): Item => ({ kind: 'card', id })),
    // To write a faded vowel asks for more than to read it.
    ...habits.map((habit): Item => ({ kind: 'habit', habit: habit === 'flex' ? 'schwa' : habit })),
  ];
}
