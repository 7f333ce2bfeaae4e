import { describe, expect, it } from 'vitest';
import { digitOf, KEYS, wishOf } from './keys.ts';

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

describe('the digits', () => {
  const digit = (code: string, held: Partial<KeyboardEvent> = {}) =>
    digitOf({ code, shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, ...held });

  it('mark by where their key lies, whatever the keyboard prints on it', () => {
    expect(digit('Digit2')).toEqual({ digit: 2, before: false });
    expect(digit('Numpad9')).toEqual({ digit: 9, before: false });
    expect(digit('KeyA')).toBeNull();
  });

  it('mark the word before with shift, and leave Ctrl, Alt and Meta to the browser', () => {
    expect(digit('Digit1', { shiftKey: true })).toEqual({ digit: 1, before: true });
    expect(digit('Digit1', { ctrlKey: true })).toBeNull();
  });
});

describe('the sheet of keys', () => {
  it('gives every key one meaning', () => {
    const keys = KEYS.flatMap((key) => key.keys);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('knows what clickers send: page down, page up, a full stop, F5 and escape', () => {
    expect(['PageDown', 'PageUp', '.', 'F5', 'Escape'].map((key) => wishOf(press(key)))).toEqual([
      'next',
      'back',
      'pause',
      'show',
      'leave',
    ]);
  });
});
