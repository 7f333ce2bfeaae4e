/**
 * Which words a group can read with what it has been taught. A word is
 * decodable when every card of its ordinary reading was taught and is regular
 * there, and so are the habits it asks for; or when it was taught whole, as an
 * irregular word.
 */
import type { CardId } from '../language/card-id.ts';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import type { Reading } from '../language/reading.ts';
import { HABITS, type Habit, type Taught } from '../language/taught.ts';
import type { Lexicon } from './lexicon.ts';
import { needsOf } from './needs.ts';

/** One thing that keeps a word from being decodable. */
export type Obstacle =
  | { readonly kind: 'card'; readonly id: CardId }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'irregular'; readonly id: CardId };

/** Why a reading is not decodable for `taught`, in the order of the word; empty when it is. */
export function obstacles(reading: Reading, taught: Taught): readonly Obstacle[] {
  if (taught.irregularWords.has(reading.word)) return [];
  const irregular = new Set(reading.cards.filter((card) => !card.regular).map(({ id }) => id));
  const { ids, habits } = needsOf(
    reading.cards.map(({ id }) => id),
    reading.syllables.length,
  );
  const found: Obstacle[] = [...irregular].map((id) => ({ kind: 'irregular', id }));
  for (const id of ids) {
    if (!irregular.has(id) && !taught.correspondences.has(id)) found.push({ kind: 'card', id });
  }
  for (const habit of habits) {
    if (!taught.habits.has(habit)) found.push({ kind: 'habit', habit });
  }
  return found;
}

/**
 * Indexes of all decodable words, commonest first. The first call for a
 * lexicon lists what each word needs (about 30 ms for 30,000 words); each
 * further one takes about a millisecond.
 */
export function decodableWords(lexicon: Lexicon, taught: Taught): readonly number[] {
  const { starts, needs } = needsTable(lexicon);
  const has = taughtFlags(taught);
  const byHeart = new Uint8Array(lexicon.size);
  for (const word of taught.irregularWords) {
    const index = lexicon.indexOf(word);
    if (index >= 0) byHeart[index] = 1;
  }
  const found: number[] = [];
  for (let index = 0; index < lexicon.size; index++) {
    let at = starts[index] as number;
    const end = starts[index + 1] as number;
    while (at < end && has[needs[at] as number] === 1) at++;
    if (at === end || byHeart[index] === 1) found.push(index);
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
    const { ids, habits } = needsOf(lexicon.cardIds(index), lexicon.syllableCount(index));
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
  for (const habit of taught.habits) flags[HABITS_FROM + HABITS.indexOf(habit)] = 1;
  return flags;
}
