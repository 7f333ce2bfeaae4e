import type { ChildId } from '../ids.ts';
import type { Accent } from '../language/accent/accent.ts';
import type { PaperAnswer, PapersWord } from '../log/event.ts';
import { answerKey, type PapersRecord } from '../log/papers-record.ts';
import { asMeant } from '../spelling/as-meant.ts';
import { asSaidHere } from '../spelling/as-said-here.ts';
import type { AttemptReading, CardVerdict } from '../spelling/attempt.ts';
import { readAttempt } from '../spelling/read-attempt.ts';
import { readingOfWord } from './said-words.ts';

/** What one child wrote for one word, read card by card. */
export interface PaperAttempt {
  readonly child: ChildId;
  /** The slot of the word in its pile. */
  readonly slot: number;
  readonly said: PapersWord;
  /** The letters it wrote; null where only the cards that broke were marked. */
  readonly wrote: string | null;
  /** By card: null of a card that was marked as broken, which is all that is known of it. */
  readonly cards: readonly (CardVerdict | null)[];
  /** The reading of the letters; null where only cards were marked. */
  readonly read: AttemptReading | null;
}

/** What an answer says, whoever gave it. */
type ReadAnswer = Pick<PaperAttempt, 'wrote' | 'cards' | 'read'>;

/**
 * An answer read, in a class with this accent; null when the child was away, or nothing was read yet. What was read once is kept as
 * long as the answer is, since every event asks for all of them.
 */
export function readAnswer(
  answer: PaperAnswer,
  said: PapersWord,
  accent: Accent,
): ReadAnswer | null {
  const known = kept.get(answer);
  const key = accent.join(' ');
  if (known && known.said === said && known.key === key) return known.read;
  const read = readNow(answer, said, accent);
  kept.set(answer, { said, key, read });
  return read;
}

const kept = new WeakMap<PaperAnswer, { said: PapersWord; key: string; read: ReadAnswer | null }>();

function readNow(answer: PaperAnswer, said: PapersWord, accent: Accent): ReadAnswer | null {
  if (answer.kind === 'absent' || answer.kind === 'unread') return null;
  const reading = readingOfWord(said);
  if (answer.kind === 'wrote') {
    const asWritten = readAttempt([reading], answer.text, {
      taught: null,
      isFamiliar: () => answer.isWord === true,
    });
    const read = asMeant(asSaidHere(asWritten, accent), answer.meant ?? []);
    return { wrote: answer.text, cards: read.cards, read };
  }
  const { cards } = readAttempt([reading], said.word, { taught: null, isFamiliar: () => true });
  const broken = new Set(answer.cards);
  return {
    wrote: null,
    cards: cards.map((card, at) => (broken.has(at + 1) ? null : card)),
    read: null,
  };
}

/** Every attempt of a pile, word by word, as the children of it were read, in a class that speaks so. */
export function attemptsOf(
  record: PapersRecord,
  children: readonly ChildId[],
  accent: Accent,
): readonly PaperAttempt[] {
  return record.words.flatMap((said) =>
    children.flatMap((child) => {
      const answer = record.answers.get(answerKey(child, said.slot));
      const read = answer ? readAnswer(answer, said, accent) : null;
      return read ? [{ child, slot: said.slot, said, ...read }] : [];
    }),
  );
}
