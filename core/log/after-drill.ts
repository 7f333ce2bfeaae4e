import type { CardId } from '../language/card-id.ts';
import type { DrillRecord, Mark } from './class-state.ts';
import { type Evidence, evidenceOf } from './evidence.ts';

/** What came of a drill, for the moment after it. */
export interface AfterDrill {
  /** What went well, in the order of the plan. */
  readonly well: readonly Evidence[];
  /** What broke and had not gone well by the end. */
  readonly broke: readonly Evidence[];
  /** What broke, came up again and then went well. */
  readonly mended: readonly Evidence[];
}

/** All marks on one card; or on a row of cards, where it was not said which of them broke. */
export interface BrokenCard {
  /** Card ids. */
  readonly cards: readonly CardId[];
  /** In the order of the plan; never empty. */
  readonly marks: readonly MarkInPlace[];
}

/** A mark, and what became of the card, sound or word on which it was made. */
export interface MarkInPlace {
  readonly mark: Mark;
  readonly mended: boolean;
  readonly corrected: boolean;
}

/** Something for the next drill to bring back. */
export interface BringBack extends BrokenCard {
  /** The day on which it broke last, `YYYY-MM-DD`; the marks are of that day. */
  readonly day: string;
}

/** Sorts what a drill has shown by how it went. What was not reached is in none of the lists. */
export function afterDrill(record: DrillRecord): AfterDrill {
  const evidence = evidenceOf(record);
  const those = (outcome: Evidence['outcome']) => evidence.filter((one) => one.outcome === outcome);
  return { well: those('well'), broke: those('broke'), mended: those('mended') };
}

/** What broke, card by card: the most marks first, and last where it was not said which card. */
export function brokenByCard(evidence: readonly Evidence[]): readonly BrokenCard[] {
  const byKey = new Map<string, BrokenCard>();
  for (const { outcome, marks, corrected } of evidence) {
    for (const mark of marks) {
      const cards = markedCards(mark);
      const before = byKey.get(keyOf({ cards }))?.marks ?? [];
      const here = { mark, mended: outcome === 'mended', corrected };
      byKey.set(keyOf({ cards }), { cards, marks: [...before, here] });
    }
  }
  return [...byKey.values()].sort(
    (left, right) =>
      Number(isSure(right)) - Number(isSure(left)) || right.marks.length - left.marks.length,
  );
}

/** How many drills back something may have broken to be brought back (common practice, no source). */
const DRILLS_BACK = 3;

/**
 * What a group's next drill should bring back, most needed first: what broke in
 * its last drills, was not mended there, and has not gone well in a later one.
 * `drills` are the group's, as they were begun. Where it is known which card
 * broke goes first; then what the whole class broke, then the later day, then
 * what broke more often.
 */
export function toBringBack(drills: readonly DrillRecord[]): readonly BringBack[] {
  let open: readonly BringBack[] = [];
  for (const record of drills.slice(-DRILLS_BACK)) {
    const evidence = evidenceOf(record);
    const unmended = evidence.filter(({ outcome }) => outcome === 'broke');
    const broken = brokenByCard(unmended).map((one) => ({ ...one, day: record.day }));
    const again = new Set(broken.map(keyOf));
    const shaky = new Set(broken.flatMap(({ cards }) => cards));
    const fine = new Set(evidence.flatMap(({ cards }) => cards).filter((id) => !shaky.has(id)));
    const stays = open.filter(
      (one) => !again.has(keyOf(one)) && !one.cards.every((id) => fine.has(id)),
    );
    open = [...stays, ...broken];
  }
  return open.toSorted(
    (left, right) =>
      Number(isSure(right)) - Number(isSure(left)) ||
      Number(isForAll(right)) - Number(isForAll(left)) ||
      compareDays(right.day, left.day) ||
      right.marks.length - left.marks.length,
  );
}

/** The card that a mark says broke; all that lay there when it was not said which. */
export function markedCards({ cards, broke }: Pick<Mark, 'cards' | 'broke'>): readonly CardId[] {
  const card = broke === null ? undefined : cards[broke - 1];
  return card === undefined ? cards : [card];
}

function keyOf({ cards }: Pick<BrokenCard, 'cards'>): string {
  return cards.join(' ');
}

function isSure({ cards }: BrokenCard): boolean {
  return cards.length === 1;
}

function isForAll({ marks }: BrokenCard): boolean {
  return marks.some(({ mark }) => mark.child === null);
}

function compareDays(left: string, right: string): number {
  if (left === right) return 0;
  return left < right ? -1 : 1;
}
