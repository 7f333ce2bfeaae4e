import type { PaperAnswer, PapersEvent, PapersWord } from './event.ts';

/** A pile of papers: the words that were said, and what each child wrote, as far as it was read. */
export interface PapersRecord {
  readonly id: string;
  /** A group's id, or the whole class. */
  readonly groupId: string;
  /** The day they were written, `YYYY-MM-DD`; null for none. */
  readonly day: string | null;
  readonly words: readonly PapersWord[];
  /** When the pile was begun. */
  readonly at: number;
  /** The event that began it, with which the whole pile is taken out. */
  readonly begunBy: string;
  /** By child and word (`answerKey`); what is not there was not read yet. */
  readonly answers: ReadonlyMap<string, KeptAnswer>;
}

/** An answer and the id of the event that gave it, with which it is undone. */
export type KeptAnswer = PaperAnswer & { readonly id: string };

/** Under which a child's answer to a word (counted from 0) stands. */
export function answerKey(child: string, word: number): string {
  return `${word} ${child}`;
}

/**
 * Reads a pile from its events in force, in their order. Null while it is not known how it was begun.
 * Begun twice, it is the pile that was first. Answers to words that it has not are left out.
 */
export function readPapers(events: readonly PapersEvent[]): PapersRecord | null {
  const begun = events.find((event) => event.kind === 'papers-begun');
  if (begun?.kind !== 'papers-begun') return null;
  const { papersId: id, groupId, day, words } = begun.body;
  const answers = new Map<string, KeptAnswer>();
  for (const event of events) {
    if (event.kind !== 'papers-read') continue;
    const { child, word, answer } = event.body;
    const key = answerKey(child, word);
    if (word >= words.length) continue;
    if (answer.kind === 'unread') answers.delete(key);
    else answers.set(key, { ...answer, id: event.id });
  }
  return { id, groupId, day, words, at: begun.at, begunBy: begun.id, answers };
}
