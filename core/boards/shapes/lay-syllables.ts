/** How the reading of a longer word lies as syllable cards. */
import { type CardId, graphemeOf, makeCardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { laySyllable } from '../../language/laid-syllable.ts';
import type { CardReading, Reading } from '../../language/reading.ts';
import { makeSyllableId } from '../../language/syllable-card.ts';

/**
 * The syllable cards of a reading, left to right; null where the word cannot be cut so: letters of one
 * sound stand on both sides, or a syllable has no vowel of its own. A doubled consonant lies on both
 * cards (rab·bit), and a vowel that fades in a closed syllable as its short sound (kit·ten), which a
 * child tries first and lets fade.
 */
export function laySyllables({ word, cards, syllables }: Reading): readonly CardId[] | null {
  const own: CardId[][] = syllables.map(() => []);
  for (const card of cards) {
    const first = card.letters[0] as number;
    const at = syllables.findIndex(({ from, to }) => first >= from && first < to);
    const { to } = syllables[at] ?? { to: 0 };
    if (at < 0) return null;
    if ((card.letters.at(-1) as number) < to) own[at]?.push(card.id);
    else {
      const single = singleOf(card);
      if (single === null || !own[at + 1]) return null;
      own[at]?.push(single);
      own[at + 1]?.push(single);
    }
  }
  const laid = own.map((ids) => ids.map((id, at) => asTried(id, ids, at)));
  if (!laid.every(isSyllable)) return null;
  const made = laid.map(makeSyllableId);
  // A silent e inside a syllable (named) cannot lie on its card as it is written.
  return made.map(graphemeOf).join('') === word ? made : null;
}

/** The single letter of a doubled one that stands on both sides of a joint; null for all else. */
function singleOf({ grapheme, phonemes }: CardReading): CardId | null {
  if (!/^([a-z])\1$/.test(grapheme)) return null;
  const id = makeCardId(grapheme[0] as string, phonemes);
  return correspondenceById.has(id) ? id : null;
}

/** A faded vowel in a closed syllable as its short sound; not the o of -tion. */
function asTried(id: CardId, syllable: readonly CardId[], at: number): CardId {
  const short = SHORT[graphemeOf(id)];
  if (!id.endsWith('=AX') || !short || at === syllable.length - 1) return id;
  return STABLE.test(syllable[at - 1] ?? '') ? id : short;
}

/** Whether cards make one syllable that can lie on a card; a doubled letter of a base (napp·ed) cannot. */
function isSyllable(ids: readonly CardId[]): boolean {
  const cards = ids.flatMap((id) => correspondenceById.get(id) ?? []);
  if (cards.some(({ grapheme }) => /^([bdgmnprt])\1$/.test(grapheme))) return false;
  return cards.length === ids.length && laySyllable(cards) !== null;
}

const STABLE = /^(ti|ci|si|ssi|sci|xi)=/;

const SHORT: Readonly<Record<string, CardId>> = {
  a: 'a=AE',
  e: 'e=EH',
  i: 'i=IH',
  o: 'o=AA',
  u: 'u=AH',
};
