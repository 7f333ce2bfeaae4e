import { describe, expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { CHECK_KINDS, type CheckForm, type CheckKind } from './check-form.ts';
import { nextForm } from './next-form.ts';

const screen = createWordScreen(SCREEN_DATA);
const contextAt = (step: number) => ({ taught: taughtUpTo(SEQUENCE, step), lexicon, screen });
const textOf = ({ items }: CheckForm) => items.map(({ text }) => text).join(' ');

function read(kind: CheckKind, times: number, count: number, step: number) {
  const forms: CheckForm[] = [];
  for (let time = 0; time < times; time++) {
    const spec = { kind, count, child: 'mina', own: forms, all: forms };
    forms.push(nextForm(spec, contextAt(step)).form);
  }
  return forms;
}

describe('the next form of a child', () => {
  test.each(CHECK_KINDS)(
    'of %s is the same until it was read, and never the same twice',
    (kind) => {
      const forms = read(kind, 8, 20, 40);
      expect(new Set(forms.map(textOf)).size).toBe(8);
      expect(read(kind, 1, 20, 40)).toEqual(forms.slice(0, 1));
    },
  );

  test('asks for other nonsense words while there are enough', () => {
    const words = read('nonsense-words', 6, 30, 60).flatMap(({ items }) =>
      items.map(({ text }) => text),
    );
    expect(new Set(words).size).toBe(180);
  });

  test('is another one for another child', () => {
    const of = (child: string) =>
      textOf(
        nextForm({ kind: 'letter-sounds', count: 30, child, own: [], all: [] }, contextAt(30)).form,
      );
    expect(of('mina')).not.toBe(of('tariq'));
  });

  test('comes again only when a few letters allow no other', () => {
    expect(new Set(read('letter-sounds', 12, 2, 1).map(textOf)).size).toBeLessThan(12);
  });
});
