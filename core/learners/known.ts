import type { Place } from '../language/correspondence.ts';
import type { Habit } from '../language/taught.ts';
import type { Day } from './day.ts';
import { type Strength, startStrength } from './strength.ts';
import type { TrackerSettings } from './tracker-settings.ts';

/** The strengths of a class. */
export interface Known {
  readonly settings: TrackerSettings;
  /** The number of each card that came up, by id. */
  readonly cardNumber: ReadonlyMap<string, number>;
  /** By card number: what is common to all groups. */
  readonly cards: readonly Strength[];
  readonly children: ReadonlyMap<string, Person>;
  readonly groups: ReadonlyMap<string, Person>;
}

/** The strengths of a child, or what is common to a group. */
export interface Person {
  /** By card number. */
  readonly cards: (Strength | undefined)[];
  readonly places: Map<Place, Strength>;
  readonly habits: Map<Habit, Strength>;
  /** Of a child: how it stands to its group throughout; a group has none. */
  readonly ability: Strength | null;
  /** Of a child: the group of its last reading. */
  home: Person | null;
}

/** The strengths of a class while it is followed: each is begun when it is first asked for. */
export interface Book {
  readonly known: Known;
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
  ) => Strength;
  readonly placeOf: (reader: Person, place: Place) => Strength;
  readonly habitOf: (reader: Person, habit: Habit) => Strength;
}

/** A book with nothing in it yet. */
export function openBook(settings: TrackerSettings): Book {
  const cardNumber = new Map<string, number>();
  const cards: Strength[] = [];
  const children = new Map<string, Person>();
  const groups = new Map<string, Person>();
  const known: Known = { settings, cardNumber, cards, children, groups };
  return { known, numberOf, groupOf, childOf, strengthOf, placeOf, habitOf };

  function strengthOf(
    reader: Person,
    card: number,
    spread: number,
    day: Day,
    drift: number,
  ): Strength {
    const known = reader.cards[card];
    if (known === undefined) {
      const fresh = startStrength(0, spread, day);
      reader.cards[card] = fresh;
      return fresh;
    }
    if (known.day < day) {
      known.variance = Math.min(
        Math.max(spread, known.variance),
        known.variance + drift * (day - known.day),
      );
      known.day = day;
    }
    return known;
  }

  function placeOf(reader: Person, place: Place): Strength {
    const known = reader.places.get(place);
    if (known) return known;
    const fresh = startStrength(settings.places[place], settings.placeSpread, 0);
    reader.places.set(place, fresh);
    return fresh;
  }

  function habitOf(reader: Person, habit: Habit): Strength {
    const known = reader.habits.get(habit);
    if (known) return known;
    const fresh = startStrength(settings.habit, settings.habitSpread, 0);
    reader.habits.set(habit, fresh);
    return fresh;
  }

  function groupOf(name: string): Person {
    let group = groups.get(name);
    if (!group) {
      group = { cards: [], places: new Map(), habits: new Map(), ability: null, home: null };
      groups.set(name, group);
    }
    return group;
  }

  function childOf(name: string, home: Person): Person {
    let child = children.get(name);
    if (!child) {
      const ability = startStrength(0, settings.childSpread, 0);
      child = { cards: [], places: new Map(), habits: new Map(), ability, home };
      children.set(name, child);
    }
    child.home = home;
    return child;
  }

  function numberOf(id: string): number {
    const known = cardNumber.get(id);
    if (known !== undefined) return known;
    const number = cards.length;
    cards.push(startStrength(settings.start, settings.cardSpread, 0));
    cardNumber.set(id, number);
    return number;
  }
}
