import { asWritten } from '../../core/language/as-written.ts';
import { type CardId, isSightId, lettersShown } from '../../core/language/card-id.ts';
import type { Correspondence } from '../../core/language/correspondence.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import { isSyllableId } from '../../core/language/syllable-card.ts';
import type { Habit } from '../../core/language/taught.ts';
import type { Item } from '../../core/sequence/sequence.ts';
import { soundStyle } from '../state/accent.ts';

/** A card in words, for ears and tips: `sh, /sh/, as in sheep`. */
export function cardName(id: CardId): string {
  if (isSightId(id)) return `the word ${lettersShown(id)}`;
  if (isSyllableId(id)) return `the syllable ${lettersShown(id)}`;
  const card = correspondenceById.get(id);
  if (!card) return `${id}, not known here`;
  const keyword = card.keyword ? `, as in ${card.keyword}` : '';
  return `${lettersName(card)}, ${sound(card)}${keyword}`;
}

/** A card's letters in words: a split card is `a, then silent e`. */
function lettersName({ grapheme, kind }: Correspondence): string {
  if (grapheme.includes('_')) return `${grapheme[0]} and silent e`;
  return kind === 'ending' ? `ending ${grapheme}` : grapheme;
}

function sound({ phonemes, kind, parts, grapheme }: Correspondence): string {
  if (kind === 'cluster') return `${parts.length} sounds`;
  return soundLabel(phonemes, soundStyle.value, grapheme);
}

/** Habits of spelling in a teacher's words. */
export const habitNames: Readonly<Record<Habit, string>> = {
  'ending-clusters': 'two consonants at the end',
  's-clusters': 's and a consonant',
  'l-clusters': 'a consonant and l',
  'r-clusters': 'a consonant and r',
  'three-clusters': 'three consonants',
  'long-words': 'words of two syllables and more',
  schwa: 'schwa, the faded vowel',
  flex: 'one faded vowel in a word of two beats',
};

/** Any item in words. */
export function itemName(item: Item): string {
  if (item.kind === 'card') return cardName(item.id);
  return item.kind === 'word'
    ? `the irregular word ${asWritten(item.word)}`
    : habitNames[item.habit];
}

/** An item as short as it can be said: letters, the word, or the habit's name. */
export function itemShort(item: Item): string {
  if (item.kind === 'card') return lettersShown(item.id);
  return item.kind === 'word' ? asWritten(item.word) : habitNames[item.habit];
}
