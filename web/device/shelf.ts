import { signal } from '@preact/signals';

/**
 * What this device holds for Sweepline: text by name in the browser's local
 * storage. Storage can be refused (private windows, school policies) or full;
 * then everything goes on in memory and `trouble` says so. The clock is an
 * argument of `setAside`, so that names are the caller's.
 */
export interface Shelf {
  read(name: string): string | null;
  write(name: string, text: string): void;
  remove(name: string): void;
  /** Keeps a copy of text that could not be read, so that it can be rescued. */
  setAside(name: string, text: string): void;
}

/** Why remembering does not work at the moment, or null while it does. */
export type ShelfTrouble = 'refused' | 'unreadable' | null;

/** The trouble that a banner tells of; see `web/controls/banner.tsx`. */
export const trouble = signal<ShelfTrouble>(null);

const prefix = 'sweepline.';

/** The shelf of this browser. */
export const shelf: Shelf = {
  read(name) {
    try {
      return localStorage.getItem(prefix + name);
    } catch {
      trouble.value = 'refused';
      return null;
    }
  },
  write(name, text) {
    try {
      localStorage.setItem(prefix + name, text);
      if (trouble.peek() === 'refused') trouble.value = null;
    } catch {
      trouble.value = 'refused';
    }
  },
  remove(name) {
    try {
      localStorage.removeItem(prefix + name);
    } catch {
      trouble.value = 'refused';
    }
  },
  setAside(name, text) {
    trouble.value = 'unreadable';
    for (let copy = 1; copy <= 20; copy += 1) {
      const free = `${name}.unreadable-${copy}`;
      const held = this.read(free);
      if (held === text) return;
      if (held === null) {
        this.write(free, text);
        return;
      }
    }
  },
};

/** Every unreadable copy that was put aside, name and text, for her to download. */
export function asideCopies(): readonly { readonly name: string; readonly text: string }[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix) && key.includes('.unreadable-'))
      .sort()
      .map((key) => ({ name: key.slice(prefix.length), text: localStorage.getItem(key) ?? '' }));
  } catch {
    return [];
  }
}

/** Throws such copies away, by name. */
export function throwAsideAway(names: readonly string[]): void {
  for (const name of names) shelf.remove(name);
  if (asideCopies().length === 0) {
    shelf.remove(SEEN);
    if (trouble.peek() === 'unreadable') trouble.value = null;
  }
}

/** How many of these copies she has been told of, and has put the notice away. */
const SEEN = 'aside-seen';

/** Tells of copies that were put aside, on every visit until she has put the notice away. */
export function tellOfAside(): void {
  if (asideCopies().length > Number(shelf.read(SEEN) ?? 0)) trouble.value = 'unreadable';
}

/** She has seen the notice; the copies stay. */
export function putNoticeAway(): void {
  shelf.write(SEEN, String(asideCopies().length));
  trouble.value = null;
}
