import { decodableWords } from '../words/decodable.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Sequence } from './sequence.ts';
import { taughtUpTo } from './teach.ts';

/** What a step is worth: how many words of the list it opens, and the commonest of them. */
export interface StepWorth {
  readonly opens: number;
  /** At most five, commonest first; irregular words of the step are not among them. */
  readonly examples: readonly string[];
}

const EXAMPLES = 5;

/** Which words can be read after step `number` and not before, leaving out those learned by heart. */
export function explainStep(sequence: Sequence, number: number, lexicon: Lexicon): StepWorth {
  const before = new Set(decodableWords(lexicon, taughtUpTo(sequence, number - 1)));
  const after = taughtUpTo(sequence, number);
  const opened = decodableWords(lexicon, after).filter(
    (index) => !before.has(index) && !after.irregularWords.has(lexicon.word(index)),
  );
  return {
    opens: opened.length,
    examples: opened.slice(0, EXAMPLES).map((index) => lexicon.word(index)),
  };
}
