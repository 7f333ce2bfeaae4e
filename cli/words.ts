import { graphemeOf } from '../core/language/card-id.ts';
import { PLACES } from '../core/language/correspondence.ts';
import { findWords, minimalPairs, type WordQuery } from '../core/words/finder.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { parseShape } from '../core/words/word-shape.ts';
import { type Here, loadHere, readCard, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions, type Typed } from './options.ts';

/** What words can be narrowed by, for every command that lists some. */
export const WORD_OPTIONS = {
  taught: 'text',
  shape: 'text',
  limit: 'text',
  card: 'text',
  place: 'text',
  syllables: 'text',
  irregular: 'flag',
  asked: 'flag',
  accent: 'text',
} as const;

/** `words --taught T`: the words that can be read with it, commonest first. */
export function words(args: readonly string[]): string {
  const typed = readOptions(args, { ...WORD_OPTIONS, contrast: 'text' });
  if (typed.words.length > 0) fail(`words takes options only; “${typed.words[0]}” is none.`);
  const here = loadHere(typed);
  const { lexicon } = here;
  const found = readWords(typed, here);
  const limit = typed.whole('limit', Number.MAX_SAFE_INTEGER, 0, Number.MAX_SAFE_INTEGER);
  const contrast = typed.text('contrast');
  if (contrast !== null) return pairsFound(lexicon, found, contrast, limit, typed.flag('json'));
  const rows = found.slice(0, limit).map((index) => wordRow(lexicon, index));
  if (typed.flag('json')) return JSON.stringify(rows);
  return rows.map(({ word }) => word).join('\n');
}

/** Indexes of the words that `WORD_OPTIONS` asks for and the word screen clears; `--limit` is the caller's. */
export function readWords(typed: Typed, here: Here): readonly number[] {
  const { lexicon, screen } = here;
  const syllables = typed.text('syllables') === null ? null : typed.whole('syllables', 1, 1, 12);
  return findWords(lexicon, {
    taught: readTaught(typed.text('taught'), here),
    irregular: typed.flag('irregular'),
    ...shapeAsked(typed.text('shape')),
    ...cardAsked(typed.text('card'), typed.text('place')),
    ...(syllables === null ? {} : { syllables }),
  }).filter((index) => isFit(lexicon, screen, index, typed.flag('asked')));
}

/** Whether every way to say a word is clear of the screen, or only asked about if that will do. */
function isFit(lexicon: Lexicon, screen: WordScreen, index: number, asked: boolean): boolean {
  return lexicon.readings(index).every(({ word, sounds }) => {
    const { verdict } = screen.judge(word, sounds);
    return verdict === 'clear' || (asked && verdict === 'ask');
  });
}

function wordRow(lexicon: Lexicon, index: number) {
  return {
    word: lexicon.word(index),
    band: lexicon.band(index),
    cards: lexicon.cardIds(index).map(graphemeOf),
  };
}

function shapeAsked(text: string | null): Pick<WordQuery, 'shape'> {
  if (text === null) return {};
  const shape = parseShape(text);
  if (shape !== null) return { shape };
  return fail(
    `“${text}” is no shape. Write c for a consonant card and v for a vowel: cvc, ccvc, cvce, cvvc.`,
  );
}

const PLACES_ASKED = [...PLACES, 'anywhere'] as const;

function cardAsked(text: string | null, place: string | null): Pick<WordQuery, 'card'> {
  if (text === null) {
    return place === null
      ? {}
      : fail('--place says where a card stands; name the card with --card.');
  }
  const where = PLACES_ASKED.find((known) => known === (place ?? 'anywhere'));
  if (!where) fail(`--place is one of ${PLACES_ASKED.join(', ')}; “${place}” is none.`);
  return { card: { id: readCard(text), place: where } };
}

/** Two cards joined with a slash, `i/e`: pairs of words that differ only in these. */
function pairsFound(
  lexicon: Lexicon,
  pool: readonly number[],
  contrast: string,
  limit: number,
  json: boolean,
): string {
  const [left, right, ...more] = contrast.split('/');
  if (!left || !right || more.length > 0)
    fail('Name two cards: --contrast i/e or --contrast sh/ch');
  const pairs = minimalPairs(lexicon, pool, readCard(left), readCard(right)).slice(0, limit);
  if (json) {
    return JSON.stringify(pairs.map((pair) => pair.map((index) => wordRow(lexicon, index))));
  }
  return pairs.map((pair) => pair.map((index) => lexicon.word(index)).join(' / ')).join('\n');
}
