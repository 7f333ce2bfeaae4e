/**
 * Scores a short check as it was read. Common to the handbooks of
 * curriculum-based measurement (test/fixtures/cbm-scoring-rules.tsv): a wrong,
 * left-out or supplied item (3 seconds of hesitation) is an error; what a child
 * corrects by itself is right; repeating, adding and a child's own dialect or
 * articulation are no errors, so they have no mark. Handbooks disagree about a
 * whole row that is skipped: that is a setting.
 *
 * A score is practice monitoring. It diagnoses nothing, and no norm is claimed.
 */
import { correspondenceById } from '../language/correspondences.ts';
import type { CheckItem } from './check-form.ts';

/** What can be marked while a child reads. */
export const ITEM_MARKS = ['wrong', 'hesitated', 'left-out', 'self-corrected'] as const;

/** A mark at an item (counted from 0); of several on one item, the last holds. */
export interface ItemMark {
  readonly at: number;
  readonly kind: (typeof ITEM_MARKS)[number];
  /** For a wrong word: the cards that were wrong, counted from 1; the whole word when left out. */
  readonly cards?: readonly number[];
  /** What was said, if it was noted. */
  readonly said?: string;
}

/** How a skipped row counts: each item an error, or the row one error and its other items not asked. */
export const ROW_RULES = ['each', 'one'] as const;
export type RowRule = (typeof ROW_RULES)[number];

/** A check as it was read. */
export interface CheckReading {
  readonly items: readonly CheckItem[];
  readonly marks: readonly ItemMark[];
  /** How many items were reached, counted from the first. */
  readonly reached: number;
  /** How long it took; null when it was untimed. */
  readonly seconds: number | null;
  /** Rows that were skipped as a whole, each by its first item and its length. */
  readonly skippedRows?: readonly { readonly from: number; readonly count: number }[];
}

/** The score. Shares are 0 to 1, null where nothing was asked; rates are per minute, null when untimed. */
export interface CheckScore {
  /** Items asked and read right as a whole. */
  readonly asked: number;
  readonly right: number;
  readonly accuracy: number | null;
  /** Single sounds asked and said right. */
  readonly soundsAsked: number;
  readonly soundsRight: number;
  readonly rightPerMinute: number | null;
  readonly soundsPerMinute: number | null;
  readonly selfCorrected: number;
  readonly hesitated: number;
  /** The items that were not right, with what was said. */
  readonly missed: readonly (ItemMark & { readonly item: CheckItem })[];
}

/** The score of a reading. Marks beyond the last item reached do not count. */
export function scoreCheck(reading: CheckReading, rowRule: RowRule = 'each'): CheckScore {
  const { items, reached, seconds } = reading;
  const marks = lastMarks(reading);
  const excused = rowRule === 'one' ? excusedItems(reading) : new Set<number>();
  let asked = 0;
  let right = 0;
  let soundsAsked = 0;
  let soundsRight = 0;
  const missed: (ItemMark & { item: CheckItem })[] = [];
  items.slice(0, reached).forEach((item, at) => {
    if (excused.has(at)) return;
    const mark = marks.get(at);
    const sounds = soundsByCard(item);
    const all = sounds.reduce((sum, count) => sum + count, 0);
    asked++;
    soundsAsked += all;
    if (!mark || mark.kind === 'self-corrected') {
      right++;
      soundsRight += all;
      return;
    }
    soundsRight += soundsKept(mark, sounds);
    missed.push({ ...mark, item });
  });
  const perMinute = (count: number) =>
    seconds === null || seconds <= 0 ? null : (count * 60) / seconds;
  const kinds = [...marks].filter(([at]) => at < reached).map(([, { kind }]) => kind);
  return {
    asked,
    right,
    accuracy: asked === 0 ? null : right / asked,
    soundsAsked,
    soundsRight,
    rightPerMinute: perMinute(right),
    soundsPerMinute: perMinute(soundsRight),
    selfCorrected: kinds.filter((kind) => kind === 'self-corrected').length,
    hesitated: kinds.filter((kind) => kind === 'hesitated').length,
    missed,
  };
}

/** By item; a skipped row is left out item by item. */
function lastMarks({ marks, skippedRows = [] }: CheckReading): ReadonlyMap<number, ItemMark> {
  const rows = skippedRows.flatMap(({ from, count }) =>
    Array.from({ length: count }, (_, at): ItemMark => ({ at: from + at, kind: 'left-out' })),
  );
  return new Map([...marks, ...rows].map((mark) => [mark.at, mark]));
}

/** All items of skipped rows but the first of each, which stands for the row. */
function excusedItems({ skippedRows = [] }: CheckReading): ReadonlySet<number> {
  return new Set(
    skippedRows.flatMap(({ from, count }) =>
      Array.from({ length: Math.max(0, count - 1) }, (_, at) => from + at + 1),
    ),
  );
}

/** How many sounds each card of an item stands for. */
function soundsByCard({ cards }: CheckItem): readonly number[] {
  return cards.map((id) => correspondenceById.get(id)?.phonemes.length ?? 1);
}

/** The sounds of a wrong word that were right: those of the cards that are not named as wrong. */
function soundsKept({ kind, cards = [] }: ItemMark, sounds: readonly number[]): number {
  if (kind !== 'wrong' || cards.length === 0) return 0;
  return sounds.reduce((sum, count, card) => (cards.includes(card + 1) ? sum : sum + count), 0);
}
