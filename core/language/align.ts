/**
 * Splits a word into cards, given how it is said.
 *
 * Method: the cheapest path through (letters × sounds), by dynamic programming.
 * A step is one row of the table; a split a_e is one step together with the
 * consonant it encloses. Costs are set by hand: a row's tier, more where its
 * context fails, far more for a letter that no row explains, so that *said*
 * costs an irregular row and never a guess. Morpheme edges are given: only
 * there may a final e belong to its consonant, or an ending begin.
 * O(letters × sounds × rows per grapheme); about 40 µs a word.
 *
 * Re-estimating the costs from data (EM over the dictionary) was tried and
 * rejected: it learns the dictionary's habits, among them that *said* is fine.
 */
import { assembleReading } from './assemble.ts';
import { makeId } from './correspondence.ts';
import { ROWS } from './correspondences.ts';
import type { Phoneme } from './phonemes.ts';
import { type Morphemes, ONE_PART, type Pronunciation, type Stress } from './pronunciation.ts';
import type { Reading } from './reading.ts';
import type { Row } from './row.ts';
import { type PlacedCard, syllableBreaks } from './syllables.ts';

const TIER_COST = [0, 1, 2, 4, 8] as const;
/** A vowel with its r is one card wherever it can be. */
const R_TIER_COST = [0, 1, 1.5, 1.8, 8] as const;
const CONTEXT_COST = 3;
const EDGE_COST = 5;
const SILENT_COST = 2;
const UNMARKED_ENDING_COST = 3;
const FALLBACK_COST = 60;

/**
 * The reading of `word` (lower-case a–z) under `pronunciation`. Always
 * succeeds; `fallback` is true when letters or sounds were left over.
 */
export function align(
  word: string,
  pronunciation: Pronunciation,
  morphemes: Morphemes = ONE_PART,
): Reading {
  const steps = cheapestPath(word, pronunciation, morphemes);
  const placed = steps.map(
    ({ row, letters, stress }): PlacedCard => ({ card: row, letters, stress }),
  );
  const breaks = syllableBreaks(word, placed, morphemes);
  return assembleReading(
    word,
    placed.map(({ card }) => card.id),
    breaks,
  );
}

interface Step {
  readonly row: Row;
  readonly letters: readonly number[];
  readonly stress: Stress;
}

interface Node {
  cost: number;
  readonly from: number;
  readonly steps: readonly Step[];
}

function cheapestPath(word: string, spoken: Pronunciation, morphemes: Morphemes): Step[] {
  const width = spoken.sounds.length + 1;
  const nodes: (Node | undefined)[] = [];
  nodes[0] = { cost: 0, from: -1, steps: [] };
  const goal = word.length * width + width - 1;
  for (let at = 0; at < goal; at++) {
    const node = nodes[at];
    if (!node) continue;
    const letter = Math.floor(at / width);
    const sound = at % width;
    for (const move of moves(word, spoken, morphemes, letter, sound)) {
      const to = move.letter * width + move.sound;
      const cost = node.cost + move.cost;
      const known = nodes[to];
      if (!known || cost < known.cost) nodes[to] = { cost, from: at, steps: move.steps };
    }
  }
  const path: Step[][] = [];
  for (let at = goal; at > 0; at = (nodes[at] as Node).from)
    path.push([...(nodes[at] as Node).steps]);
  return path.reverse().flat();
}

interface Move {
  readonly letter: number;
  readonly sound: number;
  readonly cost: number;
  readonly steps: readonly Step[];
}

function* moves(
  word: string,
  spoken: Pronunciation,
  morphemes: Morphemes,
  letter: number,
  sound: number,
): Generator<Move> {
  for (const found of rowsAt(word, spoken, morphemes, letter, sound)) {
    if (found.row.grapheme.includes('_')) yield* splitMoves(word, spoken, morphemes, found);
    else
      yield {
        letter: found.nextLetter,
        sound: found.nextSound,
        cost: found.cost,
        steps: [found.step],
      };
  }
  yield* fallbackMoves(word, spoken, letter, sound);
}

interface Found {
  readonly row: Row;
  readonly step: Step;
  readonly nextLetter: number;
  readonly nextSound: number;
  readonly cost: number;
}

function* rowsAt(
  word: string,
  spoken: Pronunciation,
  morphemes: Morphemes,
  letter: number,
  sound: number,
): Generator<Found> {
  for (let length = 1; length <= LONGEST && letter + length <= word.length; length++) {
    const rows = rowsByLetters.get(word.slice(letter, letter + length));
    if (!rows) continue;
    for (const row of rows) {
      const heard = soundsHeard(row, spoken, word, letter, length, sound);
      if (heard < 0) continue;
      const nextSound = sound + heard;
      const cost = rowCost(row, word, spoken, morphemes, letter, length, nextSound);
      if (cost === Infinity) continue;
      const letters = Array.from({ length }, (_, offset) => letter + offset);
      const stress = strongest(spoken.stress.slice(sound, nextSound));
      yield {
        row,
        step: { row, letters, stress },
        nextLetter: letter + length,
        nextSound,
        cost,
      };
    }
  }
}

/** The stress of the card's vowel; -1 when it has none. */
function strongest(stresses: readonly Stress[]): Stress {
  return stresses.find((stress) => stress >= 0) ?? -1;
}

/** How many sounds from `sound` on the row takes, or -1 if it says something else. */
function soundsHeard(
  row: Row,
  spoken: Pronunciation,
  word: string,
  letter: number,
  length: number,
  sound: number,
): number {
  for (const phonemes of row.accepts) {
    if (matches(phonemes, spoken.sounds, sound)) return phonemes.length;
  }
  const { weak } = row.context;
  if (weak && spoken.sounds[sound] === weak.sounds && spoken.stress[sound] === 0) {
    const before = weak.before?.test(word.slice(0, letter)) ?? true;
    const after = weak.after?.test(word.slice(letter + length)) ?? true;
    if (before && after) return 1;
  }
  return -1;
}

function matches(wanted: readonly Phoneme[], sounds: readonly Phoneme[], at: number): boolean {
  return wanted.every((phoneme, offset) => sounds[at + offset] === phoneme);
}

function rowCost(
  row: Row,
  word: string,
  spoken: Pronunciation,
  morphemes: Morphemes,
  letter: number,
  length: number,
  nextSound: number,
): number {
  const next = letter + length;
  let cost: number = row.kind === 'r-vowel' ? R_TIER_COST[row.tier] : TIER_COST[row.tier];
  if (row.phonemes.length === 0) cost += SILENT_COST;
  if (row.kind === 'consonant-e' && !isBaseEnd(word, morphemes, next)) {
    if (!row.context.inside?.test(word.slice(next))) return Infinity;
  }
  if (row.grapheme === 'le' && !isBaseEnd(word, morphemes, next)) return Infinity;
  if (row.kind === 'ending') {
    if (next !== word.length) return Infinity;
    if (morphemes.suffixAt !== letter) {
      if (row.phonemes.length > 1) return Infinity;
      cost += UNMARKED_ENDING_COST;
    }
  }
  const { before, after, only } = row.context;
  const fits =
    (before?.test(word.slice(0, letter)) ?? true) && (after?.test(word.slice(next)) ?? true);
  if (!fits) {
    if (only) return Infinity;
    cost += CONTEXT_COST;
  }
  if (row.kind === 'r-vowel' || row.kind === 'double') {
    if (crossesEdge(morphemes, letter, next)) cost += EDGE_COST;
  }
  if (
    row.kind === 'r-vowel' &&
    (spoken.stress[nextSound] ?? -1) > 0 &&
    !morphemes.breaks.includes(next)
  ) {
    cost += EDGE_COST;
  }
  return cost;
}

function crossesEdge({ breaks }: Morphemes, from: number, to: number): boolean {
  return breaks.some((at) => at > from && at < to);
}

function isBaseEnd(word: string, { breaks }: Morphemes, at: number): boolean {
  return at === word.length || breaks.includes(at);
}

/** A split vowel, the one consonant (or s-t) it encloses, and its e at the end of a base. */
function* splitMoves(
  word: string,
  spoken: Pronunciation,
  morphemes: Morphemes,
  vowel: Found,
): Generator<Move> {
  for (const first of rowsAt(word, spoken, morphemes, vowel.nextLetter, vowel.nextSound)) {
    if (!isEnclosed(first.row)) continue;
    yield* closeSplit(word, morphemes, vowel, [first]);
    if (first.row.grapheme !== 's') continue;
    for (const second of rowsAt(word, spoken, morphemes, first.nextLetter, first.nextSound)) {
      if (second.row.id === 't=T') yield* closeSplit(word, morphemes, vowel, [first, second]);
    }
  }
}

function isEnclosed(row: Row): boolean {
  if (row.kind === 'consonant') return row.grapheme !== 'u' && row.grapheme !== 'i';
  return row.grapheme === 'th' || row.grapheme === 'ch' || row.grapheme === 'ph';
}

function* closeSplit(
  word: string,
  morphemes: Morphemes,
  vowel: Found,
  inside: readonly Found[],
): Generator<Move> {
  const last = inside[inside.length - 1] as Found;
  const e = last.nextLetter;
  if (word[e] !== 'e' || !isBaseEnd(word, morphemes, e + 1)) return;
  const split: Step = { ...vowel.step, letters: [...vowel.step.letters, e] };
  yield {
    letter: e + 1,
    sound: last.nextSound,
    cost: vowel.cost + inside.reduce((sum, found) => sum + found.cost, 0),
    steps: [split, ...inside.map((found) => found.step)],
  };
}

/** A letter that no row explains, taking none, one or two sounds. */
function* fallbackMoves(
  word: string,
  spoken: Pronunciation,
  letter: number,
  sound: number,
): Generator<Move> {
  if (letter >= word.length) return;
  const last = letter === word.length - 1;
  const most = last ? spoken.sounds.length - sound : Math.min(2, spoken.sounds.length - sound);
  for (let count = 0; count <= most; count++) {
    const phonemes = spoken.sounds.slice(sound, sound + count);
    yield {
      letter: letter + 1,
      sound: sound + count,
      cost: FALLBACK_COST + 10 * count,
      steps: [guess(word[letter] as string, letter, phonemes)],
    };
  }
}

function guess(grapheme: string, letter: number, phonemes: readonly Phoneme[]): Step {
  const id = `${grapheme}=?${makeId('', phonemes).slice(1).replace('-', '')}`;
  const row: Row = {
    id,
    grapheme,
    phonemes,
    kind: 'other-vowel',
    tier: 4,
    places: [],
    keyword: null,
    parts: [],
    context: {},
    accepts: [phonemes],
  };
  return { row, letters: [letter], stress: 0 };
}

const rowsByLetters: ReadonlyMap<string, readonly Row[]> = groupByFirstLetters();
const LONGEST = Math.max(...ROWS.map(({ grapheme }) => grapheme.replace('_e', '').length));

function groupByFirstLetters(): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of ROWS) {
    const letters = row.grapheme.replace('_e', '');
    const group = groups.get(letters);
    if (group) group.push(row);
    else groups.set(letters, [row]);
  }
  return groups;
}
