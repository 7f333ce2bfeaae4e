import { signal } from '@preact/signals';
import { type MapRow, shakiest } from '../../../core/facts/class-map.ts';
import type { CardId } from '../../../core/language/card-id.ts';

/** Which cards stand in the map. */
export type Columns = 'latest' | 'shaky' | 'all';

/** Which she wants to see. */
export const columns = signal<Columns>('latest');

/** So many columns fit on a screen and on a sheet of paper. */
const MOST = 24;

/** The cards that a map shows, of those taught in their order: the latest or all, newest first, or those that are shaky. */
export function cardsShown(
  taught: readonly CardId[],
  which: Columns,
  childrenRows: () => readonly MapRow[],
): readonly CardId[] {
  if (which === 'all') return taught.toReversed();
  if (which === 'latest') return taught.slice(-MOST).reverse();
  return shakiest(childrenRows()).slice(0, MOST);
}
