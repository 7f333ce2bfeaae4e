/**
 * What broke: one touch says which card, a second what was heard instead. A mark
 * is in the log at once; what was not marked went well. The pace never waits:
 * the next card closes the question.
 */

import { computed } from '@preact/signals';
import type { ChildId, EventId } from '../../core/ids.ts';
import { type LikelySlip, likelySlips, WORD_SLIPS } from '../../core/language/likely-slips.ts';
import type { Mark } from '../../core/log/class-state.ts';
import { readerAt } from '../../core/warm-up/calling.ts';
import { marksSince } from '../../core/warm-up/marks-since.ts';
import { cardsOf, type Moment } from '../../core/warm-up/moments.ts';
import { momentAt } from '../../core/warm-up/standing.ts';
import { ask, perform, recordMark, recordNowOf } from './acts.ts';
import { waitingHere } from './lead-here.ts';
import { moments, recordNow, running } from './running.ts';

/** Which moment is marked: the one that is up, or the one before it. */
export type Which = 'now' | 'before';

/** The moment that is up or the one before it; undefined where there is none. */
export function momentOf(which: Which): Moment | undefined {
  const now = running.value;
  if (!now) return undefined;
  const { order, skipped } = now.standing;
  const at = now.standing.at - (which === 'now' ? 0 : 1);
  return skipped.includes(at) ? undefined : momentAt({ order, at }, moments.value);
}

/** The marks made since a moment came up last. */
export function marksAt(moment: Moment | undefined): readonly Mark[] {
  const known = recordNow.value;
  if (!moment || !known || !running.value) return [];
  return marksSince(moment, known, waitingHere(), moments.value);
}

/** The mark of which it is asked what was heard instead; null for none. */
export const askedMark = computed<Mark | null>(() => {
  const id = running.value?.asking;
  return (id && recordNow.value?.marks.find((mark) => mark.id === id)) || null;
});

/** The last mark of this warm-up, which `takeBackMark` takes back; null for none. */
export const lastMark = computed<Mark | null>(() => recordNow.value?.marks.at(-1) ?? null);

/** What may have been heard instead, the likely first. */
export function slipsFor({ part, cards, broke }: Mark): readonly LikelySlip[] {
  const card = broke === null ? undefined : cards[broke - 1];
  return card === undefined ? WORD_SLIPS : likelySlips(card, part);
}

/**
 * Marks what broke: a card, counted from 1, or null for the whole word. A card
 * that is marked already is asked about again. Nothing is done where there is no such card.
 */
export function mark(which: Which, broke: number | null): void {
  const now = running.peek();
  const moment = momentOf(which);
  if (!now || !moment) return;
  const cards = cardsOf(moment);
  if (broke !== null && cards[broke - 1] === undefined) return;
  const known = marksAt(moment).find((one) => one.broke === broke);
  if (known) {
    ask(known.id);
    return;
  }
  const { part, place } = moment;
  const child = readerAt(now.calling, now.standing.at - (which === 'now' ? 0 : 1));
  const { drillId } = now;
  recordMark({
    kind: 'marked',
    body: { drillId, part, place, cards, broke, heard: null, child, count: now.count },
  });
}

/** Says what was heard instead at the mark that is asked about. */
export function sayHeard(heard: LikelySlip): void {
  const now = running.peek();
  const asked = askedMark.peek();
  if (!now || !asked) return;
  recordNowOf(now, {
    kind: 'amended',
    body: { drillId: now.drillId, mark: asked.id, field: 'heard', value: heard },
  });
  ask(null);
}

/** Says whose a mark is: a child's, or of all together (null). The question stays open. */
export function giveTo(mark: EventId, child: ChildId | null): void {
  const now = running.peek();
  if (!now) return;
  recordNowOf(now, {
    kind: 'amended',
    body: { drillId: now.drillId, mark, field: 'child', value: child },
  });
}

/** Takes the last mark back; it counts as if it had not been made. */
export function takeBackMark(): void {
  const now = running.peek();
  const last = lastMark.peek();
  if (!now || !last) return;
  recordNowOf(now, { kind: 'undone', body: { event: last.id } });
  ask(null);
}

/**
 * A digit: while it is asked what was heard, the answer of that number, 0 for
 * something else; otherwise the card that broke, 0 for the whole word. `before` marks
 * the word before.
 */
export function pressDigit(digit: number, before: boolean): void {
  const asked = before ? null : askedMark.peek();
  if (!asked) {
    mark(before ? 'before' : 'now', digit === 0 ? null : digit);
    return;
  }
  const slips = slipsFor(asked);
  const slip = digit === 0 ? slips.at(-1) : slips[digit - 1];
  if (slip) sayHeard(slip);
}

/** Leads the word that broke through the three turns: the one before, if that is what was marked last. */
export function correctBroken(): void {
  const now = running.peek();
  if (!now) return;
  const before = momentOf('before');
  const last = lastMark.peek();
  const isBefore =
    now.standing.turn === null &&
    marksAt(momentOf('now')).length === 0 &&
    marksAt(before).some((one) => one.id === last?.id);
  if (isBefore) perform('back');
  ask(null);
  perform('correct');
}
