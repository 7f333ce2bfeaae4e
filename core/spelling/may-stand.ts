import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { laySyllable } from '../language/laid-syllable.ts';
import type { Reading } from '../language/reading.ts';
import type { TableRow } from '../language/row.ts';
import { brokenRules } from '../language/spelling-rules.ts';
import { isBetweenVowels } from './voices.ts';

/**
 * Whether a spelling may stand in the place of card `index` of a word: of a word of one syllable by the
 * places of the table and the rules of spelling; of a longer one by the places at its edges. `ends`: no
 * letter follows it.
 */
export function mayStand(reading: Reading, index: number, row: TableRow): boolean {
  const cards = reading.cards.map(({ id }) => correspondenceById.get(id));
  const laid = reading.syllables.length === 1 ? cards : null;
  const last = index === cards.length - 1;
  const vowel = row.places.length === 0 && isVowelCard(row);
  if (isBetweenVowels(row)) return /^[aeiouy]/.test(reading.cards[index + 1]?.grapheme ?? '');
  if (vowel) return last || !laid;
  if (last && /[iu]$/.test(row.grapheme)) return false;
  if (!laid) return row.places.length === 0 || isAtEdge(row, index, cards.length);
  const others = laid.map((card, at) => (at === index ? row : card));
  if (!others.every((card): card is Correspondence => card !== undefined)) return false;
  const before = laySyllable(laid.filter((card) => card !== undefined));
  const syllable = laySyllable(others);
  if (!before || !syllable) return row.places.length > 0;
  const place =
    syllable.vowel === row ? 'middle' : index < syllable.onset.length ? 'beginning' : 'ending';
  if (!row.places.includes(place)) return false;
  const broken = new Set(brokenRules(before).map(({ id }) => id));
  return brokenRules(syllable).every(({ id }) => broken.has(id));
}

function isAtEdge({ places }: TableRow, index: number, cards: number): boolean {
  if (index === 0) return places.includes('beginning') || places.includes('middle');
  return index < cards - 1 || places.includes('ending');
}
