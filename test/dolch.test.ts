import { describe, expect, it } from 'vitest';
import { soundLabel } from '../core/language/phonemes.ts';
import type { Reading } from '../core/language/reading.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { obstacles } from '../core/words/decodable.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * The 220 words of Dolch 1936 and 1948 (three of the five levels from memory): from which step of
 * our order each can be read by its cards, at which it is learned by heart, and which part of it no
 * rule gives. The golden file is read by eye when it changes.
 */
const rows = readFixture('dolch-220.tsv').map(({ word = '', level = '' }) => ({
  level,
  word: word.toLowerCase(),
}));

const taughtByCards = SEQUENCE.steps.map(({ number }) => ({
  ...taughtUpTo(SEQUENCE, number),
  irregularWords: new Set<string>(),
}));

describe('Dolch’s words', () => {
  it('are 220, each of them once', () => {
    expect(new Set(rows.map(({ word }) => word)).size).toBe(220);
  });

  it('can each be read from some step, by cards or by heart', () => {
    const never = rows.filter(
      ({ word }) => stepByCards(word) === null && stepByHeart(word) === null,
    );
    expect(never).toEqual([]);
  });

  it('are by heart only where a part is irregular, or where the rules come much later', () => {
    for (const { word } of rows) {
      const cards = stepByCards(word);
      const heart = stepByHeart(word);
      if (cards !== null && heart !== null) expect(heart, word).toBeLessThan(cards);
    }
  });

  it('stand as last read', async () => {
    const levels = [...new Set(rows.map(({ level }) => level))];
    const text = levels.flatMap((level) => [
      `${level}`,
      ...rows.filter((row) => row.level === level).map(({ word }) => lineOf(word)),
      '',
    ]);
    await expect(text.join('\n')).toMatchFileSnapshot('goldens/dolch.txt');
  });
});

function lineOf(word: string): string {
  const reading = readingOf(word);
  const cards = stepByCards(word);
  const heart = stepByHeart(word);
  const steps = [
    cards === null ? '' : `by its cards from step ${cards}`,
    heart === null ? '' : `by heart from step ${heart}`,
  ].filter(Boolean);
  const irregular = reading?.cards.filter((card) => !card.regular) ?? [];
  const parts = irregular.map((card) => `${card.grapheme} ${soundLabel(card.phonemes)}`).join(', ');
  const shown = reading?.cards.map(({ grapheme }) => grapheme).join(' ') ?? '–';
  const line = `${word.padEnd(10)}${shown.padEnd(18)}${steps.join('; ')}`;
  return parts === '' ? line : `${line}; irregular: ${parts}`;
}

function readingOf(word: string): Reading | undefined {
  const index = builtLexicon.indexOf(word);
  return index < 0 ? undefined : builtLexicon.readings(index)[0];
}

/** The first step at which its cards and habits are taught and no part is irregular, or null. */
function stepByCards(word: string): number | null {
  const index = builtLexicon.indexOf(word);
  const at =
    index < 0
      ? -1
      : taughtByCards.findIndex((taught) => obstacles(index, builtLexicon, taught).length === 0);
  return at < 0 ? null : (SEQUENCE.steps[at]?.number ?? null);
}

function stepByHeart(word: string): number | null {
  return stepOf(SEQUENCE, { kind: 'word', word });
}
