import type { Taught } from '../../language/taught.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { WordScreen } from '../../words/screen.ts';

/** What a judgment rests on. The teacher's own decisions about words are part of the screen. */
export interface JudgeContext {
  readonly taught: Taught;
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}
