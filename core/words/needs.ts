/** What a word asks of a child before it can be read: cards and habits. */
import type { CardId } from '../language/card-id.ts';
import { CLUSTER_FAMILIES } from '../language/clusters.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isNucleus } from '../language/syllables.ts';
import type { Habit } from '../language/taught.ts';

/** Card ids and habits, each once, in the order of the word. */
export interface Needs {
  readonly ids: readonly CardId[];
  readonly habits: readonly Habit[];
}

/** The needs of a word with these cards and this many syllables. */
export function needsOf(cardIds: readonly CardId[], syllables: number): Needs {
  const ids = new Set<CardId>();
  const habits = new Set<Habit>();
  const cards: Correspondence[] = [];
  for (const id of cardIds) {
    const card = correspondenceById.get(id);
    if (card) cards.push(card);
    if (!card || !isSchwaCard(card)) ids.add(id);
  }
  const faded = cards.filter(isSchwaCard);
  const flexed = syllables === 2 && faded.length === 1 ? shortOfLast(cards) : null;
  if (flexed !== null) {
    habits.add('flex');
    ids.add(flexed);
  } else if (faded.length > 0) {
    habits.add('schwa');
  }
  if (syllables === 1) readFinalDouble(ids, cards.at(-1));
  if (syllables > 1) habits.add('long-words');
  for (const habit of clusterHabits(cards)) habits.add(habit);
  return { ids: [...ids], habits: [...habits] };
}

/**
 * The short vowel that a child tries in *basket* or *seven* before it fades: that
 * of the last vowel, where it fades in a closed syllable; null elsewhere.
 */
function shortOfLast(cards: readonly Correspondence[]): CardId | null {
  const last = cards.findLastIndex(isNucleus);
  const vowel = cards[last];
  if (!vowel || !isSchwaCard(vowel) || last === cards.length - 1) return null;
  return SHORT_VOWELS[vowel.grapheme] ?? null;
}

const SHORT_VOWELS: Readonly<Record<string, CardId>> = {
  a: 'a=AE',
  e: 'e=EH',
  o: 'o=AA',
  u: 'u=AH',
};

/**
 * *egg*, *add*, *odd*: any doubled letter at the end of a short word is read as
 * one, as children know from ff, ll, ss. Common practice, no source.
 */
function readFinalDouble(ids: Set<CardId>, last: Correspondence | undefined): void {
  if (last?.kind !== 'double' || !/^([bdgmnpt])\1$/.test(last.grapheme)) return;
  const letter = `${last.grapheme[0]}=${last.phonemes.join('+')}` as CardId;
  ids.delete(last.id);
  ids.add(letter);
  ids.add('ll=L');
}

/** A single vowel letter that has faded to the schwa: read by habit, not by a card of its own. */
export function isSchwaCard(card: Correspondence): boolean {
  return card.kind === 'other-vowel' && card.phonemes.includes('AX');
}

/** The habits that the consonants before the first vowel and after the last one ask for. */
function clusterHabits(all: readonly Correspondence[]): Habit[] {
  const cards = all.filter(({ kind }) => kind !== 'ending');
  const first = cards.findIndex(isNucleus);
  const last = cards.findLastIndex(isNucleus);
  if (first < 0) return [];
  const habits: Habit[] = [];
  const onset = cards.slice(0, first).filter(isSaid);
  if (onset.length > 1) habits.push(habitOfOnset(onset));
  if (withoutEnding(cards.slice(last + 1)).filter(isSaid).length > 1) {
    habits.push('ending-clusters');
  }
  return habits;
}

function isSaid({ phonemes }: Correspondence): boolean {
  return phonemes.length > 0;
}

/** cats, dogs: the s of an ending makes no cluster; in bank, n and k are one welded card. */
function withoutEnding(coda: readonly Correspondence[]): readonly Correspondence[] {
  const bare = coda.length > 1 && coda.at(-1)?.grapheme === 's' ? coda.slice(0, -1) : coda;
  return bare[0]?.id === 'n=NG' ? bare.slice(1) : bare;
}

function habitOfOnset(onset: readonly Correspondence[]): Habit {
  if (onset.length > 2) return 'three-clusters';
  const letters = onset.map(({ grapheme }) => grapheme).join('');
  return habitByOnset.get(letters) ?? 'three-clusters';
}

const habitByOnset: ReadonlyMap<string, Habit> = new Map(
  CLUSTER_FAMILIES.filter(({ place }) => place === 'beginning').flatMap(({ habit, letters }) =>
    letters.map((cluster) => [cluster, habit] as const),
  ),
);
