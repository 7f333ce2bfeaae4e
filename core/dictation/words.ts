/**
 * The words of a dictation. They are decodable, familiar and clear of the word
 * screen. Two in three, where there are so many, show a newest item, the items
 * taking turns; the others repeat what is known. Rarer words are taken only for
 * an item that has few. Where spelling papers showed a need, half show a newest
 * item and the others practice what was missed, in turn. Two forms of one word
 * (*jump*, *jumps*) do not stand together. The shares are ours (common practice:
 * the new item well represented).
 */
import type { CardId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import { type Random, shuffled } from '../random.ts';
import type { Item } from '../sequence/sequence.ts';
import { decodableWords, readAs, wordNeeds } from '../words/decodable.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { WordScreen } from '../words/screen.ts';
import { examplesOf } from './examples.ts';
import { firstOf } from './first-of.ts';
import { isFitForClass } from './fitness.ts';
import { holdsCard } from './needs.ts';

/** One word or sentence to say, and whether it holds one of the newest items. */
export interface Dictated {
  readonly text: string;
  readonly isNew: boolean;
  /** The card that it is there to practice, because of what spelling showed; absent for none. */
  readonly practices?: CardId;
}

/** How many words are wanted of what was taught, and what is newest. */
interface WordsSpec {
  readonly taught: Taught;
  readonly newest: readonly Item[];
  readonly count: number;
  /** Cards that spelling showed to need practice, the most wanted first. */
  readonly practice?: readonly CardId[];
  /** Cards that no word may hold. */
  readonly avoid?: readonly CardId[];
}

interface WordSources {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

/** The rarest band of the word list that counts as familiar. */
const FAMILIAR = 4;
/** How many of the commonest words chance picks from, for each item. */
const CHOICE = 30;
/** How many letters a word has that only repeats what is known. */
const REVIEW_LETTERS = { from: 3, to: 8 } as const;

/** Words to dictate, shorter ones first; fewer than asked where there are no more. */
export function dictationWords(
  { taught, newest, count, practice = [], avoid = [] }: WordsSpec,
  { lexicon, screen }: WordSources,
  random: Random,
): readonly Dictated[] {
  const written = withoutFlex(taught);
  const isFit = (index: number) =>
    isFitForClass(lexicon.word(index), lexicon, screen) && isSpelled(index, lexicon, written);
  const holdsNone = (index: number) =>
    !avoid.some((card) => holdsCard(lexicon.cardIds(index), card));
  const decodable = new Set(decodableWords(lexicon, written).filter(holdsNone));
  const usableByItem = newest.map((item) =>
    [...examplesOf(item, lexicon)].filter((index) => decodable.has(index)),
  );
  const fresh = new Set(usableByItem.flat());
  const byItem = usableByItem.map((usable) => {
    const familiar = usable.filter((index) => lexicon.band(index) <= FAMILIAR);
    const found = firstOf(familiar, CHOICE, isFit);
    return shuffled(found.length < count ? firstOf(usable, count, isFit) : found, random);
  });
  const others = [...decodable].filter((index) => {
    const { length } = lexicon.word(index);
    const fitting = length >= REVIEW_LETTERS.from && length <= REVIEW_LETTERS.to;
    return fitting && lexicon.band(index) <= FAMILIAR && !fresh.has(index);
  });
  const wanted = practice.map((card) => {
    const holding = others.filter((index) => lexicon.cardIds(index).includes(card));
    return shuffled(firstOf(holding, CHOICE, isFit), random);
  });
  const known = firstOf(shuffled(others, random), CHOICE, isFit);
  const chosen: number[] = [];
  const isPracticed = wanted.some((list) => list.length > 0);
  takeTurns(byItem, chosen, Math.ceil(isPracticed ? count / 2 : (count * 2) / 3), lexicon);
  takeTurns(wanted, chosen, count, lexicon);
  takeTurns([known], chosen, count, lexicon);
  takeTurns(byItem, chosen, count, lexicon);
  return chosen
    .map((index): Dictated => {
      const practices = fresh.has(index)
        ? undefined
        : practice.find((card) => lexicon.cardIds(index).includes(card));
      const word = { text: lexicon.word(index), isNew: fresh.has(index) };
      return practices === undefined ? word : { ...word, practices };
    })
    .sort(
      (left, right) => left.text.length - right.text.length || (left.text < right.text ? -1 : 1),
    );
}

/** To spell a faded vowel is more than to read it: until it was taught, such words are not dictated. */
function withoutFlex(taught: Taught): Taught {
  if (taught.habits.has('schwa')) return taught;
  return { ...taught, habits: new Set([...taught.habits].filter((habit) => habit !== 'flex')) };
}

/** Whether every card was taught itself: who reads the se of *house* may not yet know to write it. */
function isSpelled(index: number, lexicon: Lexicon, taught: Taught): boolean {
  const read = readAs(index, lexicon, taught);
  if (read?.kind !== 'cards') return read !== null;
  return wordNeeds(index, lexicon).ids.every((id) => taught.correspondences.has(id));
}

/** Moves words from the lists to `chosen`, one of each list in turn, until `count` or none is left. */
function takeTurns(
  lists: readonly number[][],
  chosen: number[],
  count: number,
  lexicon: Lexicon,
): void {
  const isFresh = (index: number) =>
    !chosen.some((other) => isSameFamily(lexicon.word(index), lexicon.word(other)));
  while (chosen.length < count && lists.some((list) => list.length > 0)) {
    for (const list of lists) {
      if (chosen.length === count) return;
      const at = list.findIndex(isFresh);
      if (at < 0) list.length = 0;
      else chosen.push(...list.splice(at, 1));
    }
  }
}

/** One word that begins with the other, but for a last e or y: jump, jumping; hope, hoping. */
function isSameFamily(left: string, right: string): boolean {
  const [short, long] = left.length < right.length ? [left, right] : [right, left];
  if (short.length < 3) return short === long;
  return long.startsWith(short.replace(/[ey]$/, ''));
}
