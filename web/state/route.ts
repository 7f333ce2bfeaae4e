import { signal } from '@preact/signals';
import { SCREEN_NAMES, type Screen } from './screens.ts';

/** The address of a screen, with what it is asked to show. */
export function linkTo(screen: Screen, query = ''): string {
  return query === '' ? `#/${screen}` : `#/${screen}?${query}`;
}

/** The screen an address names, or null; what follows a question mark is the screen's own. */
export function parseScreen(hash: string): Screen | null {
  const name = hash.replace(/^#\/?/, '').replace(/\?.*$/s, '');
  return SCREEN_NAMES.find((screen) => screen === name) ?? null;
}

/** What the address asks of its screen: all after the first question mark. */
export function parseQuery(hash: string): string {
  const at = hash.indexOf('?');
  return at < 0 ? '' : hash.slice(at + 1);
}

/** The screen that is shown. */
export const shown = signal<Screen>('learned');

/** What the shown screen was asked to show, until it has taken it. */
export const asked = signal('');

/** The screen has taken what it was asked: the address is its plain one again. */
export function takeAsked(): void {
  asked.value = '';
  history.replaceState(null, '', linkTo(shown.peek()));
}

/** Goes to a screen. */
export function goTo(screen: Screen): void {
  location.hash = linkTo(screen);
}

/** Follows the address from now on; one that names no screen becomes `start`'s. */
export function followAddress(start: () => Screen): void {
  const read = () => {
    const named = parseScreen(location.hash);
    if (named === null) history.replaceState(null, '', linkTo(start()));
    asked.value = named === null ? '' : parseQuery(location.hash);
    shown.value = named ?? start();
  };
  addEventListener('hashchange', read);
  read();
}
