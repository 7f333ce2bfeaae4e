import type { Grade, Item } from '../core/sequence/sequence.ts';
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

/** The step from which each regular word can be read; words that no step opens are left out. */
export function openingSteps(
  placed: readonly PlacedUnit[],
  words: readonly CommonWord[],
): ReadonlyMap<string, number> {
  const stepOfKey = new Map<string, number>();
  for (const { keys, number } of placed) {
    for (const key of keys) if (!stepOfKey.has(key)) stepOfKey.set(key, number);
  }
  const opens = new Map<string, number>();
  for (const { word, needs, regular } of words) {
    const steps = needs.map((need) => stepOfKey.get(need) ?? Number.POSITIVE_INFINITY);
    const step = Math.max(1, ...steps);
    if (regular && Number.isFinite(step)) opens.set(word, step);
  }
  return opens;
}
