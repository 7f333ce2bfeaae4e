import { type ChildId, childId, groupId } from '../../core/ids.ts';
import { type CardId, isCardId } from '../../core/language/card-id.ts';
import type { Who } from '../../core/learners/estimate.ts';
import { linkTo } from './route.ts';

/** What the sheet beside the class map tells of: a child or group, with one of its cards or with all. */
export interface OpenedSheet {
  readonly who: Who;
  readonly card: CardId | null;
}

/** What the screen is asked to show: the class map and what is open beside it, a group, suggested groups, or one child. */
export type KnownView =
  | { readonly of: 'map'; readonly open: OpenedSheet | null }
  | { readonly of: 'group' | 'groups' }
  | { readonly of: 'child'; readonly id: ChildId; readonly card: CardId | null };

/** Reads what an address asks for; the class map when it asks for nothing known. */
export function parseView(query: string): KnownView {
  const asked = new URLSearchParams(query);
  const card = cardIn(asked.get('card'));
  const id = asked.get('child');
  if (id !== null) return { of: 'child', id: childId(id), card };
  const show = asked.get('show');
  if (show === 'group' || show === 'groups') return { of: show };
  const at = asked.get('at');
  if (at === null) return { of: 'map', open: null };
  const who: Who =
    asked.get('whose') === 'group'
      ? { of: 'group', id: groupId(at) }
      : { of: 'child', id: childId(at) };
  return { of: 'map', open: { who, card } };
}

/** The address that asks for it. */
export function linkToView(view: KnownView): string {
  const { of } = view;
  if (of === 'child') return linkTo('known', makeQuery({ child: view.id, ...cardOf(view) }));
  if (of !== 'map') return linkTo('known', makeQuery({ show: of }));
  if (view.open === null) return linkTo('known');
  const { who } = view.open;
  const ofGroup: Readonly<Record<string, string>> = who.of === 'group' ? { whose: 'group' } : {};
  return linkTo('known', makeQuery({ at: who.id, ...ofGroup, ...cardOf(view.open) }));
}

function cardOf({ card }: { readonly card: CardId | null }): Readonly<Record<string, string>> {
  return card === null ? {} : { card };
}

function cardIn(text: string | null): CardId | null {
  return text !== null && isCardId(text) ? text : null;
}

function makeQuery(fields: Readonly<Record<string, string>>): string {
  return new URLSearchParams(fields).toString();
}
