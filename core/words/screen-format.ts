import {
  type CodeHash,
  checkOf,
  type HashSpace,
  hashCodes,
  placeOf,
  type Run,
} from './screen-hash.ts';

/** What a screened word is about, in words that can be read aloud. */
export const SCREEN_CATEGORIES = [
  'profanity',
  'sexual',
  'body',
  'slur',
  'hate',
  'drugs',
  'violence',
  'death',
  'insult',
  'bathroom',
  'alcohol',
  'religion',
  'romance',
] as const;
export type ScreenCategory = (typeof SCREEN_CATEGORIES)[number];

/** How far an entry reaches: the word alone, with endings, or also as a half of a longer word. */
export const SCREEN_SCOPES = ['exact', 'endings', 'edge'] as const;
export type ScreenScope = (typeof SCREEN_SCOPES)[number];

/** What is stored with a hash. */
export interface ScreenMark {
  readonly verdict: 'stop' | 'ask';
  readonly category: ScreenCategory;
  readonly scope: ScreenScope;
}

/**
 * The screen as it ships: per mark, its hashes written one after the other, 7
 * characters each. The mark 0 is for harmless words. The alphabet of 32 signs
 * has no vowel, so that no word can appear by chance.
 */
export type ScreenData = readonly (readonly [mark: number, hashes: string])[];

/** The hashes in memory: open addressing over a power of two. */
export interface ScreenTable {
  readonly mask: number;
  readonly places: Int32Array;
  readonly checks: Uint8Array;
  readonly marks: Uint8Array;
}

/** A key to be stored: codes in a space, and its mark (null: harmless). */
export interface ScreenKey {
  readonly codes: readonly number[];
  readonly space: HashSpace;
  readonly mark: ScreenMark | null;
}

const ALPHABET = '0123456789bcdfghjklmnpqrstvwxz-_';
const WIDTH = 7;
const SCOPES = SCREEN_SCOPES.length;

/** A mark as a number from 1; its parts by `verdictOf`, `scopeOf` and `categoryOf`. */
export function encodeMark({ verdict, category, scope }: ScreenMark): number {
  const place = SCREEN_CATEGORIES.indexOf(category) * SCOPES + SCREEN_SCOPES.indexOf(scope);
  return 1 + place * 2 + (verdict === 'stop' ? 1 : 0);
}

/** Whether a mark number is a stop. */
export function isStopMark(mark: number): boolean {
  return mark > 0 && (mark - 1) % 2 === 1;
}

/** 0 exact, 1 with endings, 2 also as a half. */
export function reachOf(mark: number): number {
  return ((mark - 1) >> 1) % SCOPES;
}

/** The category number of a mark. */
export function categoryIndexOf(mark: number): number {
  return Math.floor(((mark - 1) >> 1) / SCOPES);
}

/**
 * Packs keys. The same keys in any order give the same data; a key given twice
 * keeps its strictest mark. Hashes that clash between different keys throw,
 * for then the salts have to change.
 */
export function encodeScreen(keys: readonly ScreenKey[]): ScreenData {
  const byKey = new Map<string, { readonly text: string; readonly mark: number }>();
  for (const { codes, space, mark } of keys) {
    const number = mark === null ? 0 : encodeMark(mark);
    const key = `${space} ${codes.join(' ')}`;
    const known = byKey.get(key);
    const rank = (value: number) =>
      (isStopMark(value) ? 10 : 0) + (value > 0 ? reachOf(value) : -1);
    if (!known || rank(number) > rank(known.mark)) {
      byKey.set(key, { text: hashText(hashCodes(codes, codes.length, space)), mark: number });
    }
  }
  const places = [...byKey.values()].map(({ text }) => parseHash(text).place);
  if (new Set(places).size !== places.length) throw new Error('Two screen keys share a hash.');
  const groups = new Map<number, string[]>();
  for (const { text, mark } of byKey.values())
    groups.set(mark, [...(groups.get(mark) ?? []), text]);
  return [...groups]
    .sort(([left], [right]) => left - right)
    .map(([mark, hashes]) => [mark, hashes.sort().join('')] as const);
}

/** Unpacks the shipped data into a table that `markAt` reads. Throws on damaged data. */
export function decodeScreen(data: ScreenData): ScreenTable {
  const total = data.reduce((sum, [, hashes]) => sum + hashes.length / WIDTH, 0);
  let size = 1024;
  while (size < total * 3) size *= 2;
  const table: ScreenTable = {
    mask: size - 1,
    places: new Int32Array(size),
    checks: new Uint8Array(size),
    marks: new Uint8Array(size),
  };
  for (const [mark, hashes] of data) {
    for (let at = 0; at < hashes.length; at += WIDTH) {
      store(table, parseHash(hashes.slice(at, at + WIDTH)), mark);
    }
  }
  return table;
}

/** The mark of the codes `from` to `to` of a run in a space: 0 harmless, above 0 screened, -1 not there. */
export function markAt(
  table: ScreenTable,
  run: Run,
  from: number,
  to: number,
  salt: number,
): number {
  if (to <= from) return -1;
  const { mask, places } = table;
  const place = placeOf(run, from, to, salt);
  let slot = place & mask;
  while (places[slot] !== place) {
    if (places[slot] === 0) return -1;
    slot = (slot + 1) & mask;
  }
  if (table.checks[slot] !== checkOf(run, from, to, salt) >>> 5) return -1;
  return table.marks[slot] as number;
}

function store(table: ScreenTable, { place, check }: CodeHash, mark: number): void {
  let slot = place & table.mask;
  while (table.places[slot] !== 0) slot = (slot + 1) & table.mask;
  table.places[slot] = place;
  table.checks[slot] = check;
  table.marks[slot] = mark;
}

function hashText({ place, check }: CodeHash): string {
  let value = (place >>> 0) * 8 + (check >>> 5);
  let text = '';
  for (let i = 0; i < WIDTH; i++) {
    text = ALPHABET.charAt(value % 32) + text;
    value = Math.floor(value / 32);
  }
  return text;
}

function parseHash(text: string): CodeHash {
  if (text.length !== WIDTH) throw new Error('The screen data are damaged.');
  let value = 0;
  for (const sign of text) {
    const digit = ALPHABET.indexOf(sign);
    if (digit < 0) throw new Error('The screen data are damaged.');
    value = value * 32 + digit;
  }
  return { place: Math.floor(value / 8) | 0, check: value % 8 };
}
