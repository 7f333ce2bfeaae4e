/**
 * Whether a card says, where it stands, what the rules give. A row of tier 4
 * never does; a row with a context does where the context holds; a long vowel
 * does in an open syllable and before the few pairs that keep it long.
 */
import { rowById } from './correspondences.ts';
import { isNucleus, type LaidCard } from './syllables.ts';

/** Judges card `index` of a word whose syllables begin at 0 and at `breaks`. */
export function isRegular(
  word: string,
  placed: readonly LaidCard[],
  index: number,
  breaks: readonly number[],
): boolean {
  const { card, letters } = placed[index] as LaidCard;
  if (card.tier === 4) return false;
  const row = rowById.get(card.id);
  const first = letters[0] as number;
  const next = card.kind === 'silent-e' ? first + 1 : (letters.at(-1) as number) + 1;
  const left = word.slice(0, first);
  const right = word.slice(next);
  if (row?.context.before && !stands(row.context.before, left, breaks)) return false;
  if (row?.context.after && !row.context.after.test(right)) return false;
  if (card.kind === 'long-vowel') {
    if (isHeardFinalE(word, card.id, right, breaks)) return false;
    const open = breaks.includes(next) || placed[index + 1]?.card.kind === 'silent';
    return isLongByRule(card.id, right, open);
  }
  if (card.kind === 'consonant-e' && card.grapheme.length === 2 && card.tier === 3) {
    return !isShortStressedWord(placed, index);
  }
  return true;
}

/** Whether what stands before a card is as its row asks, in the word or in its syllable alone: white·wash. */
function stands(before: RegExp, left: string, breaks: readonly number[]): boolean {
  if (before.test(left)) return true;
  const from = breaks.findLast((at) => at < left.length) ?? 0;
  return from > 0 && before.test(left.slice(from));
}

/** Whether a long vowel stands by rule before these letters: in an open syllable, before a vowel, in VCV with an ending, and in old, most, kind, range. */
export function isLongByRule(id: string, right: string, open: boolean): boolean {
  if (open || right === '' || right === 's' || /^[aeiouy]/.test(right)) return true;
  if (id === 'y=IY' || id === 'i=IY') return id === 'y=IY';
  if (/^([^aeiouy]|[bcdfgpt][lr]|th|ch|sh|ph|st|qu)[eiyao]/.test(right)) return true;
  // vague, rogue, opaque: the last e does its work across gu and qu.
  if (/^(gue|que)[sd]?$/.test(right)) return true;
  if (id === 'i=AY') return /^(ld|nd|gn|gh)/.test(right);
  if (id === 'o=OW') return /^(ld|st|lt|ll|lk)/.test(right);
  return id === 'a=EY' && /^n?g[ei]/.test(right);
}

/**
 * acne, recipe, machete: a final e after a consonant is expected to be silent in
 * a word of several beats, so that one that is heard is irregular. In short
 * words (be, me) it is the open e, and maybe is one of them.
 */
function isHeardFinalE(
  word: string,
  id: string,
  right: string,
  breaks: readonly number[],
): boolean {
  return id === 'e=IY' && right === '' && breaks.length > 0 && word !== 'maybe';
}

/** gone: where nothing else is irregular, the final e is, since it does no work. */
function isShortStressedWord(placed: readonly LaidCard[], index: number): boolean {
  const vowel = placed[index - 1]?.card;
  const one = placed.filter(({ card }) => isNucleus(card)).length === 1;
  return one && vowel?.kind === 'short-vowel';
}
