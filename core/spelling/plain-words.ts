import { graphemeOf } from '../language/card-id.ts';
import type { AttemptReading, CardVerdict, SpellingHabit } from './attempt.ts';

/** What an attempt shows, in a sentence a teacher would say: *heard every sound; silent e not yet*. */
export function inPlainWords({ answer, cards, added, wordRight, wrote }: AttemptReading): string {
  if (wordRight) return 'right';
  if (answer === 'blank') return 'nothing written';
  if (answer === 'illegible') return 'cannot be read';
  if (answer === 'another-word') return `another word: ${wrote.trim().toLowerCase()}`;
  const missed = cards.filter(({ heard }) => !heard);
  const extra = added.map(({ letters }) => letters).join(', ');
  const notes = [
    missed.length === 0
      ? 'heard every sound'
      : `${listed(missed.map(({ id }) => graphemeOf(id)))} not heard${missed.length < cards.length ? '; the rest heard' : ''}`,
    ...spellingNotes(cards),
    ...accentNotes(cards),
    ...(extra === '' ? [] : [`${extra} added`]),
  ];
  return notes.join('; ');
}

function spellingNotes(cards: readonly CardVerdict[]): readonly string[] {
  const notYet = new Set<string>();
  const turned = new Set<string>();
  let outOfOrder = false;
  for (const { verdict, id, habit } of cards) {
    if (verdict === 'same-sound') notYet.add(habit ? HABIT_NAMES[habit] : graphemeOf(id));
    if (verdict === 'turned') turned.add(graphemeOf(id));
    outOfOrder ||= verdict === 'order';
  }
  return [
    ...(notYet.size > 0 ? [`${listed([...notYet])} not yet`] : []),
    ...(turned.size > 0 ? [`${listed([...turned])} turned`] : []),
    ...(outOfOrder ? ['letters in another order'] : []),
  ];
}

/** What was written as the class says it: *e as i is how we say it here*. */
function accentNotes(cards: readonly CardVerdict[]): readonly string[] {
  const said = cards
    .filter(({ fact }) => fact === 'accent')
    .map(({ id, letters }) => `${graphemeOf(id)} as ${letters}`);
  return said.length === 0 ? [] : [`${listed([...new Set(said)])} is how we say it here`];
}

/** A habit as it is said in a sentence. */
export function habitName(habit: SpellingHabit): string {
  return HABIT_NAMES[habit];
}

const HABIT_NAMES: Readonly<Record<SpellingHabit, string>> = {
  doubling: 'the doubled letter',
  'silent-e': 'silent e',
  ed: 'ed',
  es: 'es',
  'c-k-ck': 'c, k or ck',
  'ff-ll-ss-zz': 'ff, ll, ss or zz',
  'tch-dge': 'tch or dge',
};

function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
