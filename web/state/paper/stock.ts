import type { Board } from '../../../core/boards/shapes/board.ts';
import type { MadeForm } from '../../../core/checks/check-form.ts';
import type { Dictation, DictationSources } from '../../../core/dictation/dictation.ts';
import type { Practiced } from '../../../core/dictation/home-practice.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Taught } from '../../../core/language/taught.ts';
import type { Progress } from '../../../core/sequence/progress.ts';
import type { Choices } from './print-choices.ts';

/** What there is to print from; what is costly is asked only when it is wanted. */
export interface Stock {
  readonly progress: Progress;
  /** What the group was taught, and the cards that are new this week. */
  readonly taught: Taught;
  readonly newest: () => readonly CardId[];
  /** Today's plan; null where there is none. */
  readonly drill: Drill | null;
  /** Today's board, and the one on the table; null where there is none. */
  readonly today: Board | null;
  readonly table: Board | null;
  /** For whom a plan is, and which day, in words. */
  readonly whom: string;
  readonly day: string;
  readonly dictation: () => Dictation | null;
  /** A list of words to read: those that show what is new, or what she looked for last. */
  readonly toRead: (choices: Choices) => WordsToRead;
  /** What is practiced, by the reader or the group. */
  readonly practiced: () => Practiced;
  /** Each child that home practice is for, in her order of names, with what it practices; none for one page alone. */
  readonly each: () => readonly { readonly name: string; readonly practiced: Practiced }[];
  readonly seed: number;
  /** The form to read, its name, and who reads it; empty for anyone. */
  readonly form: () => MadeForm & { readonly name: string };
  readonly reader: string;
  /** What a rare word means; null for a common one. */
  readonly meaningOf: (word: string) => string | null;
  readonly sources: DictationSources;
}

/** A list of words with its title; a pair is one text. */
export interface WordsToRead {
  readonly title: string;
  readonly words: readonly string[];
}
