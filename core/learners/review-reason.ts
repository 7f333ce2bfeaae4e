import { type Day, weekdayOf } from './day.ts';
import type { DueBecause } from './due.ts';

/** Why a card was chosen: a code and the numbers that make a sentence of it. */
export type ReviewReason =
  /** Taught so many days before; 0 for the day itself. */
  | { readonly code: 'new'; readonly days: number }
  /** Went wrong so many times of those it was asked, on its last day. */
  | { readonly code: 'missed'; readonly missed: number; readonly asked: number; readonly day: Day }
  /** Expected to be read correctly this often, 0 to 1, by the child or group. */
  | { readonly code: 'shaky'; readonly p: number }
  /** Has not come up for so many days, and should have by now. */
  | { readonly code: 'unseen'; readonly days: number; readonly because: DueBecause }
  /** Was taught and never came up in a drill. */
  | { readonly code: 'never-seen' }
  /** Goes well: for a warm start and to keep it. */
  | { readonly code: 'goes-well'; readonly days: number };

/** The reason as a teacher reads it on `today`: ‘missed 4 of 9 on Tuesday’. */
export function makeReason(reason: ReviewReason, today: Day): string {
  switch (reason.code) {
    case 'new':
      return `new ${ago(reason.days)}`;
    case 'missed':
      return `missed ${reason.missed} of ${reason.asked} ${onDay(reason.day, today)}`;
    case 'shaky':
      return `about ${Math.round(reason.p * 10)} of 10 right`;
    case 'unseen':
      return `not seen for ${reason.days} ${reason.days === 1 ? 'day' : 'days'}${BY_NOW[reason.because]}`;
    case 'never-seen':
      return 'taught, not practiced yet';
    case 'goes-well':
      return `goes well, last ${ago(reason.days)}`;
  }
}

/** What days without it have done. */
const BY_NOW: Readonly<Record<DueBecause, string>> = {
  fading: ' and fading',
  weak: ' and not yet sure',
  unsure: ', so no longer sure',
  long: '',
};

/** Why a card should come back on its day, as a teacher reads it beside that day. */
export const DUE_SAID: Readonly<Record<DueBecause, string>> = {
  fading: 'it will have begun to fade',
  weak: 'it is not yet sure',
  unsure: 'by then nobody can be sure',
  long: 'it will have been twenty school days',
};

const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

function onDay(day: Day, today: Day): string {
  const days = today - day;
  if (days <= 1 || days > 6) return ago(days);
  return `on ${WEEKDAYS[weekdayOf(day)]}`;
}

function ago(days: number): string {
  if (days <= 0) return 'today';
  return days === 1 ? 'yesterday' : `${days} days ago`;
}
