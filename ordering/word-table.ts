import type { Item } from '../core/sequence/sequence.ts';
import { wordNeeds } from '../core/words/decodable.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { makeCommonWord } from './common-words.ts';
import { IRREGULAR_WORDS } from './irregular-words.ts';

/** How many of the commonest words count, and how many of one syllable, with which reading begins. */
const COMMON = 3000;
const SHORT = 8000;

/** The table of common words with what each needs now, as `parseCommonWords` reads it. */
export function makeWordTable(lexicon: Lexicon): string {
  const listed = new Set(Object.values(IRREGULAR_WORDS).flat());
  // The list has no single letters but a; the pronoun I is the card i=AY.
  const lines = [makeCommonWord('i', 1, [{ kind: 'card', id: 'i=AY' }])];
  for (let index = 0; index < lexicon.size; index++) {
    const word = lexicon.word(index);
    if (UNFIT_EXAMPLES.has(word)) continue;
    const short = index < SHORT && lexicon.syllableCount(index) === 1;
    if (index >= COMMON && !short && !listed.has(word)) continue;
    lines.push(makeCommonWord(word, lexicon.band(index), needs(index, lexicon)));
  }
  return `${TABLE_HEAD}${lines.join('\n')}\n`;
}

function needs(index: number, lexicon: Lexicon): readonly Item[] | null {
  if (!lexicon.isRegular(index)) return null;
  const { ids, habits } = wordNeeds(index, lexicon);
  return [
    ...ids.map((id): Item => ({ kind: 'card', id })),
    ...habits.map((habit): Item => ({ kind: 'habit', habit })),
  ];
}

/** Common words that should neither steer the order nor stand as its examples. */
const UNFIT_EXAMPLES: ReadonlySet<string> = new Set(
  `ass beer beers bet blood bloody bomb booze bum bust butt cigarette cigarettes cop cops corpse crap cult dam damn
   damned dead die died dies drug drugs drunk dude dumb em fat gonna gotta gun guns gut guts hell idiot keg kill
   killed killer killing kills liquor morgue murder nag non nuts pee pill pills rifle rob robbed shoot shot
   shots sin sins stab suck sucks thug wanna weapon weapons whip wine`
    .trim()
    .split(/\s+/),
);

const TABLE_HEAD = `# Common words for computing the order of teaching, commonest first: word, band, needs.
# From the word list (lexicon/SOURCES.md names its sources), made by ordering/main.ts --words.
`;
