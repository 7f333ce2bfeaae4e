import { graphemeOf } from '../../language/card-id.ts';
import type { SyllableType } from '../../language/reading.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { LongWord } from './long-words.ts';
import type { PileSpec, Shape } from './shapes.ts';

/** A pile of syllable cards; which syllables come to it, the words of the list say. */
const syllable: PileSpec = { role: 'syllable', takes: () => false };

/** Shapes whose cards are whole syllables, or a prefix, a base and a suffix. */
export const BEAT_SHAPES: readonly Shape[] = [
  {
    id: 'beats',
    title: 'Two-beat words',
    example: 'nap·kin, ti·ger, jump·ing',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'beats-closed',
    title: 'Two-beat words, both closed',
    example: 'nap·kin, rab·bit',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'beats-open',
    title: 'Two-beat words, the first open',
    example: 'ti·ger, ro·bot',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'beats-le',
    title: 'Two-beat words in -le',
    example: 'ta·ble, lit·tle',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'prefixed',
    title: 'A prefix and a base',
    example: 're·play, un·kind',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'suffixed',
    title: 'A base and a suffix',
    example: 'jump·ing, help·ful',
    form: 'beats',
    piles: [syllable, syllable],
  },
  {
    id: 'affixes',
    title: 'Prefix, base and suffix',
    example: 'un·help·ful',
    form: 'beats',
    piles: [syllable, syllable, syllable],
  },
];

/**
 * Whether a longer word lies on boards of a shape. Boards of plain syllables leave out what is built of
 * prefixes, suffixes and endings, which have boards of their own: *extract* and *pockets* are no first
 * words of two beats.
 */
export function belongsTo(shape: Shape, word: LongWord, lexicon: Lexicon): boolean {
  const { types, syllables } = word;
  if (syllables.length !== shape.piles.length) return false;
  const letters = syllables.map(graphemeOf);
  const [first = '', second = ''] = letters;
  const isWord = (text: string): boolean => lexicon.indexOf(text) >= 0;
  const isBase = (text: string): boolean =>
    text.length > 2 && isWord(text) && lexicon.band(lexicon.indexOf(text)) <= KNOWN_BASE;
  const isSuffixed = SUFFIXES.has(letters.at(-1) as string);
  if (shape.id === 'affixes') return PREFIXES.has(first) && isBase(second) && isSuffixed;
  if (shape.id === 'prefixed') {
    return PREFIXES.has(first) && isBase(second) && !isInflected(word.word, isWord);
  }
  if (shape.id === 'suffixed') return isSuffixed && isBase(first);
  if (PREFIXES.has(first) || LATIN.has(first)) return false;
  if ((isSuffixed && isWord(first)) || isInflected(word.word, isWord)) return false;
  return (TYPES[shape.id] ?? (() => true))(types);
}

/** Bases are words of bands up to this one, so that a child knows them: kind, not tract. */
const KNOWN_BASE = 4;

/** Whether a word is another with -s, -ed, -ing or -est. */
function isInflected(word: string, isWord: (text: string) => boolean): boolean {
  if (word.endsWith('s') && isWord(word.slice(0, -1))) return true;
  const ending = /(ed|ing|est)$/.exec(word)?.[0];
  if (!ending) return false;
  const base = word.slice(0, -ending.length);
  const undoubled = base.replace(/([a-z])\1$/, '$1');
  return [base, `${base}e`, undoubled].some((text) => text.length > 2 && isWord(text));
}

const TYPES: Readonly<Record<string, (types: readonly SyllableType[]) => boolean>> = {
  'beats-closed': (types) => types.every((type) => type === 'closed'),
  'beats-open': ([first]) => first === 'open',
  'beats-le': ([, last]) => last === 'cle',
};

/** Prefixes and suffixes of one beat that are taught as such (common practice, no source). */
const PREFIXES: ReadonlySet<string> = new Set(
  'de dis en ex fore im in mid mis non out pre re sub trans un'.split(' '),
);
const SUFFIXES: ReadonlySet<string> = new Set(
  'ed en er es est ful ing ish ive less ly ment ness or sion some tion ward y'.split(' '),
);
/** First syllables of words from Latin whose second is no word children know: con·tain. */
const LATIN: ReadonlySet<string> = new Set('ab ad com con ob per pro sup sus'.split(' '));
