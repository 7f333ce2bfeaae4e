import { describe, expect, it } from 'vitest';
import { spell } from './spell.ts';
import { wrote } from './wrote.ts';

describe('--accent', () => {
  it('says how a class says and spells a word', () => {
    expect(spell(['bath', '--accent', 'southern-british'])).toBe('bath\n  b-a-th  /bɑːθ/');
    const [colour] = JSON.parse(spell(['colour', '--accent', 'southern-british', '--json']));
    expect(colour.readings[0]).toMatchObject({ said: '/kʌlə/', sounds: 'K AH L ER' });
  });

  it('hears what a child wrote as the class says it', () => {
    expect(wrote(['pen=pin', '--accent', 'pin-pen'])).toContain('how we say it here');
    expect(wrote(['pen=pin'])).toContain('e not heard');
  });

  it('names the habits where one is not known', () => {
    expect(() => spell(['bath', '--accent', 'martian'])).toThrow(/cot-caught.*southern-british/);
  });
});
