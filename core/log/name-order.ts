import type { ChildId, GroupId } from '../ids.ts';
import type { Child, Group } from './class-state.ts';
import type { EventSpec, NameOrder } from './event.ts';

/** Children in the teacher's order: by name, by seat, or as they were typed; those without a seat come last. */
export function inNameOrder(
  children: readonly Child[],
  order: NameOrder | undefined,
): readonly Child[] {
  if (order === 'name') return children.toSorted(byName);
  return order === 'seat' ? children.toSorted(byPlace) : children;
}

/** Groups in the order in which they come on a day: those that were given a place, then the others as made. */
export function inDayOrder(groups: readonly Group[]): readonly Group[] {
  return groups.toSorted(byPlace);
}

/** Seats a child before another one, or last (`before` null): the settings that change, for `all` in the order that holds now. */
export function childMovedBefore(
  all: readonly Child[],
  what: ChildId,
  before: ChildId | null,
): readonly EventSpec[] {
  return placesThen(all, what, before).map(({ id, value }) => ({
    kind: 'set',
    body: { of: 'child', id, field: 'place', value },
  }));
}

/** Puts a group before another one, or last, in the same way. */
export function groupMovedBefore(
  all: readonly Group[],
  what: GroupId,
  before: GroupId | null,
): readonly EventSpec[] {
  return placesThen(all, what, before).map(({ id, value }) => ({
    kind: 'set',
    body: { of: 'group', id, field: 'place', value },
  }));
}

/** The places that change when one comes before another, counted from 0. */
function placesThen<Id>(
  all: readonly { readonly id: Id; readonly place: number | null }[],
  what: Id,
  before: Id | null,
): readonly { readonly id: Id; readonly value: number }[] {
  const others = all.filter(({ id }) => id !== what);
  const moved = all.find(({ id }) => id === what);
  if (!moved || what === before) return [];
  const at = before === null ? others.length : others.findIndex(({ id }) => id === before);
  const next = others.toSpliced(at < 0 ? others.length : at, 0, moved);
  return next.flatMap(({ id, place }, value) => (place === value ? [] : [{ id, value }]));
}

function byName(one: Child, other: Child): number {
  return one.name.localeCompare(other.name, 'en') || (one.id < other.id ? -1 : 1);
}

function byPlace(one: { readonly place: number | null }, other: { readonly place: number | null }) {
  if (one.place === other.place) return 0;
  return (one.place ?? Number.POSITIVE_INFINITY) - (other.place ?? Number.POSITIVE_INFINITY);
}
