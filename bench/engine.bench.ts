import { readFileSync } from 'node:fs';
import { dictionary } from 'cmu-pronouncing-dictionary';
import { align } from '../core/language/align.ts';
import { type Pronunciation, parsePronunciation } from '../core/language/pronunciation.ts';
import { makeRandom } from '../core/random.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { judgePassage } from '../core/texts/passage.ts';
import { decodableWords } from '../core/words/decodable.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { type Measurement, type MeasureSpec, measure } from './measure.ts';

const ALIGNED = 10_000;
const RUNNING_WORDS = 100_000;
const VOCABULARY = 8000;

/**
 * The word engine: aligning (the aim is 20,000 words a second on one core), reading the list,
 * filtering it by what was taught, and judging a long text. Beside each stands its ratio to a
 * yardstick taken in the same run (every letter of the list counted in a Map), which stays the same
 * on a slower machine.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const bytes = new Uint8Array(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url)));
  const lexicon = decodeLexicon(bytes);
  const words = Array.from({ length: lexicon.size }, (_, index) => lexicon.word(index));
  const spoken = words.flatMap(spokenWord).slice(0, ALIGNED);
  const taught = taughtUpTo(SEQUENCE, 70);
  const text = makeText(lexicon, RUNNING_WORDS);
  const yardstick = await measure({
    name: `yardstick: the letters of ${words.length} words counted`,
    run: () => countLetters(words),
  });
  const beside = async (spec: MeasureSpec): Promise<Measurement> => {
    const measured = await measure({ warmUps: 5, runs: 20, ...spec });
    const ratio = (measured.median / yardstick.median).toFixed(2);
    return { ...measured, name: `${measured.name} (${ratio} yardsticks)` };
  };
  return [
    yardstick,
    await beside({
      name: `align ${spoken.length} words`,
      aim: spoken.length / 20,
      run: () => spoken.forEach(({ word, said }) => void align(word, said)),
    }),
    await beside({ name: 'read the word list', run: () => decodeLexicon(bytes) }),
    await beside({
      name: `filter ${lexicon.size} words by what was taught`,
      aim: 2,
      runs: 100,
      run: () => decodableWords(lexicon, taught),
    }),
    await beside({
      name: `judge a text of ${RUNNING_WORDS} words`,
      aim: 300,
      run: () => judgePassage(text, taught, lexicon, SEQUENCE),
    }),
  ];
}

function spokenWord(word: string): { readonly word: string; readonly said: Pronunciation }[] {
  const said = parsePronunciation(dictionary[word] ?? '');
  return said ? [{ word, said }] : [];
}

/**
 * Running text as books have it: the nth word 1/n as often as the first (Zipf), of the 8,000
 * commonest, in sentences of twelve; the same each time.
 */
function makeText(lexicon: Lexicon, words: number): string {
  const random = makeRandom(1);
  const drawn = Array.from({ length: words }, (_, at) => {
    const word = lexicon.word(Math.floor(VOCABULARY ** random.fraction()) - 1);
    return at % 12 === 0 ? `${word[0]?.toUpperCase()}${word.slice(1)}` : word;
  });
  return drawn.map((word, at) => (at % 12 === 11 ? `${word}.` : word)).join(' ');
}

function countLetters(words: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const word of words) {
    for (const letter of word) counts.set(letter, (counts.get(letter) ?? 0) + 1);
  }
  return counts.size;
}
