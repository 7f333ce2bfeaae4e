/** Which children and cards stand in the class map, and in which order. */

import { computed, signal } from '@preact/signals';
import { byNeed, type MapRow, shakiest } from '../../../core/facts/class-map.ts';
import type { ChildId } from '../../../core/ids.ts';
import { type CardId, isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { byStage, type StageCards } from '../../../core/sequence/by-stage.ts';
import { nameOf, rowsFor, taughtCards } from '../../state/class-now.ts';
import { progress } from '../../state/progress.ts';
import { cardName } from '../../wording/card-name.ts';

/** Which cards she wants to see: those that someone has read, those that are shaky for someone, the words known by sight, all that was taught. */
export const columns = signal<'read' | 'shaky' | 'words' | 'all'>('read');

/** In which order the children stand: who needs it most, by name, or as in her class list. */
export const order = signal<'need' | 'name' | 'list'>('need');

/** What she looks for: the beginning of a child's name or the letters of a card. */
export const sought = signal('');

/** Only these children and cards, as a sentence above the map speaks of them; null for all. */
export const only = signal<{
  readonly children: readonly ChildId[];
  readonly cards: readonly CardId[];
} | null>(null);

const taughtRows = computed(() => rowsFor(taughtCards.value));

/** The cards of the map under their stages, the newest stage first, and the rows with a cell for each. */
export const shown = computed(() => {
  const { groups, children } = taughtRows.value;
  const cards = soughtCards(cardsWanted(children));
  const stages = byStage(progress.value.sequence, cards).toReversed();
  const inOrder = stages.flatMap((stage) => stage.cards);
  const wide = children.filter((row) => isSought(row));
  return {
    stages: stages satisfies readonly StageCards[],
    cards: inOrder,
    groups: only.value === null && wide.length === children.length ? cut(groups, inOrder) : [],
    children: sorted(cut(wide, inOrder)),
  };
});

/** Whether any child or card is left of what she looks for; both are all there when nothing is named so. */
export const isFound = computed(() => {
  const text = seekable(sought.value);
  return (
    text === '' ||
    taughtCards.value.some((id) => isNamed(id, text)) ||
    taughtRows.value.children.some((row) => isCalled(row, text))
  );
});

function cardsWanted(rows: readonly MapRow[]): readonly CardId[] {
  const chosen = only.value;
  if (chosen !== null && chosen.cards.length > 0) {
    return taughtCards.value.filter((id) => chosen.cards.includes(id));
  }
  if (columns.value === 'all') return taughtCards.value;
  if (columns.value === 'shaky') return shakiest(rows);
  if (columns.value === 'words') return taughtCards.value.filter(isSightId);
  const read = new Set(
    rows.flatMap(({ cells }) =>
      cells.filter(({ seen }) => seen.readings.length > 0).map(({ card }) => card),
    ),
  );
  return taughtCards.value.filter((id) => read.has(id));
}

function soughtCards(cards: readonly CardId[]): readonly CardId[] {
  const text = seekable(sought.value);
  const named = text === '' ? [] : taughtCards.value.filter((id) => isNamed(id, text));
  return named.length > 0 ? named : cards;
}

function isSought(row: MapRow): boolean {
  const chosen = only.value;
  if (
    chosen !== null &&
    chosen.children.length > 0 &&
    !chosen.children.some((id) => id === row.who.id)
  ) {
    return false;
  }
  const text = seekable(sought.value);
  if (text === '') return true;
  return isCalled(row, text) || !taughtRows.value.children.some((one) => isCalled(one, text));
}

function sorted(rows: readonly MapRow[]): readonly MapRow[] {
  if (order.value === 'need') return byNeed(rows);
  if (order.value === 'list') return rows;
  return rows.toSorted((one, other) => nameOf(one.who).localeCompare(nameOf(other.who), 'en'));
}

/** The rows with the cells of these cards alone, in their order. */
function cut(rows: readonly MapRow[], cards: readonly CardId[]): readonly MapRow[] {
  return rows.map(({ who, cells }) => {
    const byCard = new Map(cells.map((cell) => [cell.card, cell]));
    return { who, cells: cards.flatMap((card) => byCard.get(card) ?? []) };
  });
}

function seekable(text: string): string {
  return text.trim().toLowerCase();
}

function isCalled({ who }: MapRow, text: string): boolean {
  const name = nameOf(who).toLowerCase();
  return name.startsWith(text) || name.includes(` ${text}`);
}

function isNamed(id: CardId, text: string): boolean {
  return (
    lettersShown(id).startsWith(text.replace('_', '–').replace('-', '–')) ||
    (text.length > 2 && cardName(id).toLowerCase().includes(text))
  );
}
