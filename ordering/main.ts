/**
 * Computes our order of teaching and stores it: core/sequence/steps.ts. With
 * `--words` it first renews the table of common words that the order is
 * computed from, ordering/common-words.tsv, out of the word list.
 * The table is kept so that the order, which classes follow, moves only when
 * someone decides it should.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import type { Reading } from '../core/language/reading.ts';
import { makeItems } from '../core/sequence/item.ts';
import type { Item, Step } from '../core/sequence/sequence.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { needsOf } from '../core/words/needs.ts';
import { makeCommonWord, parseCommonWords } from './common-words.ts';
import { computeSteps } from './compute-steps.ts';
import { IRREGULAR_WORDS } from './irregular-words.ts';

const at = (path: string): URL => new URL(`../${path}`, import.meta.url);
const WORDS = at('ordering/common-words.tsv');

/** How many of the commonest words count, and of those of one syllable, with which reading begins. */
const COMMON = 3000;
const SHORT = 8000;

function makeTable(lexicon: Lexicon): string {
  const listed = new Set(Object.values(IRREGULAR_WORDS).flat());
  // The list has no single letters but a; the pronoun I is the card i=AY.
  const lines = [makeCommonWord('i', 1, [{ kind: 'card', id: 'i=AY' }])];
  for (let index = 0; index < lexicon.size; index++) {
    const word = lexicon.word(index);
    const [reading] = lexicon.readings(index);
    if (!reading || UNFIT_EXAMPLES.has(word)) continue;
    const short = index < SHORT && reading.syllables.length === 1;
    if (index >= COMMON && !short && !listed.has(word)) continue;
    lines.push(makeCommonWord(word, lexicon.band(index), needs(reading)));
  }
  return `${TABLE_HEAD}${lines.join('\n')}\n`;
}

function needs({ cards, syllables }: Reading): readonly Item[] | null {
  if (!cards.every(({ regular }) => regular)) return null;
  const { ids, habits } = needsOf(
    cards.map(({ id }) => id),
    syllables.length,
  );
  return [
    ...ids.map((id): Item => ({ kind: 'card', id })),
    ...habits.map((habit): Item => ({ kind: 'habit', habit })),
  ];
}

/** Common words that should neither steer the order nor stand as its examples. */
const UNFIT_EXAMPLES: ReadonlySet<string> = new Set(
  `ass beer beers bet blood bloody bomb booze bum bust butt cigarette cigarettes cop cops corpse crap cult dam damn
   damned dead die died dies drug drugs drunk dude dumb em fat gonna gotta gun guns gut guts hell idiot keg kill
   killed killer killing kills liquor morgue murder nag nuts pee pill pills rifle rob robbed shoot shot
   shots sin sins stab suck sucks thug wanna weapon weapons whip wine`
    .trim()
    .split(/\s+/),
);

const TABLE_HEAD = `# Common words for computing the order of teaching, commonest first: word, band, needs.
# From the word list (lexicon/SOURCES.md names its sources), made by ordering/main.ts --words.
`;

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

if (process.argv.includes('--words')) {
  const lexicon = decodeLexicon(new Uint8Array(readFileSync(at('lexicon/dist/words.bin'))));
  writeFileSync(WORDS, makeTable(lexicon));
}
const steps = computeSteps(parseCommonWords(readFileSync(WORDS, 'utf8')));
writeFileSync(at('core/sequence/steps.ts'), makeStepsModule(steps));
console.log(`${steps.length} steps written. Run: npx biome check --write core/sequence/steps.ts`);
