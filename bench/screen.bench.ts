import { PHONEMES, type Phoneme, VOWEL_PHONEMES } from '../core/language/phonemes.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import {
  decideWord,
  type FirstName,
  NO_RULES,
  screenForClass,
} from '../core/words/teacher-rules.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { type Measurement, measure } from './measure.ts';

/**
 * Verdicts on every word that three piles of 24 cards can make, and the time to
 * read the screen. The aim is 500,000 verdicts a second.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const screen = createWordScreen(SCREEN_DATA);
  const words = boardWords();
  const ofClass = screenForClass(screen, decideWord(NO_RULES, 'block', 'lan'), CLASS);
  const judgeAll = (by: WordScreen) => () => {
    let stopped = 0;
    for (let time = 0; time < TIMES; time++) {
      for (const { word, sounds } of words) {
        if (by.judge(word, sounds).verdict === 'stop') stopped += 1;
      }
    }
    return stopped;
  };
  return [
    await measure({ name: 'read the word screen', run: () => createWordScreen(SCREEN_DATA) }),
    await measure({
      name: `screen the ${words.length} words of a board, ${TIMES} times`,
      aim: (TIMES * words.length) / 500,
      runs: 20,
      run: judgeAll(screen),
    }),
    await measure({
      name: `the same for a class of ${CLASS.length} with names, ${TIMES} times`,
      aim: (TIMES * words.length) / 500,
      runs: 20,
      run: judgeAll(ofClass),
    }),
  ];
}

/** First names of a class, invented. */
const CLASS: readonly FirstName[] = Array.from({ length: 24 }, (_, at) => ({
  name: `Child${at}`,
  sounds: ['CH', 'AY', 'L', 'D', PHONEMES[at] as Phoneme],
}));

/** Enough of them that what else the machine does counts little. */
const TIMES = 50;

interface BoardWord {
  readonly word: string;
  readonly sounds: readonly Phoneme[];
}

function boardWords(): readonly BoardWord[] {
  const ends: readonly (readonly [string, Phoneme])[] = [
    ['b', 'B'],
    ['d', 'D'],
    ['f', 'F'],
    ['g', 'G'],
    ['j', 'JH'],
    ['k', 'K'],
    ['l', 'L'],
    ['m', 'M'],
    ['n', 'N'],
    ['p', 'P'],
    ['r', 'R'],
    ['s', 'S'],
    ['t', 'T'],
    ['v', 'V'],
    ['w', 'W'],
    ['z', 'Z'],
    ['sh', 'SH'],
    ['ch', 'CH'],
    ['th', 'TH'],
    ['ph', 'F'],
    ['ck', 'K'],
    ['ss', 'S'],
    ['ll', 'L'],
    ['ff', 'F'],
  ];
  const vowels = VOWEL_PHONEMES.slice(0, 8).map(
    (sound, at) => ['aeiouaei'.charAt(at), sound] as const,
  );
  return ends.flatMap(([first, onset]) =>
    vowels.flatMap(([letter, vowel]) =>
      ends.map(([last, coda]) => ({
        word: first + letter + last,
        sounds: [onset, vowel, coda],
      })),
    ),
  );
}
