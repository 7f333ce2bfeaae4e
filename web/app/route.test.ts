import { describe, expect, it } from 'vitest';
import { linkTo, parseScreen, SCREENS } from './route.ts';

describe('addresses', () => {
  it.each(SCREENS)('lead to the screen they name: %s', (screen) => {
    expect(parseScreen(linkTo(screen))).toBe(screen);
  });

  it.each(['', '#', '#/', '#/nothing', '#/constructor'])(
    'that name no screen lead to none: %j',
    (hash) => {
      expect(parseScreen(hash)).toBeNull();
    },
  );
});
