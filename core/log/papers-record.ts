import type { ChildId, EventId, GroupId, PapersId } from '../ids.ts';
import type { PaperAnswer, PapersChange, PapersEvent, PapersWord } from './event.ts';

/** A pile of papers: the words that were said, and what each child wrote, as far as it was read. */
export interface PapersRecord {
  readonly id: PapersId;
  /** A group's id, or the whole class. */
  readonly groupId: GroupId;
  /** The day they were written, `YYYY-MM-DD`; null for none. */
  readonly day: string | null;
  readonly words: readonly PileWord[];
  /** The slot of the next word that is added. */
  readonly nextSlot: number;
  /** When the pile was begun. */
  readonly at: number;
  /** The event that began it, with which the whole pile is taken out. */
  readonly begunBy: EventId;
  /** By child and word (`answerKey`); what is not there was not read yet. */
  readonly answers: ReadonlyMap<string, KeptAnswer>;
}

/** A word of a pile; its slot (from 0) is its own for good, also when another word is taken out. */
export type PileWord = PapersWord & { readonly slot: number };

/** An answer and the id of the event that gave it, with which it is undone. */
export type KeptAnswer = PaperAnswer & { readonly id: EventId };

/** Under which a child's answer to the word of a slot stands. */
export function answerKey(child: ChildId, slot: number): string {
  return `${slot} ${child}`;
}

/**
 * Reads a pile from its events in force, in their order. Null while it is not known how it was begun.
 * Begun twice, it is the pile that was first. Answers to words that it has not are left out. What was
 * written stays when a word is set right, and is read again; which of its cards broke does not, since
 * they were other cards.
 */
export function readPapers(events: readonly PapersEvent[]): PapersRecord | null {
  const begun = events.find((event) => event.kind === 'papers-begun');
  if (begun?.kind !== 'papers-begun') return null;
  const { papersId: id, groupId, words: first } = begun.body;
  let { day } = begun.body;
  const slots: (PileWord | null)[] = first.map((word, slot) => ({ ...word, slot }));
  const answers = new Map<number, Map<ChildId, KeptAnswer>>();
  for (const event of events) {
    if (event.kind === 'papers-changed') {
      const { change } = event.body;
      if (change.of === 'day') day = change.day;
      else changeWord(slots, answers, change);
    }
    if (event.kind !== 'papers-read') continue;
    const { child, word, answer } = event.body;
    const ofWord = answers.get(word) ?? new Map<ChildId, KeptAnswer>();
    answers.set(word, ofWord);
    if (answer.kind === 'unread') ofWord.delete(child);
    else ofWord.set(child, { ...answer, id: event.id });
  }
  const words = slots.filter((word) => word !== null);
  return {
    id,
    groupId,
    day,
    words,
    nextSlot: slots.length,
    at: begun.at,
    begunBy: begun.id,
    answers: new Map(
      words.flatMap(({ slot }) =>
        [...(answers.get(slot) ?? [])].map(([child, answer]) => [answerKey(child, slot), answer]),
      ),
    ),
  };
}

function changeWord(
  slots: (PileWord | null)[],
  answers: ReadonlyMap<number, Map<ChildId, KeptAnswer>>,
  { word: slot, said }: Extract<PapersChange, { of: 'word' }>,
): void {
  if (slot > slots.length) return;
  const before = slots[slot];
  slots[slot] = said && { ...said, slot };
  if (!before || !said || before.cards.join(' ') === said.cards.join(' ')) return;
  const ofWord = answers.get(slot);
  for (const [child, { kind }] of ofWord ?? []) if (kind === 'broke') ofWord?.delete(child);
}
