import { judgeWord } from '../boards/judge/judge.ts';
import type { JudgeContext } from '../boards/judge/judge-context.ts';
import { isTaughtCard } from '../boards/shapes/taught-cards.ts';
import type { CardId } from '../language/card-id.ts';
import { isVowelCard } from '../language/correspondence.ts';
import { correspondenceById, correspondencesByGrapheme } from '../language/correspondences.ts';
import { makeSounds, type Phoneme } from '../language/phonemes.ts';
import { isSchwaCard } from '../words/needs.ts';
import type { CheckItem } from './check-form.ts';

/** So many rows of cards are read at most; a nonsense word has a handful. */
const MOST = 32;

/**
 * A nonsense word with every answer that is right: its letters as all the common cards say that were taught
 * for them and may stand there. A child who reads -se as in _house_ is as right as one who reads it as in _cheese_,
 * in every word of every form. The reading it was made from stays first, the others follow in the order of
 * the table.
 */
export function withOtherReadings(item: CheckItem, context: JudgeContext): CheckItem {
  const [own] = item.answers;
  if (!own) return item;
  const said = new Map<string, readonly Phoneme[]>([[makeSounds(own), own]]);
  for (const row of rowsOf(item.cards, context)) {
    const built = judgeWord(row, context);
    if (built.kind === 'nonsense' && built.word === item.text) {
      said.set(makeSounds(built.sounds), built.sounds);
    }
  }
  return { ...item, answers: [...said.values()] };
}

/** Rarer sounds of letters belong to known words, not to words that nobody has met. */
const RAREST_TIER = 2;

/** All rows of taught cards with the same letters one by one, each where such cards stand. */
function rowsOf(
  cards: readonly CardId[],
  { taught }: JudgeContext,
): readonly (readonly CardId[])[] {
  return cards
    .map((id, at) => {
      const card = correspondenceById.get(id);
      const alike = (card && correspondencesByGrapheme.get(card.grapheme)) ?? [];
      const place = at === 0 ? 'beginning' : at === cards.length - 1 ? 'ending' : 'middle';
      const others = alike.filter(
        (one) =>
          one.id !== id &&
          one.tier <= RAREST_TIER &&
          !isSchwaCard(one) &&
          (card && isVowelCard(card) ? isVowelCard(one) : one.places.includes(place)) &&
          isTaughtCard(one, taught),
      );
      return [id, ...others.map((one) => one.id)];
    })
    .reduce<readonly (readonly CardId[])[]>(
      (rows, ids) => rows.flatMap((row) => ids.map((id) => [...row, id])).slice(0, MOST),
      [[]],
    );
}
