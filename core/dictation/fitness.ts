import type { Lexicon } from '../words/lexicon.ts';
import type { WordScreen } from '../words/screen.ts';
import { nameReading } from './sentences/names.ts';

/**
 * Whether the screen clears a word (lower case) however it may be said. A word
 * that neither the word list nor the table of names has is judged by its letters.
 */
export function isFitForClass(word: string, lexicon: Lexicon, screen: WordScreen): boolean {
  const index = lexicon.indexOf(word);
  const readings = index >= 0 ? lexicon.readings(index) : [nameReading(word)];
  return readings.every((reading) => screen.judge(word, reading?.sounds ?? []).verdict === 'clear');
}
