import { countIn, FREE, IN, OUT, type Pairs, type Side } from './pairs.ts';

/** Marks the cards that are in and the best free ones in `marks`; returns their summed value. */
export function choose(
  status: Uint8Array,
  room: number,
  value: Float64Array,
  marks: Uint8Array,
): number {
  let sum = 0;
  marks.fill(0);
  for (let card = 0; card < status.length; card++) {
    if (status[card] !== IN) continue;
    marks[card] = 1;
    sum += value[card] as number;
  }
  for (let taken = 0; taken < room; taken++) {
    let next = -1;
    for (let card = 0; card < status.length; card++) {
      if (status[card] !== FREE || marks[card]) continue;
      if (next < 0 || (value[card] as number) > (value[next] as number)) next = card;
    }
    if (next < 0 || (value[next] as number) <= 0) break;
    marks[next] = 1;
    sum += value[next] as number;
  }
  return sum;
}

/**
 * Settles free cards by reduced cost: taking an unchosen card, or leaving a
 * chosen one, that costs more than `slack` of the bound cannot give a better board.
 */
export function settle(
  status: Uint8Array,
  room: number,
  value: Float64Array,
  marks: Uint8Array,
  slack: number,
): boolean {
  let changed = false;
  let lowestIn = Infinity;
  let highestOut = 0;
  let taken = 0;
  for (let card = 0; card < status.length; card++) {
    if (status[card] !== FREE) continue;
    if (marks[card]) {
      taken++;
      lowestIn = Math.min(lowestIn, value[card] as number);
    } else highestOut = Math.max(highestOut, value[card] as number);
  }
  if (taken < room) {
    lowestIn = 0;
    highestOut = 0;
  }
  for (let card = 0; card < status.length; card++) {
    if (status[card] !== FREE) continue;
    if (marks[card]) {
      if ((value[card] as number) - highestOut <= slack) continue;
      status[card] = IN;
    } else {
      if (lowestIn - (value[card] as number) <= slack) continue;
      status[card] = OUT;
    }
    changed = true;
  }
  return changed;
}

/** A card in clash with one that is in goes out; a full pile takes no more. False if two in clash. */
export function settleClashes({ begin, end, clash }: Pairs): boolean {
  const columns = end.status.length;
  for (let b = 0; b < begin.status.length; b++) {
    if (begin.status[b] === OUT) continue;
    for (let e = 0; e < columns; e++) {
      if (!clash[b * columns + e] || end.status[e] === OUT) continue;
      if (begin.status[b] === IN && end.status[e] === IN) return false;
      if (begin.status[b] === IN) end.status[e] = OUT;
      else if (end.status[e] === IN) {
        begin.status[b] = OUT;
        break;
      }
    }
  }
  return fill(begin) && fill(end);
}

function fill({ status, limit }: Side): boolean {
  const chosen = countIn(status);
  if (chosen > limit) return false;
  if (chosen === limit) {
    for (let card = 0; card < status.length; card++) if (status[card] === FREE) status[card] = OUT;
  }
  return true;
}
