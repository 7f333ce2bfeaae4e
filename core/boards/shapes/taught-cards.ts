import type { Correspondence } from '../../language/correspondence.ts';
import { CORRESPONDENCES, correspondenceById } from '../../language/correspondences.ts';
import type { Taught } from '../../language/taught.ts';
import { isSchwaCard, needsOf } from '../../words/needs.ts';
import type { LaidWord } from './lay-word.ts';
import type { Shape } from './shapes.ts';

/** Whether a card was taught; -ing and -est are known once their parts are. */
export function isTaughtCard(card: Correspondence, taught: Taught): boolean {
  if (taught.correspondences.has(card.id)) return true;
  if (card.kind !== 'ending' || card.parts.length === 0) return false;
  return card.parts.every((id) => {
    const part = correspondenceById.get(id) as Correspondence;
    return isSchwaCard(part) ? taught.habits.has('schwa') : taught.correspondences.has(id);
  });
}

/** The cards that were taught themselves, in their order; without an ending that only its parts make known. */
export function cardsMet(taught: Taught): readonly Correspondence[] {
  return [...taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
}

/** The cards that may come to a board, in the order they were taught, -ing and -est last. */
export function cardsTaught(taught: Taught): readonly Correspondence[] {
  const cards = cardsMet(taught);
  const composed = ENDINGS.filter(
    (card) => !taught.correspondences.has(card.id) && isTaughtCard(card, taught),
  );
  return [...cards, ...composed];
}

const ENDINGS: readonly Correspondence[] = CORRESPONDENCES.filter(
  ({ kind, parts }) => kind === 'ending' && parts.length > 0,
);

/**
 * Whether the habits that a word asks for were taught: reading a cluster that
 * lies in several piles, a word of two beats. A cluster on one card was taught
 * with the card.
 */
export function hasHabits(shape: Shape, word: LaidWord, taught: Taught): boolean {
  if (!asksForHabits(shape)) return true;
  const beat = word.suffix?.phonemes.some((sound) => /^(IH|AX|ER)$/.test(sound)) ? 1 : 0;
  const ids = word.parts.map(({ id }) => id);
  return needsOf(ids, word.syllables.length + beat).habits.every((habit) =>
    taught.habits.has(habit),
  );
}

/** Whether words of a shape may ask for more than their cards. */
export function asksForHabits({ form, piles }: Shape): boolean {
  if (form !== 'one') return true;
  return piles.some(({ role }, at) => role !== 'vowel' && piles[at + 1]?.role === role);
}
