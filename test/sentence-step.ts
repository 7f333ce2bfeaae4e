import { type SentenceWord, sentenceWords } from '../core/dictation/needs.ts';
import type { Item, Sequence } from '../core/sequence/sequence.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import type { Lexicon } from '../core/words/lexicon.ts';

/** Why one word sets the step: what it waits for, or that the word list does not have it. */
export interface WordWaits {
  readonly word: string;
  readonly code: 'waits' | 'irregular' | 'unknown';
  /** The items taught last of those that the word needs; empty for the other codes. */
  readonly items: readonly Item[];
}

/**
 * The first step at which every word of a sentence can be read: by its cards
 * and habits, or by heart. `step` is null when some word never can; `because`
 * then lists those words. Otherwise it lists the words that the step opens.
 */
export interface SentencePlace {
  readonly step: number | null;
  readonly because: readonly WordWaits[];
}

/** Finds the place of a sentence in an order of teaching; a text without words has none. */
export function stepOfSentence(text: string, sequence: Sequence, lexicon: Lexicon): SentencePlace {
  const words = sentenceWords(text, lexicon);
  const placed = words.map((word) => ({ word, step: stepOfWord(word, sequence) }));
  const never = placed.filter(({ step }) => step === NEVER).map(({ word }) => word);
  if (never.length > 0 || placed.length === 0) {
    return { step: null, because: once(never).map((word) => waitsForever(word, sequence)) };
  }
  const step = Math.max(...placed.map((word) => word.step));
  const last = placed.filter((word) => word.step === step).map(({ word }) => word);
  return { step, because: once(last).map((word) => waits(word, step, sequence)) };
}

const NEVER = Number.POSITIVE_INFINITY;

function stepOfWord({ word, needs, regular }: SentenceWord, sequence: Sequence): number {
  const byHeart = stepOf(sequence, { kind: 'word', word }) ?? NEVER;
  if (needs === null || !regular) return byHeart;
  return Math.min(byHeart, Math.max(1, ...needs.map((item) => stepOf(sequence, item) ?? NEVER)));
}

function waits({ word, needs }: SentenceWord, step: number, sequence: Sequence): WordWaits {
  const asked: readonly Item[] = [{ kind: 'word', word }, ...(needs ?? [])];
  const items = asked.filter((item) => stepOf(sequence, item) === step);
  return { word, code: 'waits', items };
}

function waitsForever({ word, needs, regular }: SentenceWord, sequence: Sequence): WordWaits {
  if (needs === null) return { word, code: 'unknown', items: [] };
  if (!regular) return { word, code: 'irregular', items: [] };
  const items = needs.filter((item) => stepOf(sequence, item) === null);
  return { word, code: 'waits', items };
}

function once(words: readonly SentenceWord[]): readonly SentenceWord[] {
  return words.filter(
    ({ word }, index) => words.findIndex((other) => other.word === word) === index,
  );
}
