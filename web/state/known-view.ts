import { type CardId, isCardId } from '../../core/language/card-id.ts';
import { linkTo } from './route.ts';

/** What the screen is asked to show: the class map, a group, suggested groups, or one child. */
export type View =
  | { readonly of: 'map' | 'group' | 'groups' }
  | { readonly of: 'child'; readonly id: string; readonly card: CardId | null };

/** Reads what an address asks for; the class map when it asks for nothing known. */
export function parseView(query: string): View {
  const asked = new URLSearchParams(query);
  const id = asked.get('child');
  if (id !== null) return { of: 'child', id, card: cardIn(asked.get('card')) };
  const show = asked.get('show');
  return show === 'group' || show === 'groups' ? { of: show } : { of: 'map' };
}

/** The address that asks for it. */
export function linkToView(view: View): string {
  if (view.of === 'map') return linkTo('known');
  if (view.of !== 'child') return linkTo('known', makeQuery({ show: view.of }));
  return linkTo('known', makeQuery({ child: view.id, ...(view.card ? { card: view.card } : {}) }));
}

function cardIn(text: string | null): CardId | null {
  return text !== null && isCardId(text) ? text : null;
}

function makeQuery(fields: Readonly<Record<string, string>>): string {
  return new URLSearchParams(fields).toString();
}
