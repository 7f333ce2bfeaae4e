/**
 * Splits a word into cards, given how it is said.
 *
 * Method: the cheapest path through (letters × sounds), by dynamic programming.
 * A step is one row of the table; a split a_e is one step together with the
 * consonant it encloses. Costs are set by hand: a row's tier, more where its
 * context fails. A letter that no row explains is guessed only when there is no
 * other path, so that *said* costs an irregular row and never a guess. Morpheme edges are given: only
 * there may a final e belong to its consonant, or an ending begin.
 * O(letters × sounds × rows per grapheme); rows are tried once per letter.
 *
 * Re-estimating the costs from data (EM over the dictionary) was tried and
 * rejected: it learns the dictionary's habits, among them that *said* is fine.
 */
import { assembleReading } from './assemble.ts';
import { makeGuessedId } from './card-id.ts';
import { ROWS } from './correspondences.ts';
import type { Phoneme } from './phonemes.ts';
import { type Morphemes, ONE_PART, type Pronunciation, type Stress } from './pronunciation.ts';
import type { Reading } from './reading.ts';
import type { TableRow, Variant } from './row.ts';
import { type PlacedCard, syllableBreaks } from './syllables.ts';

const TIER_COST = [0, 1, 2, 4, 8] as const;
/** A vowel with its r is one card wherever it can be. */
const R_TIER_COST = [0, 1, 1.5, 1.8, 8] as const;
const CONTEXT_COST = 3;
const EDGE_COST = 5;
const SILENT_COST = 2;
const UNMARKED_ENDING_COST = 3;
const FALLBACK_COST = 60;
const FALLBACK_SOUND_COST = 10;

/**
 * The reading of `word` (lower-case a–z) under `pronunciation`. Always
 * succeeds; `fallback` is true when letters or sounds were left over.
 */
export function align(
  word: string,
  pronunciation: Pronunciation,
  morphemes: Morphemes = ONE_PART,
): Reading {
  const placed =
    cheapestPath(word, pronunciation, morphemes, false) ??
    (cheapestPath(word, pronunciation, morphemes, true) as PlacedCard[]);
  const breaks = syllableBreaks(word, placed, morphemes);
  return assembleReading(
    word,
    placed.map(({ card }) => card.id),
    breaks,
  );
}

/** A row that fits the letters at one position, with what it costs there. */
interface Candidate {
  readonly row: TableRow;
  readonly letter: number;
  readonly next: number;
  readonly cost: number;
  readonly split: boolean;
}

/** A candidate with the sounds it takes. */
interface Step {
  readonly candidate: Candidate;
  readonly from: number;
  readonly to: number;
  readonly cost: number;
}

interface Node {
  readonly cost: number;
  readonly from: number;
  readonly steps: readonly Step[];
  readonly splitE: number;
}

/** The path, or null when there is none without `guessing` what a letter stands for. */
function cheapestPath(
  word: string,
  spoken: Pronunciation,
  morphemes: Morphemes,
  guessing: boolean,
): PlacedCard[] | null {
  const width = spoken.sounds.length + 1;
  const nodes: (Node | undefined)[] = new Array(word.length * width + width);
  nodes[0] = { cost: 0, from: -1, steps: [], splitE: -1 };
  const candidates = Array.from({ length: word.length }, (_, letter) =>
    candidatesAt(word, morphemes, letter),
  );
  const take = (at: number, letter: number, sound: number, steps: readonly Step[], splitE = -1) => {
    const to = letter * width + sound;
    let cost = (nodes[at] as Node).cost;
    for (const step of steps) cost += step.cost;
    const known = nodes[to];
    if (!known || cost < known.cost) nodes[to] = { cost, from: at, steps, splitE };
  };
  const context: Search = { word, spoken, morphemes, candidates };
  const goal = word.length * width + width - 1;
  for (let at = 0; at < word.length * width; at++) {
    if (!nodes[at]) continue;
    const letter = Math.floor(at / width);
    const sound = at % width;
    for (const candidate of candidates[letter] as readonly Candidate[]) {
      const step = hear(candidate, context, sound);
      if (!step) continue;
      if (candidate.split)
        closeSplits(context, step, (steps, e, to) => take(at, e + 1, to, steps, e));
      else take(at, candidate.next, step.to, [step]);
    }
    if (!guessing) continue;
    for (const step of guesses(context, letter, sound)) take(at, letter + 1, step.to, [step]);
  }
  if (!nodes[goal]) return null;
  const path: PlacedCard[][] = [];
  for (let at = goal; at > 0; ) {
    const node = nodes[at] as Node;
    path.push(node.steps.map((step) => placedCard(step, node.splitE, spoken)));
    at = node.from;
  }
  return path.reverse().flat();
}

interface Search {
  readonly word: string;
  readonly spoken: Pronunciation;
  readonly morphemes: Morphemes;
  readonly candidates: readonly (readonly Candidate[])[];
}

function placedCard(
  { candidate, from, to }: Step,
  splitE: number,
  spoken: Pronunciation,
): PlacedCard {
  const { row, letter, next, split } = candidate;
  const letters = split
    ? [letter, splitE]
    : Array.from({ length: next - letter }, (_, offset) => letter + offset);
  const stress: Stress = spoken.stress.slice(from, to).find((value) => value >= 0) ?? -1;
  return { card: row, letters, stress };
}

function candidatesAt(word: string, morphemes: Morphemes, letter: number): Candidate[] {
  const found: Candidate[] = [];
  for (let next = letter + 1; next <= Math.min(word.length, letter + LONGEST); next++) {
    for (const row of rowsByLetters.get(word.slice(letter, next)) ?? []) {
      const cost = costOfPlace(row, word, morphemes, letter, next);
      if (cost < Infinity) {
        found.push({ row, letter, next, cost, split: row.grapheme.includes('_') });
      }
    }
  }
  return found;
}

/** What a row costs over these letters, before its sounds are heard. */
function costOfPlace(
  row: TableRow,
  word: string,
  morphemes: Morphemes,
  letter: number,
  next: number,
): number {
  let cost: number = (row.kind === 'r-vowel' ? R_TIER_COST : TIER_COST)[row.tier];
  const { before, after, only, inside } = row.context;
  if (row.kind === 'consonant-e' || row.grapheme === 'le') {
    if (!isBaseEnd(word, morphemes, next) && !inside?.test(word.slice(next))) return Infinity;
  }
  if (row.kind === 'ending') {
    if (next !== word.length) return Infinity;
    if (morphemes.suffixAt !== letter) {
      if (row.phonemes.length > 1) return Infinity;
      cost += UNMARKED_ENDING_COST;
    }
  }
  if (row.phonemes.length === 0) cost += SILENT_COST;
  if (before?.test(word.slice(0, letter)) === false || after?.test(word.slice(next)) === false) {
    if (only) return Infinity;
    cost += CONTEXT_COST;
  }
  if (row.kind === 'r-vowel' || row.kind === 'double') {
    if (morphemes.breaks.some((at) => at > letter && at < next)) cost += EDGE_COST;
  }
  return cost;
}

function isBaseEnd(word: string, { breaks }: Morphemes, at: number): boolean {
  return at === word.length || breaks.includes(at);
}

/** The candidate with the sounds from `sound` on that it says, or null if it says others. */
function hear(candidate: Candidate, search: Search, sound: number): Step | null {
  const { row, next } = candidate;
  const { word, spoken, morphemes } = search;
  const heard = soundsHeard(candidate, search, sound);
  if (heard < 0) return null;
  const to = sound + heard;
  const opensStressed =
    row.kind === 'r-vowel' &&
    (spoken.stress[to] ?? -1) > 0 &&
    !morphemes.breaks.includes(next) &&
    !/^(at(e|ion|ing|or)|er|est)/.test(word.slice(next));
  return { candidate, from: sound, to, cost: candidate.cost + (opensStressed ? EDGE_COST : 0) };
}

function soundsHeard({ row, letter, next }: Candidate, search: Search, sound: number): number {
  const { spoken, word } = search;
  for (const phonemes of row.accepts) {
    if (matches(phonemes, spoken.sounds, sound)) return phonemes.length;
  }
  for (const variant of row.variants) {
    if (!matches(variant.phonemes, spoken.sounds, sound)) continue;
    if (variant.unstressed && spoken.stress[sound] === 1) continue;
    if (fitsVariant(variant, word, letter, next)) return variant.phonemes.length;
  }
  return -1;
}

function fitsVariant({ before, after }: Variant, word: string, letter: number, next: number) {
  return before?.test(word.slice(0, letter)) !== false && after?.test(word.slice(next)) !== false;
}

function matches(wanted: readonly Phoneme[], sounds: readonly Phoneme[], at: number): boolean {
  for (let offset = 0; offset < wanted.length; offset++) {
    if (sounds[at + offset] !== wanted[offset]) return false;
  }
  return true;
}

/** Calls back for each way to end a split vowel: one consonant (or s-t), then e at a base's end. */
function closeSplits(
  search: Search,
  vowel: Step,
  found: (steps: readonly Step[], e: number, sound: number) => void,
): void {
  const { word, morphemes, candidates } = search;
  const close = (steps: readonly Step[], last: Step) => {
    const e = last.candidate.next;
    if (word[e] === 'e' && isBaseEnd(word, morphemes, e + 1)) found(steps, e, last.to);
  };
  for (const inside of candidates[vowel.candidate.next] ?? []) {
    if (!isEnclosed(inside.row)) continue;
    const first = hear(inside, search, vowel.to);
    if (!first) continue;
    close([vowel, first], first);
    if (inside.row.grapheme !== 's') continue;
    for (const other of candidates[inside.next] ?? []) {
      const second = other.row.id === 't=T' ? hear(other, search, first.to) : null;
      if (second) close([vowel, first, second], second);
    }
  }
}

function isEnclosed({ kind, grapheme }: TableRow): boolean {
  if (kind === 'consonant') return !/[ui]/.test(grapheme);
  return grapheme === 'th' || grapheme === 'ch' || grapheme === 'ph';
}

/** A letter that no row explains, taking none, one or two sounds; the last takes all that are left. */
function* guesses({ word, spoken }: Search, letter: number, sound: number): Generator<Step> {
  const left = spoken.sounds.length - sound;
  const most = letter === word.length - 1 ? left : Math.min(2, left);
  for (let count = 0; count <= most; count++) {
    const phonemes = spoken.sounds.slice(sound, sound + count);
    const row = guessedRow(word[letter] as string, phonemes);
    const cost = FALLBACK_COST + FALLBACK_SOUND_COST * count;
    const candidate: Candidate = { row, letter, next: letter + 1, cost, split: false };
    yield { candidate, from: sound, to: sound + count, cost };
  }
}

function guessedRow(grapheme: string, phonemes: readonly Phoneme[]): TableRow {
  return {
    id: makeGuessedId(grapheme, phonemes),
    grapheme,
    phonemes,
    kind: 'other-vowel',
    tier: 4,
    places: [],
    keyword: null,
    parts: [],
    context: {},
    accepts: [phonemes],
    variants: [],
  };
}

const rowsByLetters: ReadonlyMap<string, readonly TableRow[]> = groupByLetters();
const LONGEST = Math.max(...[...rowsByLetters.keys()].map((letters) => letters.length));

/** Rows by the letters they begin with; a split a_e is found under a. */
function groupByLetters(): Map<string, TableRow[]> {
  const groups = new Map<string, TableRow[]>();
  for (const row of ROWS) {
    const letters = row.grapheme.replace('_e', '');
    const group = groups.get(letters);
    if (group) group.push(row);
    else groups.set(letters, [row]);
  }
  return groups;
}
