import { signal } from '@preact/signals';

/** The screens there are; each is named in the address after `#/`. */
export const SCREENS = [
  'learned',
  'order',
  'today',
  'stage',
  'words',
  'text',
  'dictation',
  'settings',
  'about',
] as const;
export type Screen = (typeof SCREENS)[number];

/** The address of a screen. */
export function linkTo(screen: Screen): string {
  return `#/${screen}`;
}

/** The screen an address names, or null. */
export function parseScreen(hash: string): Screen | null {
  const name = hash.replace(/^#\/?/, '');
  return SCREENS.find((screen) => screen === name) ?? null;
}

/** The screen that is shown. */
export const shown = signal<Screen>('learned');

/** Goes to a screen. */
export function goTo(screen: Screen): void {
  location.hash = linkTo(screen);
}

/** Follows the address from now on; one that names no screen becomes `start`'s. */
export function followAddress(start: () => Screen): void {
  const read = () => {
    const named = parseScreen(location.hash);
    if (named === null) history.replaceState(null, '', linkTo(start()));
    shown.value = named ?? start();
  };
  addEventListener('hashchange', read);
  read();
}
