import { CORRESPONDENCES, correspondencesByGrapheme } from '../language/correspondences.ts';
import { HABITS } from '../language/taught.ts';

/**
 * What a person may have meant by an item that we do not know, closest first:
 * text forms that can be typed in its place. `wordsToo` also offers to take
 * plain letters as an irregular word.
 *
 * Method: optimal string alignment distance (one letter added, lost, changed,
 * or two neighbors swapped) over the known graphemes, card ids and habits; a
 * few hundred short strings, so a plain table is fast enough.
 */
export function nearMisses(text: string, limit = 3): readonly string[] {
  const asked = text.trim();
  if (asked.length > LONGEST_ITEM) return [];
  const sign = asked.indexOf('=');
  if (sign >= 0) return nearCards(asked.slice(0, sign).toLowerCase(), asked, limit);
  if (/^habit:/i.test(asked)) {
    return closest(asked.slice(6).toLowerCase(), HABITS, 99, limit).map(
      (habit) => `habit:${habit}`,
    );
  }
  const letters = asked.toLowerCase();
  const near = closest(letters, bareForms, letters.length > 4 ? 2 : 1, limit);
  const asWord = /^[a-z]{3,}$/.test(letters) ? [`word:${letters}`] : [];
  return [...near.slice(0, limit - asWord.length), ...asWord];
}

/** Signs that no item is longer than, a word by heart included. */
export const LONGEST_ITEM = 60;

/** How far apart two strings are in single edits; a swap of neighbors counts one. */
export function editDistance(left: string, right: string): number {
  const width = right.length + 1;
  const cost = new Uint16Array((left.length + 1) * width);
  const at = (row: number, column: number): number => cost[row * width + column] as number;
  for (let column = 0; column < width; column += 1) cost[column] = column;
  for (let row = 1; row <= left.length; row += 1) {
    cost[row * width] = row;
    for (let column = 1; column < width; column += 1) {
      const same = left[row - 1] === right[column - 1];
      let best = Math.min(
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + (same ? 0 : 1),
      );
      const swapped =
        row > 1 &&
        column > 1 &&
        left[row - 1] === right[column - 2] &&
        left[row - 2] === right[column - 1];
      if (swapped) best = Math.min(best, at(row - 2, column - 2) + 1);
      cost[row * width + column] = best;
    }
  }
  return at(left.length, right.length);
}

/** Forms that stand without a sign: graphemes with a regular sound, and habits. */
const bareForms: readonly string[] = [
  ...[...correspondencesByGrapheme]
    .filter(([, cards]) => cards.some((card) => card.tier <= 3))
    .map(([grapheme]) => grapheme),
  ...HABITS,
];

/** Ids of regular cards, earliest tiers first: what `ea=EE` may have meant. */
const regularIds: readonly string[] = CORRESPONDENCES.filter((card) => card.tier <= 3)
  .sort((left, right) => left.tier - right.tier)
  .map((card) => card.id);

function nearCards(grapheme: string, asked: string, limit: number): readonly string[] {
  const sounds = asked.slice(asked.indexOf('=') + 1).toUpperCase();
  const wanted = `${grapheme}=${sounds}`;
  const sameLetters = regularIds.filter((id) => id.startsWith(`${grapheme}=`));
  const ranked = closest(wanted, sameLetters, 99, limit);
  if (ranked.length > 0) return ranked;
  return closest(wanted, regularIds, 2, limit);
}

function closest(
  asked: string,
  known: readonly string[],
  furthest: number,
  limit: number,
): readonly string[] {
  // Lengths that differ by more cannot be nearer, and most are told apart by that alone.
  return known
    .filter((form) => Math.abs(form.length - asked.length) <= furthest)
    .map((form) => ({ form, distance: editDistance(asked, form) }))
    .filter(({ distance }) => distance <= furthest)
    .sort((left, right) => left.distance - right.distance)
    .slice(0, limit)
    .map(({ form }) => form);
}
