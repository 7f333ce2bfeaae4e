import { expect, it } from 'vitest';
import { childId, groupId } from '../../core/ids.ts';
import { type KnownView, linkToView, parseView } from './known-view.ts';
import { parseQuery } from './route.ts';

it.each<KnownView>([
  { of: 'map', open: null },
  { of: 'map', open: { who: { of: 'child', id: childId('child 1&2') }, card: null } },
  { of: 'map', open: { who: { of: 'group', id: groupId('g') }, card: 'a_e=EY' } },
  { of: 'group' },
  { of: 'groups' },
  { of: 'child', id: childId('child 1&2'), card: null },
  { of: 'child', id: childId('x'), card: 'a_e=EY' },
])('an address leads back to what it was made for: %o', (view) => {
  expect(parseView(parseQuery(linkToView(view)))).toEqual(view);
});

it.each(['', 'show=nothing', 'card=a', '?', 'show'])('%j asks for the class map', (query) => {
  expect(parseView(query)).toEqual({ of: 'map', open: null });
});
