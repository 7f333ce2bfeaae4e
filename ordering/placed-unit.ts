import type { CardId } from '../core/language/card-id.ts';
import type { Grade, Item } from '../core/sequence/sequence.ts';
import { IMPLIED } from '../core/words/implied.ts';
import type { CommonWord } from './common-words.ts';
import type { Unit } from './order-units.ts';

/** A unit in its place in the order, before irregular words join it. */
export interface PlacedUnit extends Unit {
  readonly number: number;
  readonly stage: string;
  readonly grade: Grade;
  readonly title: string;
  readonly items: readonly Item[];
  readonly remark: string | null;
  /** The stage's reason, on its first step; else null. */
  readonly stageWhy: string | null;
}

/** The step from which a need is met, by its own card or by what it follows from. */
function earliest(
  need: string,
  stepOfKey: ReadonlyMap<string, number>,
  alsoImplied: boolean,
): number {
  const stepOf = (key: string) => stepOfKey.get(key) ?? Number.POSITIVE_INFINITY;
  const implied =
    alsoImplied && need.startsWith('card:') ? IMPLIED.get(need.slice(5) as CardId) : undefined;
  const others = (implied ?? []).map((ids) => Math.max(...ids.map((id) => stepOf(`card:${id}`))));
  return Math.min(stepOf(need), ...others);
}

/** The step from which each regular word can be read; words that no step opens are left out.
 * `implied`: cards that follow from others count too, as they do for a class. */
export function openingSteps(
  placed: readonly PlacedUnit[],
  words: readonly CommonWord[],
  implied = false,
): ReadonlyMap<string, number> {
  const stepOfKey = new Map<string, number>();
  for (const { keys, number } of placed) {
    for (const key of keys) if (!stepOfKey.has(key)) stepOfKey.set(key, number);
  }
  const long = stepOfKey.get('habit:long-words');
  if (long !== undefined) stepOfKey.set('habit:flex', long);
  const opens = new Map<string, number>();
  for (const { word, needs, regular } of words) {
    const steps = needs.map((need) => earliest(need, stepOfKey, implied));
    const step = Math.max(1, ...steps);
    if (regular && Number.isFinite(step)) opens.set(word, step);
  }
  return opens;
}
