/**
 * How good a nonsense word is to practise on. What may be nonsense at all
 * (legal, no sound-alike, no name) is for the judge; here such words are ordered
 * easy to hard.
 *
 * Measure: real neighbours, the words that differ in one sound (one put in,
 * left out or changed); words of dense neighbourhoods are read and repeated
 * more easily. Reference: Coltheart, Davelaar, Jonasson & Besner, "Access to the
 * internal lexicon", Attention and Performance VI (1977), for letters; Luce &
 * Pisoni, "Recognizing spoken words: the neighborhood activation model", Ear and
 * Hearing 19 (1998), for sounds. O(sounds × phonemes) look-ups a word.
 */
import { PHONEMES, type Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { SOUND_ALIKE_BAND } from './judge.ts';

/** How many familiar words differ from these sounds in one sound. */
export function realNeighbours(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  const found = new Set<number>();
  const look = (from: number, to: number, between: readonly Phoneme[]): void => {
    const said = [...sounds.slice(0, from), ...between, ...sounds.slice(to)].join(' ');
    for (const index of lexicon.saidAs(said)) {
      if (lexicon.band(index) <= SOUND_ALIKE_BAND) found.add(index);
    }
  };
  for (let at = 0; at <= sounds.length; at++) {
    if (at < sounds.length) look(at, at + 1, []);
    for (const phoneme of PHONEMES) {
      look(at, at, [phoneme]);
      if (at < sounds.length && phoneme !== sounds[at]) look(at, at + 1, [phoneme]);
    }
  }
  return found.size;
}

/** Nonsense words easy to hard: fewer sounds first, then more real neighbours; else as they came. */
export function easyToHard<T extends { readonly sounds: readonly Phoneme[] }>(
  words: readonly T[],
  lexicon: Lexicon,
): readonly T[] {
  return words
    .map((word) => ({ word, near: realNeighbours(word.sounds, lexicon) }))
    .sort((a, b) => a.word.sounds.length - b.word.sounds.length || b.near - a.near)
    .map(({ word }) => word);
}
