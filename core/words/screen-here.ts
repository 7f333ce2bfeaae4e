import type { Accent } from '../language/accent/accent.ts';
import { alsoHeard } from '../language/accent/also-heard.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from './lexicon.ts';
import type { WordScreen } from './screen.ts';

/**
 * The word screen in a class with this accent: without an r *pawn* is heard as another word. What is heard
 * as a word that nobody should hear is hidden too, for her to decide where it is a word of the list. Words
 * that the screen would only ask about are no reason: *full* stays where it sounds like *fool*. Nothing
 * that the screen hides is shown for it.
 */
export function screenHere(screen: WordScreen, lexicon: Lexicon, accent: Accent): WordScreen {
  if (accent.length === 0) return screen;
  return {
    judge(word, sounds) {
      const own = screen.judge(word, sounds);
      if (own.verdict !== 'clear' || own.category !== null) return own;
      for (const way of worseWays(sounds, accent)) {
        const heard = screen.judge(word, way);
        if (heard.verdict !== 'stop') continue;
        return lexicon.indexOf(word) < 0 ? heard : { ...heard, verdict: 'ask' };
      }
      return own;
    },
  };
}

/**
 * What the sounds may be heard as. The screen's own ear makes /ŏ/ and /aw/ one, so of the r only that it
 * may be thought behind an /aw/ is tried: without the r of *fork* that ear would hear a word that nobody
 * without r hears.
 */
function worseWays(sounds: readonly Phoneme[], accent: Accent): readonly (readonly Phoneme[])[] {
  const others = accent.filter((habit) => habit !== 'r-dropped' && habit !== 'southern-british');
  const ways = alsoHeard(sounds, others);
  if (others.length === accent.length) return ways.slice(1);
  const withR = sounds.flatMap((sound, at): readonly Phoneme[] =>
    sound === 'AO' && sounds[at + 1] !== 'R' ? ['AO', 'R'] : [sound],
  );
  return withR.length === sounds.length ? ways.slice(1) : [...ways.slice(1), withR];
}
