import type { CardId } from '../language/card-id.ts';
import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondenceById, rowById } from '../language/correspondences.ts';
import { isVowelPhoneme, type Phoneme } from '../language/phonemes.ts';
import type { Reading } from '../language/reading.ts';
import { isNucleus } from '../language/syllables.ts';
import { type Closeness, closenessTo } from './closeness.ts';

/** One card of the word said, with what must be known of it to read what was written for it. */
export interface Target {
  readonly id: CardId;
  readonly card: Correspondence | null;
  readonly grapheme: string;
  readonly split: boolean;
  readonly phonemes: readonly Phoneme[];
  readonly isVowel: boolean;
  /** In a one-syllable word: before its vowel, its vowel, after it; in longer ones at the edges only. */
  readonly place: 'beginning' | 'middle' | 'ending' | 'inside';
  /** In a syllable after the first, where vowels are weak. */
  readonly weak: boolean;
  /** The sounds right before and right after. */
  readonly before: Phoneme | null;
  readonly after: Phoneme | null;
  readonly closeness: Closeness;
  /** So many letters at most may be this card though they make no grapheme; 0 for none. */
  readonly longest: number;
}

/** The cards of a reading as targets, in its order; made once for each reading. */
export function targetsOf(reading: Reading): readonly Target[] {
  const known = made.get(reading);
  if (known) return known;
  const targets = makeTargets(reading);
  made.set(reading, targets);
  return targets;
}

const made = new WeakMap<Reading, readonly Target[]>();

function makeTargets({ cards, syllables }: Reading): readonly Target[] {
  const known = cards.map(({ id }) => correspondenceById.get(id) ?? null);
  const vowels = known.map((card, at) =>
    card ? isNucleus(card) : (cards[at]?.phonemes.some(isVowelPhoneme) ?? false),
  );
  const first = vowels.indexOf(true);
  const last = vowels.lastIndexOf(true);
  const secondSyllable = syllables[1]?.from ?? Infinity;
  const sounds = cards.flatMap(({ phonemes }) => phonemes);
  let heard = 0;
  return cards.map(({ id, grapheme, letters, phonemes }, at): Target => {
    const card = known[at] ?? null;
    const before = sounds[heard - 1] ?? null;
    heard += phonemes.length;
    return {
      id,
      card,
      grapheme,
      split: grapheme.includes('_'),
      phonemes,
      isVowel: card ? isVowelCard(card) || card.kind === 'consonant-le' : vowels[at] === true,
      place: at < first ? 'beginning' : at > last ? 'ending' : first === last ? 'middle' : 'inside',
      weak: (letters[0] as number) >= secondSyllable,
      before,
      after: sounds[heard] ?? null,
      closeness: closenessTo(id, rowById.get(id) ?? null, phonemes),
      longest: phonemes.length > 1 && card?.kind !== 'r-vowel' ? 4 : shownLength(grapheme),
    };
  });
}

/** Letters of a card that may be exchanged or turned among themselves. */
function shownLength(grapheme: string): number {
  const { length } = grapheme.replace('_', '');
  return length > 1 ? length : 0;
}
