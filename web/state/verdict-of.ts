import type { Lexicon } from '../../core/words/lexicon.ts';
import type { Screened, ScreenVerdict, WordScreen } from '../../core/words/screen.ts';

const severity: Readonly<Record<ScreenVerdict, number>> = { clear: 0, ask: 1, stop: 2 };
const known = new WeakMap<WordScreen, Map<number, Screened>>();

/** What the screen says of a word of the list: the strictest over all the ways it can be said. */
export function verdictOf(index: number, lexicon: Lexicon, screen: WordScreen): Screened {
  let verdicts = known.get(screen);
  if (!verdicts) {
    verdicts = new Map();
    known.set(screen, verdicts);
  }
  let strictest = verdicts.get(index);
  if (!strictest) {
    const word = lexicon.word(index);
    strictest = lexicon
      .readings(index)
      .map(({ sounds }) => screen.judge(word, sounds))
      .reduce((left, right) => (severity[right.verdict] > severity[left.verdict] ? right : left));
    verdicts.set(index, strictest);
  }
  return strictest;
}
