/**
 * Computes our order of teaching and stores it: core/sequence/steps.ts.
 * `--words` renews the table of common words as they are read now,
 * ordering/current-words.tsv, which the reason given for each step is drawn from.
 * `--order` also takes it as the table that the order is computed from,
 * ordering/common-words.tsv: that one is kept, so that the order, which classes
 * follow, moves only when someone decides it should.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { makeItems } from '../core/sequence/item.ts';
import type { Step } from '../core/sequence/sequence.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { type CommonWord, parseCommonWords } from './common-words.ts';
import { computeSteps } from './compute-steps.ts';
import { makeWordTable } from './word-table.ts';

const at = (path: string): URL => new URL(`../${path}`, import.meta.url);
const ORDER = at('ordering/common-words.tsv');
const WORDS = at('ordering/current-words.tsv');

function makeStepsModule(steps: readonly Step[]): string {
  const rows = steps.map(({ stage, grade, title, items, why }) =>
    JSON.stringify([stage, grade, title, makeItems(items), why]),
  );
  return `import type { Grade } from './sequence.ts';

/** One step: stage, grade, title, items in text form, why it stands here. */
export type StepRow = readonly [
  stage: string,
  grade: Grade,
  title: string,
  items: string,
  why: string,
];

/**
 * Our order of teaching, step 1 first. Computed: ordering/main.ts writes
 * this table with the method of ordering/, and a test holds the two together.
 * To change the order, change the method or its tables, not this file.
 */
export const STEP_ROWS: readonly StepRow[] = [
  ${rows.join(',\n  ')},
];
`;
}

const renews = process.argv.includes('--words') || process.argv.includes('--order');
if (renews) {
  const lexicon = decodeLexicon(new Uint8Array(readFileSync(at('lexicon/dist/words.bin'))));
  writeFileSync(WORDS, makeWordTable(lexicon));
}
if (process.argv.includes('--order')) writeFileSync(ORDER, readFileSync(WORDS));
const [order, now] = [ORDER, WORDS].map((file) => parseCommonWords(readFileSync(file, 'utf8')));
const steps = computeSteps(order as readonly CommonWord[], now as readonly CommonWord[]);
writeFileSync(at('core/sequence/steps.ts'), makeStepsModule(steps));
console.log(`${steps.length} steps written. Run: npx biome check --write core/sequence/steps.ts`);
