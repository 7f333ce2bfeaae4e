/**
 * Which words a group can read with what it has been taught. A word is
 * decodable when every card of its ordinary reading was taught and is regular
 * there, and so are the habits it asks for; when it was taught whole, as an
 * irregular word; or when it is a form or a compound of such a word.
 */
import type { CardId } from '../language/card-id.ts';
import { CORRESPONDENCES, correspondenceById } from '../language/correspondences.ts';
import { HABITS, type Habit, type Taught } from '../language/taught.ts';
import { IMPLIED, isKnownCard } from './implied.ts';
import { keptByWord } from './kept-by-word.ts';
import type { Lexicon } from './lexicon.ts';
import { isSchwaCard, type Needs, needsOf } from './needs.ts';
import { hiddenCard, holdersOf, type MadeOf, madeOf } from './word-family.ts';

/** One thing that keeps a word from being decodable. */
export type Obstacle =
  | { readonly kind: 'card'; readonly id: CardId }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'irregular'; readonly id: CardId };

/**
 * How a group reads a word: card by card; card by card with one vowel that it
 * lets fade; by heart; as a form of a word known by heart (`of`, `ending`); as
 * two words, one of them known by heart.
 */
export type ReadAs =
  | { readonly kind: 'cards' }
  | { readonly kind: 'flexed' }
  | { readonly kind: 'by-heart' }
  | { readonly kind: 'form'; readonly of: string; readonly ending: string }
  | { readonly kind: 'compound'; readonly parts: readonly [string, string] };

/** How word `index` is read with `taught`, or null when it cannot be. */
export function readAs(index: number, lexicon: Lexicon, taught: Taught): ReadAs | null {
  if (taught.irregularWords.has(lexicon.word(index))) return { kind: 'by-heart' };
  const needs = wordNeeds(index, lexicon);
  if (lexicon.isRegular(index) && missing(needs, taught).length === 0) {
    const flexed = needs.habits.includes('flex') && !taught.habits.has('schwa');
    return { kind: flexed ? 'flexed' : 'cards' };
  }
  return readByParts(index, lexicon, taught);
}

/** What keeps word `index` from being read, in the order of the word; empty when it can be. */
export function obstacles(index: number, lexicon: Lexicon, taught: Taught): readonly Obstacle[] {
  if (readAs(index, lexicon, taught)) return [];
  const cards = lexicon.isRegular(index) ? [] : (lexicon.readings(index)[0]?.cards ?? []);
  const irregular = new Set(cards.filter((card) => !card.regular).map(({ id }) => id));
  const found = [...irregular].map((id): Obstacle => ({ kind: 'irregular', id }));
  const others = missing(wordNeeds(index, lexicon), taught);
  return [...found, ...others.filter((each) => each.kind === 'habit' || !irregular.has(each.id))];
}

/**
 * What a word asks for, with the card of its base that it no longer shows: the ve of *having*. Kept once
 * found.
 */
export const wordNeeds = keptByWord(findNeeds);

function findNeeds(index: number, lexicon: Lexicon): Needs {
  const needs = needsOf(lexicon.cardIds(index), lexicon.syllableCount(index));
  const hidden = hiddenCard(index, lexicon);
  return hidden === null ? needs : { ...needs, ids: [...needs.ids, hidden] };
}

/** The cards and habits among the needs that are not known yet. */
export function missing({ ids, habits }: Needs, taught: Taught): readonly Obstacle[] {
  return [
    ...ids.filter((id) => !isKnownCard(id, taught)).map((id): Obstacle => ({ kind: 'card', id })),
    ...habits
      .filter((habit) => !taught.habits.has(habit))
      .map((habit): Obstacle => ({ kind: 'habit', habit })),
  ];
}

function readByParts(index: number, lexicon: Lexicon, taught: Taught): ReadAs | null {
  const made = madeOf(index, lexicon).find((one) =>
    isReadByParts(
      one,
      taught,
      (part) => isByHeart(part, lexicon, taught),
      (part) => lexicon.isRegular(part) && missing(wordNeeds(part, lexicon), taught).length === 0,
    ),
  );
  if (!made) return null;
  const [first, second] = made.parts.map((part) => lexicon.word(part)) as [string, string?];
  return second === undefined
    ? { kind: 'form', of: first, ending: made.letters }
    : { kind: 'compound', parts: [first, second] };
}

/** Whether a part was learned by heart, or is itself made of such words: the friends of *boyfriends*. */
function isByHeart(part: number, lexicon: Lexicon, taught: Taught): boolean {
  if (taught.irregularWords.has(lexicon.word(part))) return true;
  return !lexicon.isRegular(part) && readByParts(part, lexicon, taught) !== null;
}

/**
 * Whether a form or a compound is read by its parts, of which one at least is known by heart. The
 * ending must be known; one that is a beat of its own is known with words of two
 * beats, or where it was taught as a card.
 */
function isReadByParts(
  { parts, ending, beat }: MadeOf,
  taught: Taught,
  byHeart: (part: number) => boolean,
  byCards: (part: number) => boolean,
): boolean {
  if (!parts.some(byHeart)) return false;
  if (parts.length > 1) return parts.every((part) => byHeart(part) || byCards(part));
  const { habits, correspondences } = taught;
  if (beat && !habits.has('long-words') && !correspondences.has('ing=IH+NG')) return false;
  return ending.every((id) => isKnownEnding(id, taught));
}

function isKnownEnding(id: CardId, taught: Taught): boolean {
  const card = correspondenceById.get(id);
  return card && isSchwaCard(card) ? taught.habits.has('schwa') : isKnownCard(id, taught);
}

/**
 * Indexes of all decodable words, commonest first. The first call for a
 * lexicon lists what each word needs (about 30 ms for 30,000 words); each
 * further one takes about a millisecond.
 */
export function decodableWords(lexicon: Lexicon, taught: Taught): readonly number[] {
  const { starts, needs } = needsTable(lexicon);
  const has = taughtFlags(taught);
  const hearts = [...taught.irregularWords].map(lexicon.indexOf).filter((index) => index >= 0);
  const heart = new Uint8Array(lexicon.size);
  for (const index of hearts) heart[index] = 1;
  const open = heart.slice();
  // What a word known by heart opened may open more: friend, friends, boyfriends.
  const byHeart = (index: number): boolean =>
    heart[index] === 1 || (open[index] === 1 && !lexicon.isRegular(index));
  const byCards = (index: number): boolean => {
    let at = starts[index] as number;
    const end = starts[index + 1] as number;
    while (at < end && has[needs[at] as number] === 1) at++;
    return at === end;
  };
  const opening = [...hearts];
  for (let at = 0; at < opening.length; at++) {
    for (const { holder, made } of holdersOf(opening[at] as number, lexicon)) {
      if (open[holder] === 1 || !isReadByParts(made, taught, byHeart, byCards)) continue;
      open[holder] = 1;
      if (!lexicon.isRegular(holder)) opening.push(holder);
    }
  }
  const found: number[] = [];
  for (let index = 0; index < lexicon.size; index++) {
    let at = starts[index] as number;
    const end = starts[index + 1] as number;
    while (at < end && has[needs[at] as number] === 1) at++;
    if (at === end || open[index] === 1) found.push(index);
  }
  return found;
}

/** For word i, `needs[starts[i]]` to `needs[starts[i + 1] - 1]` are the numbers of what it needs. */
interface NeedsTable {
  readonly starts: Uint32Array;
  readonly needs: Uint16Array;
}

const numberById: ReadonlyMap<CardId, number> = new Map(
  CORRESPONDENCES.map(({ id }, index) => [id, index]),
);
const HABITS_FROM = CORRESPONDENCES.length;
const NEVER = HABITS_FROM + HABITS.length;

const tables = new WeakMap<Lexicon, NeedsTable>();

function needsTable(lexicon: Lexicon): NeedsTable {
  const known = tables.get(lexicon);
  if (known) return known;
  const starts = new Uint32Array(lexicon.size + 1);
  const needs: number[] = [];
  for (let index = 0; index < lexicon.size; index++) {
    starts[index] = needs.length;
    if (!lexicon.isRegular(index)) needs.push(NEVER);
    const { ids, habits } = findNeeds(index, lexicon);
    for (const id of ids) needs.push(numberById.get(id) ?? NEVER);
    for (const habit of habits) needs.push(HABITS_FROM + HABITS.indexOf(habit));
  }
  starts[lexicon.size] = needs.length;
  const table = { starts, needs: Uint16Array.from(needs) };
  tables.set(lexicon, table);
  return table;
}

function taughtFlags(taught: Taught): Uint8Array {
  const flags = new Uint8Array(NEVER + 1);
  for (const id of taught.correspondences) {
    const number = numberById.get(id);
    if (number !== undefined) flags[number] = 1;
  }
  for (const id of IMPLIED.keys()) {
    if (isKnownCard(id, taught)) flags[numberById.get(id) as number] = 1;
  }
  for (const habit of taught.habits) flags[HABITS_FROM + HABITS.indexOf(habit)] = 1;
  return flags;
}
