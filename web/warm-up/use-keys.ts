import { useLayoutEffect } from 'preact/hooks';
import { BLENDINGS } from '../../core/warm-up/standing.ts';
import { ask, callAnother, perform, setBlending } from './acts.ts';
import { digitOf, type KeyWish, wishOf } from './keys.ts';
import { askedMark, correctBroken, pressDigit, takeBackMark } from './marking.ts';
import { running } from './running.ts';

/**
 * Keys and clickers, the same in both windows. What a window does itself goes to
 * `onWish`; the rest is done here. A key that a button or an open sheet takes for
 * itself is left to it.
 */
export function useKeys(onWish: (wish: KeyWish) => void): void {
  // Before the first paint: a key pressed as soon as the card is there is not lost.
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.target instanceof Element && isTakenBy(event.target, event.key)) return;
      const digit = digitOf(event);
      const wish = digit ? null : wishOf(event);
      if (!digit && wish === null) return;
      event.preventDefault();
      if (event.repeat) return;
      if (digit) pressDigit(digit.digit, digit.before);
      else if (wish) onWish(wish);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
}

/** Does what belongs to the warm-up itself; false for what is the window's own. */
export function doWish(wish: KeyWish): boolean {
  if (wish === 'unmark') takeBackMark();
  else if (wish === 'correct') correct();
  else if (wish === 'another') callAnother();
  else if (wish === 'blending') nextBlending();
  else if (wish === 'leave') return closeWhatIsOpen();
  else if (
    wish === 'glimpse' ||
    wish === 'who' ||
    wish === 'keys' ||
    wish === 'full-screen' ||
    wish === 'show'
  ) {
    return false;
  } else perform(wish);
  return true;
}

/** Closes the question, the correction or the dictation; false when nothing is open. */
function closeWhatIsOpen(): boolean {
  const now = running.peek();
  if (now?.asking && askedMark.peek()) ask(null);
  else if (now && (now.standing.turn !== null || now.standing.dictating !== null)) {
    perform('let-go');
  } else return false;
  return true;
}

function correct(): void {
  if (running.peek()?.standing.turn === null) correctBroken();
  else perform('correct');
}

function nextBlending(): void {
  const now = running.peek()?.blending ?? 'whole';
  setBlending(BLENDINGS[(BLENDINGS.indexOf(now) + 1) % BLENDINGS.length] ?? 'whole');
}

/** Whether what has the focus does something of its own with a key. */
function isTakenBy(target: Element, key: string): boolean {
  if (target.closest('dialog, [popover]')) return true;
  const isPress = key === ' ' || key === 'Enter';
  if (target.closest('button, a, summary, input[type="checkbox"]')) return isPress;
  return target.closest('input[type="radio"]') !== null && (isPress || key.startsWith('Arrow'));
}
