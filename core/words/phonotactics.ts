/**
 * How much a row of sounds is like an English word: its phonotactic
 * probability, for choosing nonsense words that are good to say.
 *
 * Measure: Vitevitch & Luce 2004, Behavior Research Methods, Instruments, &
 * Computers 36, 481–487. For each position, the weight of the words that have
 * these sounds there, divided by the weight of all words that reach so far;
 * the mean over positions. The weight of a word is the logarithm of how often
 * it is met. Single sounds or pairs are counted; pairs tell *blick* from
 * *bnick*. O(sounds of all words) once, then O(sounds) for each score.
 *
 * A learned grammar of constraints judges finer; it was left alone because
 * legal onsets and codas are already rules here, and this has a published
 * example to be held to.
 */
import { correspondenceById } from '../language/correspondences.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from './lexicon.ts';

/** A word by its sounds, weighted by the logarithm of its frequency (0 or more). */
export interface WeightedWord {
  readonly sounds: readonly string[];
  readonly weight: number;
}

/** How many sounds in a row are counted together. */
export type Span = 1 | 2;

/** The weight of each span at each position, and of all words that reach that position. */
export interface PositionTable {
  readonly span: Span;
  readonly weights: ReadonlyMap<string, number>;
  readonly totals: readonly number[];
}

/** Counts spans of sounds by position over a table of weighted words. */
export function countPositions(words: Iterable<WeightedWord>, span: Span): PositionTable {
  const weights = new Map<string, number>();
  const totals: number[] = [];
  for (const { sounds, weight } of words) {
    for (let at = 0; at + span <= sounds.length; at++) {
      const key = keyOf(sounds, at, span);
      weights.set(key, (weights.get(key) ?? 0) + weight);
      totals[at] = (totals[at] ?? 0) + weight;
    }
  }
  return { span, weights, totals };
}

/**
 * The mean positional probability of these sounds, 0 to 1. A position that no
 * word reaches counts 0; so does a row too short to hold one span.
 */
export function positionalProbability(sounds: readonly string[], table: PositionTable): number {
  const { span, weights, totals } = table;
  const positions = sounds.length - span + 1;
  if (positions < 1) return 0;
  let sum = 0;
  for (let at = 0; at < positions; at++) {
    const total = totals[at] ?? 0;
    if (total > 0) sum += (weights.get(keyOf(sounds, at, span)) ?? 0) / total;
  }
  return sum / positions;
}

/**
 * The same over pairs of sounds in the word list, for a nonsense word: higher
 * is more like a word. Bands stand for the logarithm of frequency, 7 for the
 * commonest words to 1 for the rarest: each is some two to three times as many
 * words as the one before. The first call for a list counts it (0.1 to 0.3 s).
 */
export function phonotacticScore(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  let table = tables.get(lexicon);
  if (!table) {
    table = countPositions(wordsOf(lexicon), 2);
    tables.set(lexicon, table);
  }
  return positionalProbability(sounds, table);
}

const tables = new WeakMap<Lexicon, PositionTable>();

/** Every word that the table of correspondences explains, by its ordinary reading. */
function* wordsOf(lexicon: Lexicon): Generator<WeightedWord> {
  for (let index = 0; index < lexicon.size; index++) {
    const cards = lexicon.cardIds(index).map((id) => correspondenceById.get(id));
    if (cards.includes(undefined)) continue;
    yield {
      sounds: cards.flatMap((card) => card?.phonemes ?? []),
      weight: 8 - lexicon.band(index),
    };
  }
}

function keyOf(sounds: readonly string[], at: number, span: Span): string {
  return `${at} ${sounds[at]}${span === 2 ? ` ${sounds[at + 1]}` : ''}`;
}
