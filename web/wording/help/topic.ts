import type { Screen } from '../../state/screens.ts';
import type { GlossaryWord } from './glossary.ts';

/**
 * The help on one screen. In its sentences the name of something on that screen stands between stars,
 * `*Start on the stage*`, exactly as the screen has it.
 */
export interface Topic {
  readonly screen: Screen;
  /** What the screen is for, in one or two sentences. */
  readonly about: string;
  /** What one can do there, each a few sentences. */
  readonly ways: readonly string[];
  /** The words that one meets there, each explained in the glossary. */
  readonly words: readonly GlossaryWord[];
}

/** A sentence of the help in its pieces: names, and what stands between them. */
export function cut(text: string): readonly { readonly text: string; readonly isName: boolean }[] {
  return text
    .split('*')
    .map((piece, at) => ({ text: piece, isName: at % 2 === 1 }))
    .filter((piece) => piece.text !== '');
}
