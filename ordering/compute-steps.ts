/**
 * Our own order of teaching, computed: the stages of stages.ts, the units of
 * each in the order of order-units.ts, and irregular words where a child can
 * use them. Pure and deterministic: one table of words, one outcome. steps.ts
 * holds that outcome; a test holds the two together.
 */

import { correspondenceById } from '../core/language/correspondences.ts';
import { APART } from '../core/sequence/apart.ts';
import { itemKey, parseItem, splitItems } from '../core/sequence/item.ts';
import type { Item, Step } from '../core/sequence/sequence.ts';
import { chooseIrregularWords } from './choose-irregular-words.ts';
import type { CommonWord } from './common-words.ts';
import { orderUnits, type Unit } from './order-units.ts';
import type { PlacedUnit } from './placed-unit.ts';
import {
  FIRST_LETTERS,
  LETTER_STAGES,
  LETTERS,
  STAGES,
  type StageSpec,
  type UnitSpec,
} from './stages.ts';
import { explainPlace } from './why.ts';

/** How much a word of each band (1 the commonest) counts for the order. Ours; no source. */
const WEIGHTS = [0, 10, 6, 4, 2, 1, 1, 1] as const;

/**
 * Computes every step from the table of `words`; the reasons given for each step
 * speak of the words as they are read `now`. Throws when the distances cannot be
 * kept: the tables are then at fault.
 */
export function computeSteps(
  words: readonly CommonWord[],
  now: readonly CommonWord[],
): readonly Step[] {
  const placed = placeUnits(words);
  const irregular = chooseIrregularWords(placed, words);
  return placed.map((unit, place) => {
    const heart = irregular[place] ?? [];
    const known = irregular.slice(0, place).flat();
    return {
      number: unit.number,
      stage: unit.stage,
      grade: unit.grade,
      title: unit.title,
      items: [...unit.items, ...heart.map((word): Item => ({ kind: 'word', word }))],
      why: explainPlace(placed, place, now, heart, known),
    };
  });
}

const letterStage: StageSpec = {
  name: LETTER_STAGES.first,
  grade: 'K',
  why: 'the letters that make the most common short words, both sounds that can be held and sounds that stop',
  units: LETTERS,
};

function placeUnits(words: readonly CommonWord[]): readonly PlacedUnit[] {
  const weighed = words
    .filter((word) => word.regular)
    .map(({ needs, band }) => ({ needs, weight: WEIGHTS[band] ?? 0 }));
  const before = new Map<string, number>();
  const placed: PlacedUnit[] = [];
  for (const stage of [letterStage, ...STAGES]) {
    const units = stage.units.map(makeUnit);
    const rule = stage === letterStage ? goodFirstLetters(units) : stage.asListed && inTurn;
    const order = orderUnits(units, weighed, APART, before, placed.length + 1, rule);
    if (!order) throw new Error(`No order of “${stage.name}” keeps its distances.`);
    for (const [place, index] of order.entries()) {
      const number = placed.length + 1;
      const unit = units[index] as ReturnType<typeof makeUnit>;
      for (const key of unit.keys) if (!before.has(key)) before.set(key, number);
      const later = stage === letterStage && place >= FIRST_LETTERS;
      placed.push({
        ...unit,
        number,
        stage: later ? LETTER_STAGES.second : stage.name,
        grade: stage.grade,
        stageWhy: place === 0 ? stage.why : null,
      });
    }
  }
  return placed;
}

/** Only the order of the table. */
function inTurn(order: readonly number[]): boolean {
  return order.every((unit, place) => unit === place);
}

/** Sounds that can be held: easiest to blend into the vowel. Phonetics; the use is common practice. */
const HELD = new Set('fhlmnrsvz');
const STOPPED = new Set('bcdgkpt');
const VOWELS = new Set('aeiou');

/**
 * The first eight letters: a vowel among the first two, the first consonant can
 * be held, and at the end at least two vowels, three held consonants and two stops.
 */
function goodFirstLetters(
  units: readonly { readonly title: string }[],
): (order: readonly number[]) => boolean {
  return (order) => {
    const letters = order.slice(0, FIRST_LETTERS).map((index) => units[index]?.title ?? '');
    const count = (of: ReadonlySet<string>): number => letters.filter((one) => of.has(one)).length;
    const firstConsonant = letters.find((letter) => !VOWELS.has(letter));
    if (firstConsonant !== undefined && !HELD.has(firstConsonant)) return false;
    if (letters.length === 2 && count(VOWELS) !== 1) return false;
    if (letters.length < FIRST_LETTERS) return true;
    return count(VOWELS) >= 2 && count(HELD) >= 3 && count(STOPPED) >= 2;
  };
}

function makeUnit([title, text, remark]: UnitSpec): Unit & {
  readonly title: string;
  readonly items: readonly Item[];
  readonly remark: string | null;
} {
  const items = splitItems(text).map((part) => {
    const read = parseItem(part);
    if ('error' in read) throw new Error(read.error.message);
    return read.item;
  });
  const cards = items.flatMap((item) => (item.kind === 'card' ? [item.id] : []));
  const parts = cards.flatMap((id) => correspondenceById.get(id)?.parts ?? []);
  const keys = [...items.map(itemKey), ...parts.map((id) => itemKey({ kind: 'card', id }))];
  // As in teach: one faded vowel in a word of two beats comes with longer words.
  if (keys.includes('habit:long-words')) keys.push('habit:flex');
  return { title, items, keys: [...new Set(keys)], remark: remark ?? null };
}
