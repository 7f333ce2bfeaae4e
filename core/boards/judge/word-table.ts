/**
 * Every combination of candidate cards, judged once: what a board search, a
 * board's counts and a run are made from.
 *
 * Method: judgeWord, taken apart. What looks at the beginning and the vowel is
 * done once for each such pair, what looks at the vowel and the ending once for
 * each of those; only the word list, the screen and the few rules that read all
 * three are asked for every combination: some hundred thousand a second, most of
 * it the screen. judgeWord is its plain twin, and tests hold them together.
 */
import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { type LaidSyllable, lettersOf, partsOf, splitVowel } from '../../language/laid-syllable.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import { brokenRules, SPELLING_RULES } from '../../language/spelling-rules.ts';
import { isFirstName } from '../../words/first-names.ts';
import { isSlang } from '../../words/slang.ts';
import { isNearSevere, isSpokenPart } from '../../words/spoken-parts.ts';
import { isUnlistedWord } from '../../words/unlisted.ts';
import type { BuiltWord } from '../shapes/board.ts';
import type { Shape } from '../shapes/shapes.ts';
import { asksForHabits, isTaughtCard } from '../shapes/taught-cards.ts';
import { heardAsWord } from './heard-as-word.ts';
import { judgeWord, realness } from './judge.ts';
import type { JudgeContext } from './judge-context.ts';
import { isAllowed } from './screened-detail.ts';

/** How a combination counts. Only the first three may be shown. */
export const OUTCOMES = [
  'familiar',
  'rare',
  'nonsense',
  'rule',
  'name',
  'sound-alike',
  'said-differently',
  'screened',
  'untaught',
] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** The rarest band whose real words count as familiar to children. */
const FAMILIAR_BAND = 5;

/**
 * Judged combinations. `piles` are card ids; combination (i, j, k …) has index
 * ((i · n₁ + j) · n₂ + k) …; `words` and `outcomes` (indices into OUTCOMES) are
 * by that index.
 */
export interface WordTable {
  readonly shape: Shape;
  readonly piles: readonly (readonly CardId[])[];
  readonly words: readonly string[];
  readonly outcomes: Uint8Array;
}

/** Judges all combinations of these piles. Throws on an unknown card id. */
export function makeWordTable(
  shape: Shape,
  piles: readonly (readonly CardId[])[],
  context: JudgeContext,
): WordTable {
  if (asksForHabits(shape)) return judgeEach(shape, piles, context);
  const cards = piles.map((pile) => pile.map(cardOf));
  const at = shape.piles.findIndex(({ role }) => role === 'vowel');
  const vowels = (cards[at] ?? []).map((card) => vowelOf(card, context));
  const begins = rowsOf(cards.slice(0, at), context);
  const ends = rowsOf(cards.slice(at + 1), context);
  const words: string[] = [];
  const outcomes = new Uint8Array(begins.length * vowels.length * ends.length);

  const endings = vowels.map((vowel) => ends.map((end) => joinEnding(vowel, end)));
  let index = 0;
  for (const begin of begins) {
    for (let v = 0; v < vowels.length; v++) {
      const vowel = vowels[v] as Vowel;
      const broken = breaksRule('beginning', begin.parts, vowel.card, []);
      for (let e = 0; e < ends.length; e++, index++) {
        const end = ends[e] as Side;
        const tail = (endings[v] as Ending[])[e] as Ending;
        const word = begin.letters + tail.letters;
        words.push(word);
        outcomes[index] = CODES[judge(begin, vowel, end, tail, word, broken)];
      }
    }
  }
  return { shape, piles, words, outcomes };

  function judge(
    begin: Side,
    vowel: Vowel,
    end: Side,
    tail: Ending,
    word: string,
    broken: boolean,
  ): Outcome {
    if (!begin.taught || !vowel.taught || !end.taught) return 'untaught';
    const sounds = [...begin.sounds, ...tail.sounds];
    const screened = context.screen.judge(word, sounds);
    if (screened.verdict !== 'clear') return 'screened';
    const { lexicon } = context;
    const found = lexicon.indexOf(word);
    if (found >= 0) {
      const parts = [...begin.parts, vowel.card, ...end.parts];
      if (realness(word, parts, lexicon) !== 'real') return 'said-differently';
      return lexicon.band(found) <= FAMILIAR_BAND ? 'familiar' : 'rare';
    }
    if (isFirstName(word) || isSlang(word)) return 'name';
    if (isUnlistedWord(word)) return isAllowed(screened) ? 'rare' : 'name';
    if (isSpokenPart(word, sounds) || isNearSevere(sounds)) return 'name';
    if (broken || tail.broken) return 'rule';
    if (breaksRule('all', begin.parts, vowel.card, end.parts)) return 'rule';
    for (const heard of tail.heard) {
      if (lexicon.saidAs(begin.said + heard).length > 0) return 'sound-alike';
    }
    return 'nonsense';
  }
}

/** Words of several syllables or of cluster piles: each combination is judged by itself. */
function judgeEach(
  shape: Shape,
  piles: readonly (readonly CardId[])[],
  context: JudgeContext,
): WordTable {
  const count = piles.reduce((size, pile) => size * pile.length, 1);
  const outcomes = new Uint8Array(count);
  const words: string[] = [];
  const table = { shape, piles, words, outcomes };
  for (let index = 0; index < count; index++) {
    const built = judgeWord(cardsAt(table, index), context, shape);
    words.push(built.word);
    outcomes[index] = CODES[outcomeOf(built, context)];
  }
  return table;
}

function outcomeOf(built: BuiltWord, { lexicon }: JudgeContext): Outcome {
  if (built.kind === 'stopped') return built.reason.code;
  if (built.kind === 'nonsense') return 'nonsense';
  const found = lexicon.indexOf(built.word);
  return found >= 0 && lexicon.band(found) <= FAMILIAR_BAND ? 'familiar' : 'rare';
}

/** The card ids of a combination, left to right. */
export function cardsAt({ piles }: WordTable, index: number): readonly CardId[] {
  const ids: CardId[] = [];
  let rest = index;
  for (let pile = piles.length - 1; pile >= 0; pile--) {
    const cards = piles[pile] as readonly string[];
    ids.unshift(cards[rest % cards.length] as CardId);
    rest = Math.floor(rest / cards.length);
  }
  return ids;
}

/** How a combination counts. */
export function outcomeAt({ outcomes }: WordTable, index: number): Outcome {
  return OUTCOMES[outcomes[index] as number] as Outcome;
}

/** Whether a combination may be shown: a real word or good nonsense. */
export function mayShow({ outcomes }: WordTable, index: number): boolean {
  return (outcomes[index] as number) <= CODES.nonsense;
}

const CODES = Object.fromEntries(OUTCOMES.map((outcome, code) => [outcome, code])) as Record<
  Outcome,
  number
>;

/** Cards on one side of the vowel, one of each pile. */
interface Side {
  readonly parts: readonly Correspondence[];
  readonly letters: string;
  readonly sounds: readonly Phoneme[];
  /** The sounds as text, a space after each. */
  readonly said: string;
  readonly taught: boolean;
}

interface Vowel {
  readonly card: Correspondence;
  readonly taught: boolean;
}

/** A vowel with what stands behind it. */
interface Ending {
  readonly letters: string;
  readonly sounds: readonly Phoneme[];
  /** All ways to write these sounds that are heard alike. */
  readonly heard: readonly string[];
  readonly broken: boolean;
}

function vowelOf(card: Correspondence, { taught }: JudgeContext): Vowel {
  return { card, taught: isTaughtCard(card, taught) };
}

function rowsOf(piles: readonly (readonly Correspondence[])[], context: JudgeContext): Side[] {
  let rows: Correspondence[][] = [[]];
  for (const pile of piles) rows = rows.flatMap((row) => pile.map((card) => [...row, card]));
  return rows.map((cards) => {
    const parts = cards.flatMap(partsOf);
    const sounds = parts.flatMap((part) => part.phonemes);
    return {
      parts,
      letters: lettersOf(parts),
      sounds,
      said: sounds.map((sound) => `${sound} `).join(''),
      taught: cards.every((card) => isTaughtCard(card, context.taught)),
    };
  });
}

function joinEnding({ card }: Vowel, end: Side): Ending {
  const [head, tail] = splitVowel(card);
  const sounds = [...card.phonemes, ...end.sounds];
  return {
    letters: head + end.letters + tail,
    sounds,
    heard: heardAsWord(sounds, end.parts.at(-1)?.grapheme ?? card.grapheme),
    broken: breaksRule('ending', [], card, end.parts),
  };
}

const RULES = {
  beginning: SPELLING_RULES.filter(({ reads }) => reads === 'beginning'),
  ending: SPELLING_RULES.filter(({ reads }) => reads === 'ending'),
  all: SPELLING_RULES.filter(({ reads }) => reads === 'all'),
};

function breaksRule(
  reads: keyof typeof RULES,
  onset: readonly Correspondence[],
  vowel: Correspondence,
  coda: readonly Correspondence[],
): boolean {
  const syllable: LaidSyllable = { onset, vowel, coda, opens: true, closes: true };
  return brokenRules(syllable, RULES[reads]).length > 0;
}

function cardOf(id: CardId): Correspondence {
  const card = correspondenceById.get(id);
  if (!card) throw new Error(`there is no card ${id}`);
  return card;
}
