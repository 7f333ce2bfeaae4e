import { syllableTypes } from '../../core/boards/shapes/divided.ts';
import { type CardId, soundsOf } from '../../core/language/card-id.ts';
import type { Phoneme } from '../../core/language/phonemes.ts';
import type { SyllableType } from '../../core/language/reading.ts';
import { cardsOnCard } from '../../core/language/syllable-card.ts';

/** What her side of a syllable card says: each sound as `said` writes it, and what kind of syllable it is. */
export function syllableSide(
  id: CardId,
  said: (sounds: readonly Phoneme[]) => string,
): { readonly sound: string; readonly place: string; readonly rule: string | null } {
  const cards = cardsOnCard(id);
  const [type = 'other'] = syllableTypes({ cards, joints: [] });
  const sound = cards
    .map((card) => soundsOf(card))
    .filter(({ length }) => length > 0)
    .map((sounds) => said(sounds))
    .join(' ');
  return { sound, place: 'one beat of a longer word', rule: RULES[type] };
}

const RULES: Readonly<Record<SyllableType, string | null>> = {
  closed: 'closed: a consonant ends it, and the vowel is short',
  open: 'open: the vowel ends it, and is long',
  vce: 'silent e: the vowel before it is long',
  team: 'vowel team: its letters make one sound together',
  r: 'vowel with r: they make one sound together',
  cle: 'consonant and le: it ends the word',
  other: null,
};
