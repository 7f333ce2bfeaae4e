import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { board } from './board.ts';
import { check } from './check.ts';
import { sheet } from './sheet.ts';
import { spell } from './spell.ts';
import { wrote } from './wrote.ts';

describe('--accent', () => {
  it('says how a class says and spells a word', () => {
    expect(spell(['bath', '--accent', 'southern-british'])).toBe('bath\n  b-(a)-th  /bɑːθ/');
    const [colour] = JSON.parse(spell(['colour', '--accent', 'southern-british', '--json']));
    expect(colour.readings[0]).toMatchObject({ said: '/kʌlə/', sounds: 'K AH L ER' });
  });

  it('hears what a child wrote as the class says it', () => {
    expect(wrote(['pen=pin', '--accent', 'pin-pen'])).toContain('how we say it here');
    expect(wrote(['pen=pin'])).toContain('e not heard');
  });

  it('shows no nonsense on a board or in a check that is a word in this mouth', () => {
    // Where pin and pen are alike, chen is chin.
    const taught = ['--taught', 'a,e,i,m,t,b,p,sh,ch,th,l,r,n,k', '--json'];
    const lay = (...accent: string[]): string[] =>
      JSON.parse(board([...taught, '--pin', 'ch,e,n', ...accent])).words.nonsense;
    expect(lay()).toContain('chen');
    expect(lay('--accent', 'pin-pen')).not.toContain('chen');
    const read = (...accent: string[]): string[] =>
      JSON.parse(check(['make', '--items', '300', '--seed', '1', ...taught, ...accent])).items.map(
        ({ text }: { text: string }) => text,
      );
    expect(read()).toContain('chen');
    expect(read('--accent', 'pin-pen')).not.toContain('chen');
  });

  it('knows by heart what our order teaches so, as the class spells it', () => {
    const form = ['make', '--taught', 'step:127', '--kind', 'sight-words', '--items', '300'];
    const asked = (...accent: string[]): string[] =>
      JSON.parse(check([...form, '--seed', '1', '--json', ...accent])).items.map(
        ({ text }: { text: string }) => text,
      );
    expect(asked('--accent', 'southern-british')).toEqual(
      expect.arrayContaining(['colour', 'favourite', 'honour']),
    );
    expect(asked()).toEqual(expect.arrayContaining(['color', 'favorite', 'honor']));
  });

  it('spells and writes sounds on paper as the class does', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'accents-'));
    const printed = async (...accent: string[]) => {
      const file = join(folder, 'check.pdf');
      const form = ['check', '--taught', 'a,ai,m,t,s,r,n,p', '--seed', '1', '--items', '12'];
      await sheet([...form, '-o', file, ...accent]);
      return readFileSync(file);
    };
    const american = await printed();
    expect(await printed()).toEqual(american);
    expect(await printed('--accent', 'southern-british')).not.toEqual(american);
  });

  it('names the habits where one is not known', () => {
    expect(() => spell(['bath', '--accent', 'martian'])).toThrow(/cot-caught.*southern-british/);
  });
});
