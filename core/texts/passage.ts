/**
 * How much of a text a group can read with what it has been taught, which
 * words it cannot, and why. Names are judged by their letters; numbers are left
 * out; a word that the list does not know is said to be unknown and guessed at.
 *
 * Each distinct word is judged once: the step at which it opens is the latest
 * step among the things it needs, so shares for all steps come from one pass.
 * O(text + distinct words + steps).
 */
import { guessCards } from '../language/guess.ts';
import type { Taught } from '../language/taught.ts';
import { atOnce, type Paced, pacedEach } from '../paced.ts';
import type { Sequence } from '../sequence/sequence.ts';
import { stepOf } from '../sequence/step-of.ts';
import { missing, type Obstacle, obstacles, type ReadAs, readAs } from '../words/decodable.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { needsOf } from '../words/needs.ts';
import { partsOfContraction } from './contractions.ts';
import { stepOfNeeds, stepOfWord } from './step-of-word.ts';
import { type Token, tokensOf } from './tokens.ts';

/** How a word came to be judged. */
export type Source = 'list' | 'built' | 'guess';

/**
 * One thing that keeps a word of a text from being read: what keeps any word; that a contraction is not
 * said as its parts are; that it has letters no card has.
 */
export type Because =
  | Obstacle
  | { readonly kind: 'irregular-word'; readonly word: string }
  | { readonly kind: 'unknown' };

/** One distinct word of the text. */
export interface JudgedWord {
  readonly word: string;
  readonly count: number;
  readonly decodable: boolean;
  /** How it is read; null when it cannot be, or is not in the word list. */
  readonly read: ReadAs | null;
  /** What stands in the way; empty when decodable. */
  readonly because: readonly Because[];
  /** The first step of the sequence at which it can be read; null if none. */
  readonly step: number | null;
  readonly irregular: boolean;
  /** `list`: in the word list; `built`: base and ending are; `guess`: unknown, judged by its letters. */
  readonly source: Source;
  readonly name: boolean;
}

/** The verdict on a text. Counts are of running words; numbers are not counted. */
export interface Passage {
  readonly tokens: readonly Token[];
  readonly words: number;
  readonly distinct: number;
  readonly decodable: number;
  /** decodable / words; 1 for a text without words. */
  readonly share: number;
  /** The words of the text that are read by heart, taught or not, the most common first. */
  readonly irregular: readonly string[];
  readonly blocked: readonly JudgedWord[];
  readonly unknown: readonly JudgedWord[];
  /** The share that can be read once steps 1 to n are taught, for n = 0 to the last step. */
  readonly shareByStep: readonly number[];
  readonly judged: ReadonlyMap<string, JudgedWord>;
}

/** Judges a text. Pure; the text may be of any length. */
export function judgePassage(
  text: string,
  taught: Taught,
  lexicon: Lexicon,
  sequence: Sequence,
): Passage {
  return atOnce(judgePassagePaced(text, taught, lexicon, sequence));
}

/** The same, paced. */
export function* judgePassagePaced(
  text: string,
  taught: Taught,
  lexicon: Lexicon,
  sequence: Sequence,
): Paced<Passage> {
  const tokens = tokensOf(text);
  const counts = new Map<string, Seen>();
  for (const { kind, word, capital } of tokens) {
    if (kind !== 'word') continue;
    const seen = counts.get(word);
    if (seen) {
      seen.count += 1;
      if (capital) seen.capitals += 1;
    } else {
      counts.set(word, { count: 1, capitals: capital ? 1 : 0 });
    }
  }
  const judged = new Map<string, JudgedWord>();
  const judgeOne = ([word, { count, capitals }]: readonly [string, Seen]) => {
    judged.set(word, judge(word, count, capitals === count, taught, lexicon, sequence));
  };
  yield* pacedEach([...counts], judgeOne, WORDS_AT_A_TIME);
  const all = [...judged.values()].sort((a, b) => b.count - a.count || (a.word < b.word ? -1 : 1));
  const words = all.reduce((sum, { count }) => sum + count, 0);
  const decodable = all.reduce((sum, { count, decodable: yes }) => sum + (yes ? count : 0), 0);
  return {
    tokens,
    words,
    distinct: all.length,
    decodable,
    share: words === 0 ? 1 : decodable / words,
    irregular: all.filter(({ irregular }) => irregular).map(({ word }) => word),
    blocked: all.filter((word) => !word.decodable),
    unknown: all.filter(({ source }) => source === 'guess'),
    shareByStep: sharesByStep(all, words, sequence.steps.length),
    judged,
  };
}

/** How often a word stands in the text, and how often with a capital that no sentence asks for. */
interface Seen {
  count: number;
  capitals: number;
}

/** Words that take a few milliseconds. */
const WORDS_AT_A_TIME = 200;

/** The first step at which at least `share` of the running words can be read, or null. */
export function stepForShare(passage: Passage, share: number): number | null {
  const step = passage.shareByStep.findIndex((reached) => reached >= share);
  return step < 0 ? null : step;
}

function judge(
  word: string,
  count: number,
  name: boolean,
  taught: Taught,
  lexicon: Lexicon,
  sequence: Sequence,
): JudgedWord {
  const index = lexicon.indexOf(word);
  if (index >= 0)
    return { ...fromList(index, taught, lexicon, sequence), word, count, name: false };
  const built = partsOfContraction(word, lexicon);
  if (built) {
    const base = fromList(built.base, taught, lexicon, sequence);
    const irregular = base.irregular || built.irregular;
    const known = taught.irregularWords.has(word);
    const wordStep = stepOf(sequence, { kind: 'word', word });
    return {
      word,
      count,
      decodable: known || (base.decodable && !built.irregular),
      read: known ? { kind: 'by-heart' } : built.irregular ? null : base.read,
      because: known
        ? []
        : [
            ...base.because,
            ...(built.irregular ? [{ kind: 'irregular-word' as const, word }] : []),
          ],
      step: wordStep ?? (built.irregular ? null : base.step),
      irregular,
      source: 'built',
      name: false,
    };
  }
  return { ...fromLetters(word, taught, sequence), word, count, name };
}

type Verdict = Pick<JudgedWord, 'decodable' | 'read' | 'because' | 'step' | 'irregular' | 'source'>;

function fromList(index: number, taught: Taught, lexicon: Lexicon, sequence: Sequence): Verdict {
  const read = readAs(index, lexicon, taught);
  return {
    decodable: read !== null,
    read,
    because: read ? [] : obstacles(index, lexicon, taught),
    step: stepOfWord(index, lexicon, sequence),
    irregular: !lexicon.isRegular(index),
    source: 'list',
  };
}

function fromLetters(word: string, taught: Taught, sequence: Sequence): Verdict {
  const ids = guessCards(word.replaceAll("'", ''));
  if (!ids) {
    return {
      decodable: false,
      read: null,
      because: [{ kind: 'unknown' }],
      step: null,
      irregular: false,
      source: 'guess',
    };
  }
  const needs = needsOf(ids, 1);
  const because = missing(needs, taught);
  return {
    decodable: because.length === 0,
    read: because.length === 0 ? { kind: 'cards' } : null,
    because,
    step: stepOfNeeds(needs, sequence),
    irregular: false,
    source: 'guess',
  };
}

function sharesByStep(all: readonly JudgedWord[], words: number, steps: number): readonly number[] {
  const opened = new Array<number>(steps + 1).fill(0);
  for (const { step, count } of all) {
    if (step !== null) opened[step] = (opened[step] as number) + count;
  }
  let sum = 0;
  return opened.map((count) => {
    sum += count;
    return words === 0 ? 1 : sum / words;
  });
}
