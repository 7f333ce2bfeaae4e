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
import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from './lexicon.ts';

/** A word by its sounds, weighted by the logarithm of its frequency (0 or more). */
export interface WeightedWord {
  readonly sounds: readonly string[];
  readonly weight: number;
}

/** How many sounds in a row are counted together. */
export type SoundSpan = 1 | 2;

/**
 * The weight of each span at each position, by its first sound and its second
 * (its first again where single sounds are counted), and of all words that reach
 * that position.
 */
export interface PositionTable {
  readonly span: SoundSpan;
  readonly weights: readonly ReadonlyMap<string, ReadonlyMap<string, number>>[];
  readonly totals: readonly number[];
}

/** Counts spans of sounds by position over a table of weighted words. */
export function countPositions(words: Iterable<WeightedWord>, span: SoundSpan): PositionTable {
  const weights: Map<string, Map<string, number>>[] = [];
  const totals: number[] = [];
  for (const { sounds, weight } of words) {
    for (let at = 0; at + span <= sounds.length; at++) {
      const first = sounds[at] as string;
      const second = sounds[at + span - 1] as string;
      weights[at] ??= new Map();
      const here = weights[at] as Map<string, Map<string, number>>;
      let after = here.get(first);
      if (!after) {
        after = new Map();
        here.set(first, after);
      }
      after.set(second, (after.get(second) ?? 0) + weight);
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
  const { span, totals } = table;
  const positions = sounds.length - span + 1;
  if (positions < 1) return 0;
  let sum = 0;
  for (let at = 0; at < positions; at++) {
    const total = totals[at] ?? 0;
    if (total > 0) sum += weightAt(table, sounds, at) / total;
  }
  return sum / positions;
}

function weightAt({ span, weights }: PositionTable, sounds: readonly string[], at: number): number {
  const first = sounds[at] as string;
  const second = sounds[at + span - 1] as string;
  return weights[at]?.get(first)?.get(second) ?? 0;
}

/**
 * The same over pairs of sounds in the word list, for a nonsense word: higher
 * is more like a word. Bands stand for the logarithm of frequency, 7 for the
 * commonest words to 1 for the rarest: each is some two to three times as many
 * words as the one before. The first call for a list counts it, in some 50 ms.
 */
export function phonotacticScore(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  return positionalProbability(sounds, pairsIn(lexicon));
}

/** Whether two of these sounds follow each other at a place where they do in no word of the list. */
export function hasUnheardPair(sounds: readonly Phoneme[], lexicon: Lexicon): boolean {
  const table = pairsIn(lexicon);
  for (let at = 0; at + 1 < sounds.length; at++) {
    if (weightAt(table, sounds, at) === 0) return true;
  }
  return false;
}

function pairsIn(lexicon: Lexicon): PositionTable {
  let table = tables.get(lexicon);
  if (!table) {
    table = countPositions(wordsOf(lexicon), 2);
    tables.set(lexicon, table);
  }
  return table;
}

const tables = new WeakMap<Lexicon, PositionTable>();

/** Every word that the table of correspondences explains, by its ordinary reading. */
function* wordsOf(lexicon: Lexicon): Generator<WeightedWord> {
  for (let index = 0; index < lexicon.size; index++) {
    const sounds = soundsOfCards(lexicon.cardIds(index));
    if (sounds) yield { sounds, weight: 8 - lexicon.band(index) };
  }
}

/** The sounds of cards in order; null where the table of correspondences has not all of them. */
export function soundsOfCards(ids: readonly CardId[]): readonly Phoneme[] | null {
  const sounds: Phoneme[] = [];
  for (const id of ids) {
    const card = correspondenceById.get(id);
    if (!card) return null;
    for (const sound of card.phonemes) sounds.push(sound);
  }
  return sounds;
}
