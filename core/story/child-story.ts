import { LAST_READINGS, missedLast } from '../facts/card-facts.ts';
import type { MapCell } from '../facts/class-map.ts';
import { type CardId, isSightId } from '../language/card-id.ts';
import { type Family, familyOf } from './families.ts';
import { type SlipPattern, slipPattern } from './slip-pattern.ts';

/** A family of cards that goes well. */
export interface Strength {
  readonly family: Family;
  /** Whether it is told of the secure cards; else of how often all were read right. */
  readonly sure: boolean;
  /** How many were taught, how many of these were read, and how many of these are secure. */
  readonly taught: number;
  readonly read: number;
  readonly secure: number;
  /** How often they were read right, of how often they were asked. */
  readonly right: number;
  readonly asked: number;
}

/** Something that goes wrong: in which way, on which cards, how often of how often they were asked. */
export interface Trouble extends SlipPattern {
  readonly cards: readonly CardId[];
  readonly times: number;
  readonly asked: number;
}

/** What a sentence on a child is made of. Every number is a sum over its cells. */
export interface ChildStory {
  /** Cards that were read, readings of them that are clear, and how many of these were right. */
  readonly cards: number;
  readonly asked: number;
  readonly right: number;
  /** How many of the cards are words known by sight. */
  readonly words: number;
  /** Whether it stood in words that went wrong, not said at which card. */
  readonly stumbled: boolean;
  /** Families that are surely read, those that are wholly so first, else the one that is read well; two at most. */
  readonly strengths: readonly Strength[];
  /** Two at most, the most pressing first. */
  readonly troubles: readonly Trouble[];
  /** How many other cards were missed in one of their last three readings. */
  readonly others: number;
  /** What was asked beyond the group's step: clear readings, how many were right, how many cards were missed lately. */
  readonly beyond: { readonly asked: number; readonly right: number; readonly open: number };
}

/**
 * The story of a child, by rules from its cells: those taught, and those it was
 * asked beyond them. A trouble is told only while it lasts, which is while one
 * of the last three readings of the card was missed; a way of going wrong is
 * told when it was noted twice, a sound in place of another when it was so on one card. The same cells give the same story.
 */
export function childStory(
  taught: readonly MapCell[],
  beyond: readonly MapCell[] = [],
): ChildStory {
  const read = taught.filter((cell) => askedOf(cell) > 0);
  const open = openOf(read);
  const troubles = troublesOf(taught).slice(0, MOST_CLAUSES);
  const told = new Set(troubles.flatMap(({ cards }) => cards));
  return {
    cards: read.length,
    words: read.filter(({ card }) => isSightId(card)).length,
    asked: sumOf(read, askedOf),
    right: sumOf(read, rightOf),
    stumbled: [...taught, ...beyond].some(({ seen }) => seen.unclear > 0),
    strengths: strengthsOf(taught),
    troubles,
    others: open.filter(({ card }) => !told.has(card)).length,
    beyond: {
      asked: sumOf(beyond, askedOf),
      right: sumOf(beyond, rightOf),
      open: openOf(beyond).length,
    },
  };
}

const MOST_CLAUSES = 2;

/** A way of going wrong is one when it was noted so often. */
const PATTERN_TIMES = 2;

/** Read well: so many readings, so large a share of them right, none of the last three missed. */
const WELL_ASKED = 5;
const WELL_SHARE = 0.9;
/** Some of a family are worth telling from so many on, and half of it. */
const SOME_SECURE = 3;

function strengthsOf(taught: readonly MapCell[]): readonly Strength[] {
  const families = new Map<Family, MapCell[]>();
  for (const cell of taught) {
    const family = familyOf(cell.card);
    if (family === null) continue;
    const cells = families.get(family);
    if (cells) cells.push(cell);
    else families.set(family, [cell]);
  }
  const all = [...families].map(([family, cells]) => ({
    cells,
    strength: {
      family,
      sure: false,
      taught: cells.length,
      read: cells.filter((cell) => askedOf(cell) > 0).length,
      secure: cells.filter(({ word }) => word === 'secure').length,
      right: sumOf(cells, rightOf),
      asked: sumOf(cells, askedOf),
    },
  }));
  const sure = all
    .map(({ strength }) => strength)
    .filter(
      ({ secure, taught }) =>
        secure > 0 && (secure === taught || (secure >= SOME_SECURE && secure * 2 >= taught)),
    );
  if (sure.length > 0) {
    return sure
      .sort((one, other) => other.secure - one.secure || other.asked - one.asked)
      .slice(0, MOST_CLAUSES)
      .sort((one, other) => Number(isWhole(other)) - Number(isWhole(one)))
      .map((strength) => ({ ...strength, sure: true }));
  }
  return all
    .filter(({ cells, strength }) => isReadWell(cells, strength))
    .map(({ strength }) => strength)
    .sort((one, other) => other.asked - one.asked)
    .slice(0, 1);
}

function isWhole({ secure, taught }: Strength): boolean {
  return secure === taught;
}

function isReadWell(cells: readonly MapCell[], { right, asked, read, taught }: Strength): boolean {
  return (
    asked >= WELL_ASKED &&
    right >= WELL_SHARE * asked &&
    read * 2 >= taught &&
    cells.every(({ seen }) => missedLast(seen) === 0)
  );
}

/** Every trouble in these cells, the most pressing first; a child's sentence tells of the first ones. */
export function troublesOf(cells: readonly MapCell[]): readonly Trouble[] {
  const open = openOf(cells);
  const byPattern = gatherPatterns(open);
  mergeDrops(byPattern);
  const patterns = [...byPattern.values()]
    .filter(({ way, times }) => way !== 'misses' && times >= PATTERN_TIMES)
    .map(({ way, sound, cells, times, lately }) => ({
      trouble: troubleOf({ way, sound }, cells, times),
      lately,
    }));
  const told = new Set(patterns.flatMap(({ trouble }) => trouble.cards));
  const rest = open
    .filter(({ card }) => !told.has(card))
    .sort((one, other) => missedLast(other.seen) - missedLast(one.seen))
    .slice(0, MOST_MISSED);
  const misses = { way: 'misses', sound: null } as const;
  const plain = {
    trouble: troubleOf(misses, rest, sumOf(rest, missedOf)),
    // These are told of together, but each is a trouble of its own: they press as much as the worst of them.
    lately: Math.max(0, ...rest.map(({ seen }) => missedLast(seen))),
  };
  return [...patterns, ...(rest.length === 0 ? [] : [plain])]
    .sort((one, other) => other.lately - one.lately || other.trouble.times - one.trouble.times)
    .map(({ trouble }) => trouble);
}

/** What was missed in one of its last three readings. */
function openOf(cells: readonly MapCell[]): readonly MapCell[] {
  return cells.filter(({ seen }) => missedLast(seen) > 0);
}

/** So many cards that go wrong in no way with a name are told of together. */
const MOST_MISSED = 3;

interface Gathered extends SlipPattern {
  readonly cells: MapCell[];
  times: number;
  /** How many of these times are among the last three readings of their cards: what presses. */
  lately: number;
}

function gatherPatterns(open: readonly MapCell[]): Map<string, Gathered> {
  const byPattern = new Map<string, Gathered>();
  for (const cell of open) {
    const last = cell.seen.readings
      .filter(({ outcome }) => outcome !== 'unclear')
      .slice(-LAST_READINGS);
    for (const reading of cell.seen.readings) {
      if (reading.outcome !== 'missed') continue;
      const pattern = slipPattern(reading);
      if (pattern.way === 'says' && saidOnce(cell, pattern.sound)) continue;
      const key = `${pattern.way} ${pattern.sound}`;
      const gathered = byPattern.get(key) ?? { ...pattern, cells: [], times: 0, lately: 0 };
      byPattern.set(key, gathered);
      if (!gathered.cells.includes(cell)) gathered.cells.push(cell);
      gathered.times += 1;
      if (last.includes(reading)) gathered.lately += 1;
    }
  }
  return byPattern;
}

/** One slip is no habit, though another card was once read with the same sound. */
function saidOnce({ seen }: MapCell, sound: string | null): boolean {
  return !seen.heard.some(({ heard, count }) => heard === sound && count >= PATTERN_TIMES);
}

/** Where it was not always said which consonant was dropped, it is told of all that one was. */
function mergeDrops(byPattern: Map<string, Gathered>): void {
  const some = byPattern.get('drops-one null');
  if (some === undefined) return;
  for (const key of ['drops-second null', 'drops-first null']) {
    const one = byPattern.get(key);
    if (one === undefined) continue;
    some.cells.push(...one.cells.filter((cell) => !some.cells.includes(cell)));
    some.times += one.times;
    some.lately += one.lately;
    byPattern.delete(key);
  }
}

function troubleOf(pattern: SlipPattern, cells: readonly MapCell[], times: number): Trouble {
  return { ...pattern, cards: cells.map(({ card }) => card), times, asked: sumOf(cells, askedOf) };
}

function sumOf(cells: readonly MapCell[], of: (cell: MapCell) => number): number {
  return cells.reduce((sum, cell) => sum + of(cell), 0);
}

function askedOf({ seen }: MapCell): number {
  return seen.right + seen.missed;
}

function rightOf({ seen }: MapCell): number {
  return seen.right;
}

function missedOf({ seen }: MapCell): number {
  return seen.missed;
}
