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
import type { Sequence } from '../sequence/sequence.ts';
import { stepOf } from '../sequence/step-of.ts';
import { type Obstacle, obstacles } from '../words/decodable.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { type Needs, needsOf } from '../words/needs.ts';
import { partsOfContraction } from './contractions.ts';
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
  /** Words of the text that are read by heart, taught or not, commonest in the text first. */
  readonly irregular: readonly string[];
  readonly blocked: readonly JudgedWord[];
  readonly unknown: readonly JudgedWord[];
  /** Share readable once steps 1 to n are taught, for n = 0 to the last step. */
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
  const tokens = tokensOf(text);
  const counts = new Map<string, { count: number; capitals: number }>();
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
  for (const [word, { count, capitals }] of counts) {
    judged.set(word, judge(word, count, capitals === count, taught, lexicon, sequence));
  }
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

type Verdict = Pick<JudgedWord, 'decodable' | 'because' | 'step' | 'irregular' | 'source'>;

function fromList(index: number, taught: Taught, lexicon: Lexicon, sequence: Sequence): Verdict {
  const word = lexicon.word(index);
  const irregular = !lexicon.isRegular(index);
  const needs = needsOf(lexicon.cardIds(index), lexicon.syllableCount(index));
  const byHeart = stepOf(sequence, { kind: 'word', word });
  const byCards = irregular ? null : stepOfNeeds(needs, sequence);
  const because = taught.irregularWords.has(word)
    ? []
    : irregular
      ? obstaclesOf(index, taught, lexicon)
      : missing(needs, taught);
  return {
    decodable: because.length === 0,
    because,
    step: earliest(byHeart, byCards),
    irregular,
    source: 'list',
  };
}

/** Why an irregular word cannot be read; only for these is the whole reading made. */
function obstaclesOf(index: number, taught: Taught, lexicon: Lexicon): readonly Obstacle[] {
  const [reading] = lexicon.readings(index);
  if (!reading) throw new Error(`word ${index} has no reading`);
  return obstacles(reading, taught);
}

function missing({ ids, habits }: Needs, taught: Taught): readonly Obstacle[] {
  return [
    ...ids
      .filter((id) => !taught.correspondences.has(id))
      .map((id): Obstacle => ({ kind: 'card', id })),
    ...habits
      .filter((habit) => !taught.habits.has(habit))
      .map((habit): Obstacle => ({ kind: 'habit', habit })),
  ];
}

function fromLetters(word: string, taught: Taught, sequence: Sequence): Verdict {
  const ids = guessCards(word.replaceAll("'", ''));
  if (!ids) {
    return {
      decodable: false,
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
    because,
    step: stepOfNeeds(needs, sequence),
    irregular: false,
    source: 'guess',
  };
}

function stepOfNeeds({ ids, habits }: Needs, sequence: Sequence): number | null {
  let latest = 0;
  for (const id of ids) {
    const step = stepOf(sequence, { kind: 'card', id });
    if (step === null) return null;
    latest = Math.max(latest, step);
  }
  for (const habit of habits) {
    const step = stepOf(sequence, { kind: 'habit', habit });
    if (step === null) return null;
    latest = Math.max(latest, step);
  }
  return latest;
}

function earliest(left: number | null, right: number | null): number | null {
  if (left === null) return right;
  return right === null ? left : Math.min(left, right);
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
