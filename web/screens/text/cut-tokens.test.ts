import { expect, it } from 'vitest';
import { tokensOf } from '../../../core/texts/tokens.ts';
import { cutTokens, runsOf } from './cut-tokens.ts';

const tokens = tokensOf('The cat sat. The ship sank!');
const text = (all: readonly { readonly text: string }[]) => all.map((one) => one.text).join('');

it('a text is cut before a word, never within', () => {
  expect(text(cutTokens(tokens, 3))).toBe('The cat sat. ');
  expect(text(cutTokens(tokens, 6))).toBe('The cat sat. The ship sank!');
  expect(text(cutTokens(tokens, 60))).toBe('The cat sat. The ship sank!');
});

it('runs joined give back the text, blocked words alone', () => {
  const runs = runsOf(tokens, (word) => word === 'ship');
  expect(text(runs)).toBe('The cat sat. The ship sank!');
  expect(runs.filter(({ blocked }) => blocked !== null)).toEqual([
    { text: 'ship', blocked: 'ship' },
  ]);
});
