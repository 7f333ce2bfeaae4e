import { describe, expect, it } from 'vitest';
import { wishOf } from './keys.ts';

function press(key: string, held: Partial<KeyboardEvent> = {}): KeyboardEvent {
  return { key, ctrlKey: false, altKey: false, metaKey: false, ...held } as KeyboardEvent;
}

describe('the keys of the stage', () => {
  it.each([' ', 'ArrowRight', 'PageDown', 'Enter'])(
    'goes on by %j, as people and clickers press it',
    (key) => {
      expect(wishOf(press(key))).toBe('next');
    },
  );

  it.each(['ArrowLeft', 'PageUp'])('goes back by %j', (key) => {
    expect(wishOf(press(key))).toBe('back');
  });

  it.each(['b', 'B', '.'])('blanks the sheet by %j, the blank key of clickers', (key) => {
    expect(wishOf(press(key))).toBe('pause');
  });

  it('leaves keys held with Ctrl, Alt or Meta to the browser', () => {
    expect(wishOf(press('s', { ctrlKey: true }))).toBeNull();
    expect(wishOf(press('ArrowLeft', { altKey: true }))).toBeNull();
    expect(wishOf(press('t', { metaKey: true }))).toBeNull();
  });

  it('does nothing for other keys', () => {
    expect(wishOf(press('q'))).toBeNull();
    expect(wishOf(press('Tab'))).toBeNull();
  });
});
