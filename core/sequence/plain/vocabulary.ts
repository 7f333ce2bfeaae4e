import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import type { Lexicon } from '../../words/lexicon.ts';

/** What a reader of plain lines asks of the word list. */
export interface Vocabulary {
  isWord(word: string): boolean;
  /** The card with these letters in a word: of `th` in *feather*, `th=DH`. */
  cardIn(word: string, grapheme: string): CardId | null;
}

/** The word list as a vocabulary. A keyword stands for its own card before anything else. */
export function makeVocabulary(lexicon: Lexicon): Vocabulary {
  return {
    isWord: (word) => lexicon.indexOf(word) >= 0,
    cardIn(word, grapheme) {
      const named = CORRESPONDENCES.find(
        (card) => card.keyword === word && card.grapheme === grapheme,
      );
      if (named) return named.id;
      const index = lexicon.indexOf(word);
      if (index < 0) return null;
      return lexicon.cardIds(index).find((id) => graphemeOf(id) === grapheme) ?? null;
    },
  };
}
