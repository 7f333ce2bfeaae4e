import { expect, test } from 'vitest';
import { builtLexicon } from '../test/built-lexicon.ts';
import { OWN_MEANINGS } from './own-meanings.ts';

const words = [...OWN_MEANINGS.keys()];

test('our own meanings are of listed words, sorted, each once', () => {
  expect(words).toEqual([...new Set(words)].sort());
  expect(words.filter((word) => builtLexicon.indexOf(word) < 0)).toEqual([]);
  expect(words.length).toBeGreaterThan(1200);
});

test('each is short, whole, and does not explain a word by itself', () => {
  for (const [word, meaning] of OWN_MEANINGS) {
    expect(meaning.length, word).toBeLessThanOrEqual(60);
    expect(meaning, word).not.toMatch(/…|\.$/);
    expect(meaning, word).not.toMatch(new RegExp(`\\b${word}`, 'i'));
  }
});
