import type { Phoneme } from './phonemes.ts';

/**
 * The consonants that may begin an English syllable. Single ones: all but ŋ
 * and, at a word's beginning, ʒ. Clusters: the onsets of two and three sounds
 * that Hayes & Wilson (2008) count in the CMU dictionary.
 */
export function isLegalOnset(sounds: readonly Phoneme[]): boolean {
  if (sounds.length === 0) return true;
  if (sounds.length === 1) return sounds[0] !== 'NG' && sounds[0] !== 'ZH';
  return LEGAL_CLUSTERS.has(sounds.join(' '));
}

/** Legal onsets of two and three sounds, joined by spaces. */
const LEGAL_CLUSTERS: ReadonlySet<string> = new Set([
  'B L',
  'B R',
  'D R',
  'D W',
  'F L',
  'F R',
  'G L',
  'G R',
  'G W',
  'HH W',
  'K L',
  'K R',
  'K W',
  'P L',
  'P R',
  'S K',
  'S K L',
  'S K R',
  'S K W',
  'S L',
  'S M',
  'S N',
  'S P',
  'S P L',
  'S P R',
  'S T',
  'S T R',
  'S W',
  'SH R',
  'T R',
  'T W',
  'TH R',
  'TH W',
]);
