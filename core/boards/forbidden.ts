import { type BoardModel, boardValue, type NoBoard, type Place } from './board-model.ts';
import { countIn, FREE, IN, OUT } from './pairs.ts';

/** Where each card stands, by pile: FREE, IN or OUT. */
export type Statuses = readonly [Uint8Array, Uint8Array, Uint8Array];

/** A forbidden combination: beginning, vowel, ending. */
export type Triple = readonly [number, number, number];

/** All forbidden combinations of a model. */
export function forbiddenTriples({
  sizes: [rows, layers, columns],
  forbidden,
}: BoardModel): Triple[] {
  const triples: Triple[] = [];
  for (let b = 0, at = 0; b < rows; b++) {
    for (let v = 0; v < layers; v++) {
      for (let e = 0; e < columns; e++, at++) if (forbidden[at]) triples.push([b, v, e]);
    }
  }
  return triples;
}

/** Puts cards out that would complete a forbidden combination; null if one is complete. */
export function settleForbidden(
  statuses: Statuses,
  forbidden: readonly Triple[],
  limits: BoardModel['limits'],
): readonly Triple[] | null {
  const [begin, middle, end] = statuses;
  let live = forbidden;
  for (let changed = true; changed; ) {
    changed = false;
    const still: Triple[] = [];
    for (const triple of live) {
      const [b, v, e] = triple;
      const sb = begin[b];
      const sv = middle[v];
      const se = end[e];
      if (sb === OUT || sv === OUT || se === OUT) continue;
      if (sb === IN && sv === IN && se === IN) return null;
      if (sb === IN && sv === IN) end[e] = OUT;
      else if (sb === IN && se === IN) middle[v] = OUT;
      else if (sv === IN && se === IN) begin[b] = OUT;
      else {
        still.push(triple);
        continue;
      }
      changed = true;
    }
    for (const pile of [0, 1, 2] as const) {
      const status = statuses[pile];
      const chosen = countIn(status);
      if (chosen > limits[pile]) return null;
      if (chosen === limits[pile] && status.includes(FREE)) {
        for (let card = 0; card < status.length; card++) if (!status[card]) status[card] = OUT;
        changed = true;
      }
    }
    live = still;
  }
  return live;
}

/** Puts in the last card that can still serve a group; false when a group has none left. */
export function settleGroups(statuses: Statuses, groups: readonly (readonly Place[])[]): boolean {
  for (const group of groups) {
    if (group.some(([pile, card]) => statuses[pile][card] === IN)) continue;
    const open = group.filter(([pile, card]) => statuses[pile][card] === FREE);
    if (open.length === 0) return false;
    const [only] = open;
    if (open.length === 1 && only) statuses[only[0]][only[1]] = IN;
  }
  return true;
}

/** A free card of a group that none serves yet; null when all are served. */
export function openGroup(statuses: Statuses, groups: readonly (readonly Place[])[]): Place | null {
  for (const group of groups) {
    if (group.some(([pile, card]) => statuses[pile][card] === IN)) continue;
    const open = group.find(([pile, card]) => statuses[pile][card] === FREE);
    if (open) return open;
  }
  return null;
}

/** Why the pins alone rule out every board; null when they do not. */
export function refusePins(model: BoardModel): NoBoard | null {
  for (const pile of [0, 1, 2] as const) {
    if (model.pinned[pile].length > model.limits[pile]) return { kind: 'too-many-pins', pile };
  }
  const [rows, layers, columns] = model.pinned;
  for (const b of rows) {
    for (const v of layers) {
      for (const e of columns) {
        if (boardValue(model, [[b], [v], [e]]) < 0) {
          return { kind: 'pins-clash', combination: [b, v, e] };
        }
      }
    }
  }
  return null;
}
