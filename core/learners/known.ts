import { PLACES } from '../language/correspondence.ts';
import type { Day } from './day.ts';
import { driftTo, type Strength } from './strength.ts';
import { type Row, StrengthTable } from './strength-table.ts';
import type { TrackerSettings } from './tracker-settings.ts';

/** The strengths of a class. */
export interface Known {
  readonly settings: TrackerSettings;
  /** The number of each card that came up, by id. */
  readonly cardNumber: ReadonlyMap<string, number>;
  /** By card number: what is common to all groups. */
  readonly cards: readonly Row[];
  readonly children: ReadonlyMap<string, Person>;
  readonly groups: ReadonlyMap<string, Person>;
  /** What stands in a row by now; undefined without a row. */
  readonly strengthAt: (row: Row | undefined) => Strength | undefined;
}

/** The strengths of a child, or what is common to a group. */
export interface Person {
  /** By card number. */
  readonly cards: (Row | undefined)[];
  /** By context number (spots.ts): the places and habits. */
  readonly contexts: (Row | undefined)[];
  /** Of a child: how it stands to its group throughout; a group has none. */
  readonly ability: Row | undefined;
  /** Of a child: the group of its last reading. */
  home: Person | null;
}

/** The strengths of a class while it is followed: each is begun when it is first asked for. */
export interface Book {
  readonly known: Known;
  readonly table: StrengthTable;
  readonly numberOf: (card: string) => number;
  readonly groupOf: (name: string) => Person;
  /** A child, who is of this group from now on. */
  readonly childOf: (name: string, home: Person) => Person;
  /** A card in a child or group, with the drift up to the day. */
  readonly strengthOf: (
    reader: Person,
    card: number,
    spread: number,
    day: Day,
    drift: number,
  ) => Row;
  readonly contextOf: (reader: Person, context: number) => Row;
}

/** A book with nothing in it yet. */
export function openBook(settings: TrackerSettings): Book {
  const table = new StrengthTable();
  const cardNumber = new Map<string, number>();
  const cards: Row[] = [];
  const children = new Map<string, Person>();
  const groups = new Map<string, Person>();
  const strengthAt = (row: Row | undefined) => table.strengthAt(row);
  const known: Known = { settings, cardNumber, cards, children, groups, strengthAt };
  return { known, table, numberOf, groupOf, childOf, strengthOf, contextOf };

  function strengthOf(reader: Person, card: number, spread: number, day: Day, drift: number): Row {
    const row = reader.cards[card];
    if (row !== undefined) {
      driftTo(table.numbers, row, day, drift, spread);
      return row;
    }
    const fresh = table.begin(0, spread, day);
    reader.cards[card] = fresh;
    return fresh;
  }

  function contextOf(reader: Person, context: number): Row {
    const row = reader.contexts[context];
    if (row !== undefined) return row;
    const place = PLACES[context];
    const fresh =
      place === undefined
        ? table.begin(settings.habit, settings.habitSpread, 0)
        : table.begin(settings.places[place], settings.placeSpread, 0);
    reader.contexts[context] = fresh;
    return fresh;
  }

  function groupOf(name: string): Person {
    let group = groups.get(name);
    if (!group) {
      group = { cards: [], contexts: [], ability: undefined, home: null };
      groups.set(name, group);
    }
    return group;
  }

  function childOf(name: string, home: Person): Person {
    let child = children.get(name);
    if (!child) {
      const ability = table.begin(0, settings.childSpread, 0);
      child = { cards: [], contexts: [], ability, home };
      children.set(name, child);
    }
    child.home = home;
    return child;
  }

  function numberOf(id: string): number {
    const known = cardNumber.get(id);
    if (known !== undefined) return known;
    const number = cards.length;
    cards.push(table.begin(settings.start, settings.cardSpread, 0));
    cardNumber.set(id, number);
    return number;
  }
}
