import { guessReading } from '../language/guess.ts';
import type { Lexicon } from './lexicon.ts';
import type { Screened, ScreenVerdict, WordScreen } from './screen.ts';

const severity: Readonly<Record<ScreenVerdict, number>> = { clear: 0, ask: 1, stop: 2 };
const CLEAR: Screened = { verdict: 'clear', category: null, reason: null };

/**
 * What the screen says of a text that the teacher typed herself: the strictest over its words and over
 * all ways in which each can be said, or may be said by its letters where the list does not have it.
 */
export function screenText(text: string, lexicon: Lexicon, screen: WordScreen): Screened {
  return (text.toLowerCase().match(/[a-z']+/g) ?? [])
    .flatMap((word) => soundsOf(word, lexicon).map((sounds) => screen.judge(word, sounds)))
    .reduce(
      (left, right) => (severity[right.verdict] > severity[left.verdict] ? right : left),
      CLEAR,
    );
}

function soundsOf(word: string, lexicon: Lexicon) {
  const index = lexicon.indexOf(word);
  const listed = index >= 0 ? lexicon.readings(index).map(({ sounds }) => sounds) : [];
  const guessed = guessReading(word);
  if (listed.length > 0 || !guessed) return listed.length > 0 ? listed : [[]];
  return [guessed.sounds];
}
