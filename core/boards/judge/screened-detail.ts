import type { Screened } from '../../words/screen.ts';

/** Why the screen hides a word, in words fit for the wall. */
export function screenedDetail({ verdict, reason }: Screened): string {
  if (reason) return reason;
  return verdict === 'ask' ? 'Yours to decide: it may raise a giggle.' : 'Not a word for class.';
}

/** Whether a teacher has said herself that a word may be shown. */
export function isAllowed({ verdict, category }: Screened): boolean {
  return verdict === 'clear' && category === 'teacher';
}
