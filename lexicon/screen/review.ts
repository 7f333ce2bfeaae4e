import { readFileSync } from 'node:fs';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import { commonWords } from './common-words.ts';
import { parseScreenList } from './list.ts';

/**
 * Prints what the screen says about English words that are on no list, for
 * reading by eye after a change: `npx tsx lexicon/screen/review.ts [sizes]`. A
 * harmless word that appears belongs in harmless.tsv, with its sounds.
 */
const sizes = (process.argv[2] ?? '10,20,35,40,50').split(',').map(Number);
const listed = new Set(
  parseScreenList(readFileSync(new URL('./list.tsv', import.meta.url), 'utf8')).map(
    ({ spelling }) => spelling,
  ),
);
const screen = createWordScreen(SCREEN_DATA);
for (const { word, said } of commonWords(sizes)) {
  if (listed.has(word)) continue;
  const found = said.map((sounds) => screen.judge(word, sounds));
  const worst = found.find((one) => one.verdict === 'stop') ?? found.find((one) => one.reason);
  if (worst && worst.verdict !== 'clear') {
    process.stdout.write(`${worst.verdict}\t${word}\t${worst.category}\n`);
  }
}
