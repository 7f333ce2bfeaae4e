import { type Correspondence, isVowelCard } from '../../language/correspondence.ts';

/**
 * What stands in one pile: consonants before the vowel, the vowel, consonants
 * after it; in longer words also consonants between two syllables (`bridge`:
 * the bb of *rabbit*) and what is added to a base or ends the word (`suffix`:
 * -ing, consonant-le). A `syllable` is a card of its own.
 */
export type PileRole = 'beginning' | 'vowel' | 'ending' | 'bridge' | 'suffix' | 'syllable';

/** One pile of a shape and the cards that may lie in it. */
export interface PileSpec {
  readonly role: PileRole;
  readonly takes: (card: Correspondence) => boolean;
}

/**
 * How the piles make a word. `one`: one syllable. `two`: two syllables, the
 * second from its own beginning on. `doubled`: the bridge is the end of the
 * first syllable and the beginning of the second. `le`: the bridge and the
 * consonant-le card are the second syllable. `ending`: a base of one syllable
 * and an inflectional ending. `beats`: each card is a syllable.
 */
export type WordForm = 'one' | 'two' | 'doubled' | 'le' | 'ending' | 'beats';

/**
 * How a row of cards makes a word: piles from left to right. Which of the
 * combinations are legal is for the spelling rules to say; a shape only says
 * which cards may come to its piles and what they are there.
 */
export interface Shape {
  readonly id: string;
  readonly title: string;
  readonly example: string;
  readonly form: WordForm;
  readonly piles: readonly PileSpec[];
}

/** The first pile of a shape that holds vowels. */
export function vowelPile(shape: Shape): PileSpec {
  return shape.piles.find(({ role }) => role === 'vowel') as PileSpec;
}

/** The cards among `cards` that may lie in each pile, in the order given. */
export function candidates(
  shape: Shape,
  cards: readonly Correspondence[],
): readonly (readonly Correspondence[])[] {
  return shape.piles.map((pile) => cards.filter(pile.takes));
}

/** A pile of vowels; those that no rule gives stay out. */
export function vowels(takes: (card: Correspondence) => boolean): PileSpec {
  return { role: 'vowel', takes: (card) => isVowelCard(card) && card.tier < 4 && takes(card) };
}

/** Consonants that may begin a word, clusters on one card among them. */
export const beginnings: PileSpec = {
  role: 'beginning',
  takes: (card) => !isVowelCard(card) && card.places.includes('beginning'),
};

/** Consonants that may end a short word, clusters on one card among them. */
export const endings: PileSpec = {
  role: 'ending',
  takes: (card) => card.places.includes('ending'),
};

/** The single short vowels. */
export const shortVowels: PileSpec = vowels(({ kind }) => kind === 'short-vowel');
