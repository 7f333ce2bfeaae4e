/** The piles of spelling papers of the open class: which is open, and all that is said of it. */

import { computed } from '@preact/signals';
import { boolean, custom, nullable, object } from 'valibot';
import { type ChildId, type GroupId, isPapersId, type PapersId, papersId } from '../../core/ids.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { EventSpec, PaperAnswer, PapersChange, PapersWord } from '../../core/log/event.ts';
import { answerKey, type PapersRecord, type PileWord } from '../../core/log/papers-record.ts';
import { childrenOf } from '../../core/log/roster.ts';
import { attemptsOf, type PaperAttempt } from '../../core/papers/attempts.ts';
import {
  type CardShown,
  type CommonSlip,
  cardsShown,
  commonSlips,
  type Share,
  sumOf,
} from '../../core/papers/spelling-shown.ts';
import { isFamiliarIn } from '../../core/spelling/said-word.ts';
import { newId } from '../device/log/ids.ts';
import { remembered } from '../device/remembered.ts';
import { accent } from './accent.ts';
import { readyEngine } from './engine-ready.ts';
import { classState, group, record, recordUndoable, takeBack } from './open-class.ts';
import { noteUndo } from './undo.ts';

const kept = remembered(
  'papers',
  object({ open: nullable(custom<PapersId>(isPapersId)), byPaper: boolean() }),
  {
    open: null,
    byPaper: false,
  },
);

/** The piles of the class, the newest first. */
export const piles = computed<readonly PapersRecord[]>(() =>
  [...classState.value.papers.values()].reverse(),
);

/** The pile that is being read; null when none is. */
export const openPile = computed<PapersRecord | null>(() => {
  const { open } = kept.value;
  return (open && classState.value.papers.get(open)) ?? null;
});

/** The newest pile that a group wrote on a day; null for none. */
export function pileOfDay(groupId: GroupId, day: string): PapersRecord | null {
  return piles.peek().find((pile) => pile.groupId === groupId && pile.day === day) ?? null;
}

/** Whether Enter goes on with the same paper, and not to the next child with the same word. */
export const byPaper = computed(() => kept.value.byPaper);

/** Says where Enter goes. */
export function setByPaper(next: boolean): void {
  kept.value = { ...kept.peek(), byPaper: next };
}

/** Turns to a pile, or to none. */
export function openPapers(id: PapersId | null): void {
  kept.value = { ...kept.peek(), open: id };
}

/** Begins a pile for the group at work and turns to it. */
export function beginPile(words: readonly PapersWord[], day: string | null): void {
  const id = papersId(newId());
  record({ kind: 'papers-begun', body: { papersId: id, groupId: group.peek().id, day, words } });
  openPapers(id);
}

/** Sets the day or words of a pile right, as one thing that can be taken back. */
export function changePile({ id: papersId }: PapersRecord, changes: readonly PapersChange[]): void {
  if (changes.length === 0) return;
  const events = record(
    ...changes.map((change): EventSpec => ({ kind: 'papers-changed', body: { papersId, change } })),
  );
  noteUndo('Changed the papers.', () => takeBack(events));
}

/** Says what a child wrote for a word; taken back with Ctrl+Z. */
export function sayAnswer(
  pile: PapersRecord,
  child: ChildId,
  { slot, word }: PileWord,
  answer: PaperAnswer,
): void {
  // the field shows it; a bar for each word would be in the way
  sayAnswers(pile, [{ child, slot, answer }], word, false);
}

/** Says several answers at once, as one thing that can be taken back. */
export function sayAnswers(
  { id: papersId }: PapersRecord,
  answers: readonly {
    readonly child: ChildId;
    readonly slot: number;
    readonly answer: PaperAnswer;
  }[],
  said: string,
  isTold = true,
): void {
  const events = record(
    ...answers.map(({ child, slot: word, answer }): EventSpec => {
      return { kind: 'papers-read', body: { papersId, child, word, answer } };
    }),
  );
  noteUndo(said, () => takeBack(events), isTold);
}

/** What was typed as an answer: `=` is the word itself, `-` nothing. */
export function answerOf(typed: string, { word }: PapersWord): PaperAnswer {
  const text = typed.trim();
  if (text === '=') return { kind: 'wrote', text: word };
  if (text === '-' || text === '–') return { kind: 'wrote', text: '' };
  const engine = readyEngine();
  const letters = text.toLowerCase().replace(/[^a-z]/g, '');
  const isWord = engine !== null && letters !== word && isFamiliarIn(engine.lexicon)(letters);
  return { kind: 'wrote', text, ...(isWord ? { isWord } : {}) };
}

/** Takes a pile out with all that was read; can be undone. */
export function takeOutPile({ begunBy }: PapersRecord): void {
  openPapers(null);
  recordUndoable('Took out the papers.', { kind: 'undone', body: { event: begunBy } });
}

/** The children whose papers lie in a pile: those of its group, and those it has answers of. */
export function childrenOfPile({ groupId, words, answers }: PapersRecord) {
  const state = classState.value;
  const members = childrenOf(state, groupId);
  const others = [...state.children.values()].filter(
    ({ id }) =>
      !members.some((member) => member.id === id) &&
      words.some(({ slot }) => answers.has(answerKey(id, slot))),
  );
  return [...members, ...others];
}

/** So many of the latest piles say what is to be practiced, and so many slips of theirs. */
const LATEST = 3;
const SLIPS = 3;

const latestSlips = computed<readonly CommonSlip[]>(() => {
  const latest = piles.value.filter(({ groupId }) => groupId === group.value.id).slice(0, LATEST);
  return commonSlips(latest.flatMap(attemptsOfPile));
});

/** The cards that the group at work missed most in its latest papers, by id; spelled or not heard. */
export const missedInSpelling = computed<readonly CardId[]>(() => [
  ...new Set(latestSlips.value.slice(0, SLIPS).flatMap(({ cards }) => cards)),
]);

/** The sounds that were not heard in its latest papers, by their cards, with how many children missed them. */
export const notHeard = computed<ReadonlyMap<CardId, number>>(
  () =>
    new Map(
      latestSlips.value
        .filter(({ need }) => need === 'ear')
        .slice(0, SLIPS)
        .flatMap(({ cards, children }) => cards.map((card) => [card, children.length])),
    ),
);

/** All that was read of a pile. */
export function attemptsOfPile(pile: PapersRecord): readonly PaperAttempt[] {
  return attemptsOf(
    pile,
    childrenOfPile(pile).map(({ id }) => id),
    accent.value,
  );
}

/** What all papers of a child have shown. */
export interface ChildSpelling {
  /** How many papers were read, and how many words on them. */
  readonly papers: number;
  readonly words: number;
  /** By card: how often it was heard, and spelled as the word has it. */
  readonly cards: readonly CardShown[];
  readonly hears: Share;
  readonly knows: Share;
  /** Words that were not right when they were last written, the newest first. */
  readonly missed: readonly { readonly word: string; readonly wrote: string }[];
  /** The slips, the most frequent first. */
  readonly slips: readonly CommonSlip[];
}

/** A child's spelling by its papers; null while none of its was read. */
export function spellingOf(child: ChildId): ChildSpelling | null {
  const papers = piles.value
    .map((pile) => attemptsOf(pile, [child], accent.value))
    .filter((attempts) => attempts.length > 0);
  const attempts = papers.flat();
  if (attempts.length === 0) return null;
  const cards = cardsShown(attempts);
  const newest = new Map<string, PaperAttempt>();
  for (const attempt of attempts) {
    if (!newest.has(attempt.said.word)) newest.set(attempt.said.word, attempt);
  }
  return {
    papers: papers.length,
    words: attempts.length,
    cards,
    hears: sumOf(cards.map(({ hears }) => hears)),
    knows: sumOf(cards.map(({ knows }) => knows)),
    missed: [...newest.values()]
      .filter(({ read }) => read !== null && !read.wordRight && read.answer === 'attempt')
      .map(({ said, wrote }) => ({ word: said.word, wrote: wrote ?? '' })),
    slips: commonSlips(attempts),
  };
}
