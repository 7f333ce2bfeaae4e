import fc from 'fast-check';
import { expect, test } from 'vitest';
import { growSoundTree } from './sound-tree.ts';

test('holds what a map by the sounds put into one text holds', () => {
  const sounds = fc.array(fc.constantFrom('SH', 'IH', 'P', 'S'), { maxLength: 4 });
  fc.assert(
    fc.property(fc.array(fc.tuple(sounds, fc.integer())), sounds, (entries, asked) => {
      const tree = growSoundTree(entries);
      const plain = new Map(entries.map(([row, value]) => [row.join(' '), value]));
      for (const row of [asked, ...entries.map(([kept]) => kept)]) {
        expect(tree.get(row)).toBe(plain.get(row.join(' ')));
      }
    }),
  );
});
