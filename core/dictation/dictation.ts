/**
 * Dictation: words and sentences that ask only for what was taught, the newest
 * items first. Words come from the word list, sentences from the list written
 * for this project. Chance is the seed's: one request, one dictation.
 */
import type { CardId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import type { Item, Sequence } from '../sequence/sequence.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { WordScreen } from '../words/screen.ts';
import { firstOf } from './first-of.ts';
import { isFitForClass } from './fitness.ts';
import { holdsCard, isWritable, type SentenceWord, sentenceWords, shows } from './needs.ts';
import { type Dictated, dictationWords } from './words.ts';

/** What a dictation is for. `newest` are the items just taught, one or several steps of them. */
export interface DictationSpec {
  readonly taught: Taught;
  readonly newest: readonly Item[];
  /** Cards that spelling showed to need practice, the most wanted first. */
  readonly practice?: readonly CardId[];
  /** Cards that no word may hold, a cluster as its parts in a row either. */
  readonly avoid?: readonly CardId[];
  readonly seed: number;
  /** How many words (6 when left out) and sentences (2). */
  readonly words?: number;
  readonly sentences?: number;
}

/** What a dictation is made from. */
export interface DictationSources {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
  readonly sentences: readonly string[];
}

/**
 * Words, shorter ones first, and sentences, those with the newest items first. Where spelling papers
 * showed a need, every second sentence practices what was missed. Fewer than asked where too little was taught; `shortfall` then says so in a
 * teacher's words.
 */
export interface Dictation {
  readonly words: readonly Dictated[];
  readonly sentences: readonly Dictated[];
  readonly shortfall: string | null;
}

/** The dictation of a request. */
export function dictationFor(spec: DictationSpec, sources: DictationSources): Dictation {
  const {
    taught,
    newest,
    practice,
    avoid = [],
    seed,
    words: wordCount = 6,
    sentences: sentenceCount = 2,
  } = spec;
  const random = makeRandom(seed);
  const words = dictationWords(
    { taught, newest, avoid, count: wordCount, ...(practice ? { practice } : {}) },
    sources,
    random,
  );
  const sentences = chooseSentences(
    { taught, newest, practice: practice ?? [], avoid, count: sentenceCount },
    sources,
    random,
  );
  const shortfall = shortfallOf(words.length < wordCount, sentences.length < sentenceCount);
  return { words, sentences, shortfall };
}

/** A dictation without the words and sentences that the screen clears no longer. */
export function fitDictation(
  dictation: Dictation,
  { lexicon, screen }: Pick<DictationSources, 'lexicon' | 'screen'>,
): Dictation {
  const isFit = ({ text }: Dictated) =>
    sentenceWords(text, lexicon).every(({ word }) => isFitForClass(word, lexicon, screen));
  return {
    ...dictation,
    words: dictation.words.filter(isFit),
    sentences: dictation.sentences.filter(isFit),
  };
}

/** The items of the last `back` steps up to `step`, for `newest`. */
export function newestItems(sequence: Sequence, step: number, back = 1): readonly Item[] {
  return sequence.steps
    .filter(({ number }) => number <= step && number > step - back)
    .flatMap(({ items }) => items);
}

/** How many of the best sentences chance picks from, for each one asked. */
const CHOICE = 3;
/** How many of the latest sentences fill up where the newest items have too few. */
const LATEST = 24;

interface SentencesSpec {
  readonly taught: Taught;
  readonly newest: readonly Item[];
  readonly practice: readonly CardId[];
  readonly avoid: readonly CardId[];
  readonly count: number;
}

function chooseSentences(
  { taught, newest, practice, avoid, count }: SentencesSpec,
  { lexicon, screen, sentences }: DictationSources,
  random: Random,
): readonly Dictated[] {
  const usable = sentences
    .map((text) => ({ text, words: sentenceWords(text, lexicon) }))
    .filter(({ words }) =>
      words.every(
        (word) => isWritable(word, taught) && !avoid.some((card) => holdsCard(word.cardIds, card)),
      ),
    )
    .map(({ text, words }) => ({
      text,
      words,
      share: shareOf(words, newest),
      practices: practice.find((card) => words.some(({ cardIds }) => holdsCard(cardIds, card))),
    }));
  const isFit = ({ words }: { readonly words: readonly SentenceWord[] }) =>
    words.every(({ word }) => isFitForClass(word, lexicon, screen));
  const withNew = shuffled(usable, random)
    .filter(({ share }) => share > 0)
    .sort((left, right) => right.share - left.share);
  const best = firstOf(withNew, count * CHOICE, isFit);
  const practicing = usable.filter(({ practices }) => practices !== undefined).reverse();
  const forNewest = practicing.length > 0 ? Math.ceil(count / 2) : count;
  const chosen = shuffled(best, random).slice(0, forNewest);
  const toPractice = new Set(practicing.filter((sentence) => !chosen.includes(sentence)));
  const add = (from: typeof usable, many: number) => {
    if (chosen.length === count) return;
    const more = firstOf(
      from.filter((sentence) => !chosen.includes(sentence)),
      many,
      isFit,
    );
    chosen.push(...shuffled(more, random).slice(0, count - chosen.length));
  };
  add(practicing, count * CHOICE);
  add(best, count * CHOICE);
  add(usable.filter(({ share }) => share === 0).reverse(), LATEST);
  return chosen.map((sentence) => ({
    text: sentence.text,
    isNew: sentence.share > 0,
    ...(sentence.practices !== undefined && toPractice.has(sentence)
      ? { practices: sentence.practices }
      : {}),
  }));
}

/** The share of a sentence's words that show a newest item. */
function shareOf(words: readonly SentenceWord[], newest: readonly Item[]): number {
  const isNew = (word: SentenceWord) => newest.some((item) => shows(word, item));
  return words.filter(isNew).length / words.length;
}

function shortfallOf(fewWords: boolean, fewSentences: boolean): string | null {
  if (fewWords && fewSentences)
    return 'Few words and sentences can be written with what was taught so far.';
  if (fewWords) return 'Few words can be written with what was taught so far.';
  return fewSentences ? 'Few sentences can be written with what was taught so far.' : null;
}
