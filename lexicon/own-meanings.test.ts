import { expect, test } from 'vitest';
import { buildDrill } from '../core/drills/build-drill.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { builtLexicon } from '../test/built-lexicon.ts';
import { OWN_MEANINGS } from './own-meanings.ts';

const words = [...OWN_MEANINGS.keys()];

test('our own meanings are of listed words, sorted, each once', () => {
  expect(words).toEqual([...new Set(words)].sort());
  expect(words.filter((word) => builtLexicon.indexOf(word) < 0)).toEqual([]);
  expect(words.length).toBeGreaterThanOrEqual(2000);
});

test('each is short, whole, and does not explain a word by itself', () => {
  for (const [word, meaning] of OWN_MEANINGS) {
    expect(meaning.length, word).toBeLessThanOrEqual(60);
    expect(meaning, word).not.toMatch(/…|\.$/);
    expect(meaning, word).not.toMatch(new RegExp(`\\b${word}`, 'i'));
  }
});

test('nearly every real word that a drill shows has one', () => {
  const engine = { lexicon: builtLexicon, screen: createWordScreen(SCREEN_DATA) };
  const shown = [24, 60, 110].flatMap((step) =>
    buildDrill({ taught: taughtUpTo(SEQUENCE, step), seed: 20_000 + step }, engine)
      .run.filter(({ kind }) => kind === 'real')
      .map(({ word }) => word),
  );
  const lacking = shown.filter((word) => !OWN_MEANINGS.has(word));
  expect(shown.length).toBeGreaterThan(40);
  expect(lacking.length / shown.length, lacking.join(' ')).toBeLessThan(0.1);
});
