import type { CardId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import type { Item } from '../sequence/sequence.ts';
import { type Dictation, type DictationSources, dictationFor } from './dictation.ts';

/** What is practiced at home, and of what its words are made. */
export interface Practiced {
  /** The cards to practice, the most wanted first. */
  readonly cards: readonly CardId[];
  /** What words ask for that are read alone. */
  readonly alone: Taught;
  /** What sentences ask for: they want small irregular words such as ‘the’, and are read together. */
  readonly together: Taught;
  /** What words and sentences show most. */
  readonly newest: readonly Item[];
  /** What went wrong lately: no word and no sentence holds it; left out for nothing. */
  readonly avoid?: readonly CardId[];
}

/** How many words and sentences there should be, and the seed that chooses them. */
export interface HomeSpec {
  readonly seed: number;
  readonly words: number;
  readonly sentences: number;
}

/** Words to read alone and sentences to read together, all through the word screen; fewer where there are fewer. */
export function homePractice(
  { alone, together, newest, avoid = [] }: Practiced,
  { seed, words, sentences }: HomeSpec,
  sources: DictationSources,
): Pick<Dictation, 'words' | 'sentences'> {
  const read = dictationFor({ taught: alone, newest, avoid, seed, words, sentences: 0 }, sources);
  const shared = dictationFor(
    { taught: together, newest, avoid, seed, words: 0, sentences },
    sources,
  );
  return { words: read.words, sentences: shared.sentences };
}
