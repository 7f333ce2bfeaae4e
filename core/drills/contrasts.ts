import { type Accent, AMERICAN } from '../language/accent/accent.ts';
import { soundsHere } from '../language/accent/sounds-here.ts';
import type { CardId } from '../language/card-id.ts';
import { isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
import { APART } from '../sequence/apart.ts';

/**
 * The pairs of taught cards that children mix up and that can be turned one into the other on a board:
 * both vowels or both consonants, and neither the same letters nor the same sound in this class. By id.
 */
export function contrastChoices(
  { correspondences }: Pick<Taught, 'correspondences'>,
  accent: Accent = AMERICAN,
): readonly (readonly [CardId, CardId])[] {
  return [...APART.map(({ cards }) => cards), ...BESIDE_SILENT_E].filter(([one, other]) => {
    if (!correspondences.has(one) || !correspondences.has(other)) return false;
    const left = correspondenceById.get(one);
    const right = correspondenceById.get(other);
    return (
      left !== undefined &&
      right !== undefined &&
      isVowelCard(left) === isVowelCard(right) &&
      left.grapheme !== right.grapheme &&
      soundsHere(left.phonemes, accent).join(' ') !== soundsHere(right.phonemes, accent).join(' ')
    );
  });
}

/** A short vowel beside the same letter with silent e, mad and made (common practice, no source). */
const BESIDE_SILENT_E: readonly (readonly [CardId, CardId])[] = [
  ['a=AE', 'a_e=EY'],
  ['i=IH', 'i_e=AY'],
  ['o=AA', 'o_e=OW'],
  ['u=AH', 'u_e=UW'],
];

/**
 * Threes of short vowels that make minimal pairs of three, pin pen pan: those of which all were taught, the
 * hardest to tell apart first (common practice, no source).
 */
export function contrastThrees({
  correspondences,
}: Pick<Taught, 'correspondences'>): readonly (readonly CardId[])[] {
  return THREES.filter((three) => three.every((id) => correspondences.has(id)));
}

const THREES: readonly (readonly CardId[])[] = [
  ['i=IH', 'e=EH', 'a=AE'],
  ['a=AE', 'o=AA', 'u=AH'],
  ['e=EH', 'i=IH', 'u=AH'],
];

/** Every pair among look-alikes that are to stand side by side: of three cards three pairs. */
export function pairsAmong(cards: readonly CardId[]): readonly (readonly [CardId, CardId])[] {
  return cards.flatMap((one, at) => cards.slice(at + 1).map((other) => [one, other] as const));
}
