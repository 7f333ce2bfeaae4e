import { describe, expect, it } from 'vitest';
import { linkTo, parseQuery, parseScreen } from './route.ts';
import { SCREEN_NAMES } from './screens.ts';

describe('addresses', () => {
  it.each(SCREEN_NAMES)('lead to the screen they name: %s', (screen) => {
    expect(parseScreen(linkTo(screen))).toBe(screen);
    expect(parseQuery(linkTo(screen))).toBe('');
  });

  it('carry a question to their screen, whatever signs it has', () => {
    for (const query of ['v=1&piles=b.d,a_e,t&shape=closed', '?', 'a?b/c#d', 'line\nbreak']) {
      expect(parseScreen(linkTo('board', query))).toBe('board');
      expect(parseQuery(linkTo('board', query))).toBe(query);
    }
  });

  it.each(['', '#', '#/', '#/nothing', '#/constructor', '#/?board', '#?/board'])(
    'that name no screen lead to none: %j',
    (hash) => {
      expect(parseScreen(hash)).toBeNull();
    },
  );
});
