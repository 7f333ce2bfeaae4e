import { type CardId, isCardId, isSightId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { parseSounds } from '../language/phonemes.ts';
import type { CheckItem } from './check-form.ts';
import { type CheckReading, ITEM_MARKS, type ItemMark } from './score-check.ts';

/** A check as it was read, or what in it cannot be read, in a sentence. */
export type ParsedReading = { readonly reading: CheckReading } | { readonly error: string };

/**
 * Reads a check from a value such as a JSON file holds: the form's `items`
 * (`text`, `cards`, `sounds`), `marks`, `reached` (all, when left out),
 * `seconds` (untimed, when left out) and `skippedRows`.
 */
export function parseReading(value: unknown): ParsedReading {
  if (!isRecord(value) || !Array.isArray(value.items)) {
    return refuse('there is no list of items; begin from what `check make --json` prints');
  }
  const items: CheckItem[] = [];
  for (const [at, each] of value.items.entries()) {
    const item = parseItem(each);
    if (typeof item === 'string') return refuse(`item ${at + 1} ${item}`);
    items.push(item);
  }
  const marks: ItemMark[] = [];
  for (const [number, each] of listOf(value.marks).entries()) {
    const mark = parseMark(each, items);
    if (typeof mark === 'string') return refuse(`mark ${number + 1} ${mark}`);
    marks.push(mark);
  }
  const reached = value.reached ?? items.length;
  if (!isCount(reached) || reached > items.length) {
    return refuse(`reached must be a whole number from 0 to ${items.length}`);
  }
  const seconds = value.seconds ?? null;
  if (seconds !== null && !(typeof seconds === 'number' && seconds > 0)) {
    return refuse('seconds must be a number above 0, or left out for an untimed check');
  }
  const rows: { from: number; count: number }[] = [];
  for (const row of listOf(value.skippedRows)) {
    if (
      !isRecord(row) ||
      !isCount(row.from) ||
      !isCount(row.count) ||
      row.from + row.count > items.length
    ) {
      return refuse('a skipped row needs from and count, within the items');
    }
    rows.push({ from: row.from, count: row.count });
  }
  return { reading: { items, marks, reached, seconds, skippedRows: rows } };
}

function parseItem(value: unknown): CheckItem | string {
  if (!isRecord(value) || typeof value.text !== 'string') return 'has no text';
  const cards = listOf(value.cards);
  const unknown = cards.find((id) => !isKnownCard(id));
  if (unknown !== undefined) return `has a card that is not known: ${String(unknown)}`;
  const answers = listOf(value.sounds).map((sounds) =>
    typeof sounds === 'string' ? parseSounds(sounds) : null,
  );
  const known = answers.filter((sounds) => sounds !== null);
  if (known.length < answers.length) return 'has sounds that are not ARPABET';
  return { text: value.text, cards: cards.filter(isKnownCard), answers: known };
}

function parseMark(value: unknown, items: readonly CheckItem[]): ItemMark | string {
  if (!isRecord(value) || !isCount(value.at) || value.at >= items.length) {
    return `needs at, an item counted from 0 to ${items.length - 1}`;
  }
  const kind = ITEM_MARKS.find((known) => known === value.kind);
  if (!kind) return `needs kind: ${ITEM_MARKS.join(', ')}`;
  const most = items[value.at]?.cards.length ?? 0;
  const cards = listOf(value.cards);
  if (!cards.every((card) => isCount(card) && card >= 1 && card <= most)) {
    return `names a card that the item has not; its cards are 1 to ${most}`;
  }
  const said = typeof value.said === 'string' ? { said: value.said } : {};
  return { at: value.at, kind, ...(cards.length > 0 ? { cards: cards as number[] } : {}), ...said };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isCount(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 0;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function refuse(what: string): ParsedReading {
  return { error: `This check cannot be scored: ${what}.` };
}

function isKnownCard(id: unknown): id is CardId {
  return typeof id === 'string' && isCardId(id) && (isSightId(id) || correspondenceById.has(id));
}
