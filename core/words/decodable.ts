/**
 * Which words a group can read with what it has been taught. A word is
 * decodable when every card of its ordinary reading was taught and is regular
 * there, and so are the habits it asks for; or when it was taught whole, as an
 * irregular word.
 */
import { CLUSTER_FAMILIES } from '../language/clusters.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { CardReading, Reading } from '../language/reading.ts';
import { isNucleus } from '../language/syllables.ts';
import type { Habit, Taught } from '../language/taught.ts';

/** What a reading asks of a child: card ids, habits, and whether all of it is regular. */
export interface Needs {
  readonly ids: readonly string[];
  readonly habits: readonly Habit[];
  readonly regular: boolean;
}

/** One thing that keeps a word from being decodable. */
export type Obstacle =
  | { readonly kind: 'card'; readonly id: string }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'irregular'; readonly id: string };

/** Everything a reading needs, each thing once, in the order of the word. */
export function needsOf(reading: Reading): Needs {
  const ids = new Set<string>();
  const habits = new Set<Habit>();
  for (const card of reading.cards) {
    if (isSchwa(card)) habits.add('schwa');
    else ids.add(card.id);
  }
  if (reading.syllables.length > 1) habits.add('long-words');
  for (const habit of clusterHabits(reading)) habits.add(habit);
  return {
    ids: [...ids],
    habits: [...habits],
    regular: reading.cards.every((card) => card.regular),
  };
}

/** Why a reading is not decodable for `taught`; empty when it is. */
export function obstacles(reading: Reading, taught: Taught): readonly Obstacle[] {
  if (taught.irregularWords.has(reading.word)) return [];
  const found: Obstacle[] = [];
  for (const { id, regular } of reading.cards) {
    if (!regular) found.push({ kind: 'irregular', id });
  }
  const { ids, habits } = needsOf(reading);
  for (const id of ids) {
    const irregular = found.some((obstacle) => obstacle.kind === 'irregular' && obstacle.id === id);
    if (!irregular && !taught.correspondences.has(id)) found.push({ kind: 'card', id });
  }
  for (const habit of habits) {
    if (!taught.habits.has(habit)) found.push({ kind: 'habit', habit });
  }
  return found;
}

/** Whether a group can read this, by its cards or by heart. */
export function isDecodable(reading: Reading, taught: Taught): boolean {
  return obstacles(reading, taught).length === 0;
}

function isSchwa({ id, phonemes }: CardReading): boolean {
  return phonemes.includes('AX') && correspondenceById.get(id)?.kind === 'other-vowel';
}

/** The habits that the consonants before the first vowel and after the last one ask for. */
function clusterHabits(reading: Reading): Habit[] {
  const cards = reading.cards.filter(({ id }) => correspondenceById.get(id)?.kind !== 'ending');
  const vowels = cards.flatMap(({ id }, index) => {
    const card = correspondenceById.get(id);
    return card && isNucleus(card) ? [index] : [];
  });
  const first = vowels[0];
  const last = vowels.at(-1);
  if (first === undefined || last === undefined) return [];
  const habits: Habit[] = [];
  const onset = said(cards.slice(0, first));
  if (onset.length > 1) habits.push(habitOfOnset(onset));
  if (said(withoutFinalS(cards.slice(last + 1))).length > 1) habits.push('ending-clusters');
  return habits;
}

function said(cards: readonly CardReading[]): readonly CardReading[] {
  return cards.filter(({ phonemes }) => phonemes.length > 0);
}

/** cats, dogs: the s of an ending makes no cluster; n-k is one welded card. */
function withoutFinalS(coda: readonly CardReading[]): readonly CardReading[] {
  const bare = coda.length > 1 && coda.at(-1)?.grapheme === 's' ? coda.slice(0, -1) : coda;
  return bare[0]?.id === 'n=NG' ? bare.slice(1) : bare;
}

function habitOfOnset(onset: readonly CardReading[]): Habit {
  if (onset.length > 2) return 'three-clusters';
  const letters = onset.map(({ grapheme }) => grapheme).join('');
  const family = CLUSTER_FAMILIES.find(
    ({ place, letters: known }) => place === 'beginning' && known.includes(letters),
  );
  return family?.habit ?? 'three-clusters';
}
