import type { Family } from '../../../core/story/families.ts';

/** Everything that a family reads on a note about their child, in one language. */
export interface FamilyWords {
  /** The language as browsers name it, for dates and for ears. */
  readonly tag: string;
  readonly title: (name: string) => string;
  readonly intro: string;
  /** What is said of the language itself, where the words to read are in another one; else empty. */
  readonly aboutWords: (name: string) => string;
  /** Above words that the child was seen to read, and above words that were only taught. */
  readonly canRead: (name: string) => string;
  readonly toTry: string;
  readonly together: string;
  readonly practicing: string;
  readonly toWrite: string;
  readonly howToWrite: (name: string) => string;
  readonly howTo: string;
  readonly steps: (name: string) => readonly string[];
  /** That nobody who speaks the language has read this yet; empty once somebody has. */
  readonly machineMade: string;
}

/** The words for what a child reads well and practices, where the sentence on a child is not in English. */
export interface StoryWords {
  readonly nothing: string;
  readonly surely: (families: string) => string;
  readonly right: (times: number, of: number) => string;
  readonly practicing: (cards: string) => string;
  readonly and: string;
  readonly families: Readonly<Record<Family, string>>;
}
