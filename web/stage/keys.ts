import type { Act } from './standing.ts';

/** What a key asks for: an act of the warm-up, or something of the stage itself. */
export type Wish = Act | 'successive' | 'glimpse' | 'keys' | 'leave' | 'full-screen';

/** The keys of the stage in the order in which the help sheet lists them. */
export const KEYS: readonly {
  readonly wish: Wish;
  readonly keys: readonly string[];
  readonly shown: readonly string[];
  readonly does: string;
}[] = [
  {
    wish: 'next',
    keys: [' ', 'ArrowRight', 'PageDown', 'Enter'],
    shown: ['space', '→', 'clicker'],
    does: 'next card',
  },
  { wish: 'back', keys: ['ArrowLeft', 'PageUp', 'Backspace'], shown: ['←'], does: 'back' },
  { wish: 'sweep', keys: ['ArrowDown', 's'], shown: ['↓', 'S'], does: 'sweep under the row' },
  {
    wish: 'answer',
    keys: ['t', 'ArrowUp'],
    shown: ['T', '↑'],
    does: 'real word or not; in the second part, the spellings',
  },
  { wish: 'skip', keys: ['x'], shown: ['X'], does: 'skip this one' },
  { wish: 'pause', keys: ['b', '.'], shown: ['B'], does: 'blank sheet' },
  { wish: 'successive', keys: ['o'], shown: ['O'], does: 'one sound at a time, on or off' },
  { wish: 'glimpse', keys: ['g'], shown: ['G'], does: 'a small glimpse of the next, on or off' },
  { wish: 'full-screen', keys: ['f'], shown: ['F'], does: 'full screen, on or off' },
  { wish: 'keys', keys: ['?'], shown: ['?'], does: 'this sheet' },
  { wish: 'leave', keys: ['Escape'], shown: ['Esc'], does: 'back to the plan' },
];

const wishByKey: ReadonlyMap<string, Wish> = new Map(
  KEYS.flatMap(({ wish, keys }) => keys.map((key): [string, Wish] => [key, wish])),
);

/** What a key asks for, or null. Letters count in either case; keys held with Ctrl, Alt or Meta never. */
export function wishOf(event: KeyboardEvent): Wish | null {
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return wishByKey.get(key) ?? null;
}
