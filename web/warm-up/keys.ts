import type { Act } from '../../core/warm-up/standing.ts';

/** What a key asks for: an act of the warm-up, something of the marks, or of the window itself. */
export type KeyWish =
  | Exclude<Act, object>
  | 'unmark'
  | 'blending'
  | 'another'
  | 'who'
  | 'glimpse'
  | 'keys'
  | 'leave'
  | 'full-screen'
  | 'show';

/** One row of the sheet of keys. */
export interface Key {
  readonly wish: KeyWish;
  /** As browsers name them. */
  readonly keys: readonly string[];
  /** As they are printed on the sheet. */
  readonly shown: readonly string[];
  readonly does: string;
  /** Where it works, if not on both. */
  readonly only?: 'desk' | 'stage';
}

/** The keys of desk and stage, in the order in which the sheet lists them. */
export const KEYS: readonly Key[] = [
  {
    wish: 'next',
    keys: [' ', 'ArrowRight', 'PageDown', 'Enter'],
    shown: ['space', '→', 'clicker'],
    does: 'next',
  },
  { wish: 'back', keys: ['ArrowLeft', 'PageUp', 'Backspace'], shown: ['←'], does: 'back' },
  { wish: 'sweep', keys: ['ArrowDown', 's'], shown: ['↓', 'S'], does: 'sweep under the row' },
  {
    wish: 'answer',
    keys: ['t', 'ArrowUp'],
    shown: ['T', '↑'],
    does: 'real word or not; in the second part, the spellings',
  },
  {
    wish: 'correct',
    keys: ['c'],
    shown: ['C'],
    does: 'correct it: my turn, our turn, your turn',
  },
  { wish: 'unmark', keys: ['z'], shown: ['Z'], does: 'take the last mark back' },
  { wish: 'skip', keys: ['x'], shown: ['X'], does: 'skip this one' },
  { wish: 'pause', keys: ['b', '.'], shown: ['B'], does: 'blank sheet' },
  {
    wish: 'blending',
    keys: ['o'],
    shown: ['O'],
    does: 'whole row, one sound at a time, or joined sounds',
  },
  { wish: 'dictate', keys: ['d'], shown: ['D'], does: 'dictation, after the sounds', only: 'desk' },
  { wish: 'another', keys: ['n'], shown: ['N'], does: 'another child reads', only: 'desk' },
  { wish: 'who', keys: ['w'], shown: ['W'], does: 'say who reads, by name', only: 'desk' },
  {
    wish: 'glimpse',
    keys: ['g'],
    shown: ['G'],
    does: 'a small glimpse of the next, on or off',
    only: 'stage',
  },
  {
    wish: 'full-screen',
    keys: ['f'],
    shown: ['F'],
    does: 'full screen, on or off',
    only: 'stage',
  },
  { wish: 'show', keys: ['F5'], shown: ['F5'], does: 'full screen, from a clicker', only: 'stage' },
  { wish: 'keys', keys: ['?'], shown: ['?'], does: 'this sheet' },
  { wish: 'leave', keys: ['Escape'], shown: ['Esc'], does: 'close what is open, then leave' },
];

const wishByKey: ReadonlyMap<string, KeyWish> = new Map(
  KEYS.flatMap(({ wish, keys }) => keys.map((key): [string, KeyWish] => [key, wish])),
);

/** What a key asks for, or null. Letters count in either case; keys held with Ctrl, Alt or Meta never. */
export function wishOf(event: KeyboardEvent): KeyWish | null {
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return wishByKey.get(key) ?? null;
}

/**
 * The digit that was pressed, by where its key lies, so that it is the same on
 * every keyboard and with shift; null for any other key.
 */
export function digitOf(
  event: Pick<KeyboardEvent, 'code' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey'>,
): { readonly digit: number; readonly before: boolean } | null {
  if (event.ctrlKey || event.altKey || event.metaKey) return null;
  const found = /^(?:Digit|Numpad)(\d)$/.exec(event.code);
  return found ? { digit: Number(found[1]), before: event.shiftKey } : null;
}
