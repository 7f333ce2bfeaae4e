/** What is told of a word that was laid in syllables: where it divides, what each syllable is, which vowel fades. */
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { isVowelCard } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import type { SyllableType } from '../../language/reading.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { cardsInPiles, type Flip } from './board.ts';

/** A word with a dot where it divides, `kit·ten`; one that was not laid in syllables as it is. */
export function dividedWord(flip: Pick<Flip, 'cards' | 'joints' | 'word'>): string {
  return flip.joints ? cardsInPiles(flip).map(graphemeOf).join('·') : flip.word;
}

/** The type of each syllable of a word laid in syllables, as its cards show it; none of any other word. */
export function syllableTypes(flip: Pick<Flip, 'cards' | 'joints'>): readonly SyllableType[] {
  return flip.joints ? cardsInPiles(flip).map(typeOf) : [];
}

function typeOf(syllable: CardId): SyllableType {
  const cards = cardsOnCard(syllable).flatMap((id) => correspondenceById.get(id) ?? []);
  const vowel = cards.find((card) => isVowelCard(card) || card.kind === 'consonant-le');
  if (!vowel) return 'other';
  if (vowel.kind === 'consonant-le') return 'cle';
  if (vowel.kind === 'silent-e') return 'vce';
  if (vowel.kind === 'r-vowel') return 'r';
  if (vowel.kind === 'vowel-team' || vowel.kind === 'diphthong') return 'team';
  if (vowel.phonemes.includes('AX')) return 'other';
  return cards.at(-1) === vowel ? 'open' : 'closed';
}

/** The letters of the vowel that is tried short and then fades, as the e of kit·ten; null where none does. */
export function flexedVowel(flip: Flip, lexicon: Lexicon): string | null {
  if (!flip.joints || flip.kind !== 'real') return null;
  const [reading] = lexicon.readings(lexicon.indexOf(flip.word));
  const tried = flip.cards.filter(isVowel);
  const said = (reading?.cards ?? []).map(({ id }) => id).filter(isVowel);
  const at = tried.findIndex((id, place) => said[place] !== id && said[place]?.endsWith('=AX'));
  return at < 0 ? null : graphemeOf(tried[at] as CardId);
}

function isVowel(id: CardId): boolean {
  const card = correspondenceById.get(id);
  return card !== undefined && isVowelCard(card);
}
