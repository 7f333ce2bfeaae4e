import { describe, expect, it } from 'vitest';
import type { CardReading, Reading } from '../core/language/reading.ts';
import { builtLexicon } from './built-lexicon.ts';
import { dictionaryForms } from './dictionary-forms.ts';
import { readFixture } from './fixture.ts';

/**
 * How often the patterns of syllable division hold among our two-syllable words, beside two counts:
 * Kearns 2020 (the sound of the first vowel, in words of grades 1 to 8) and a count over NETtalk
 * (the divisions of a dictionary). Ours count each dictionary form once. Divisions hold to NETtalk
 * within five points, vowels to Kearns within ten. Only rows for two syllables are used: for longer
 * words the two disagree with each other. docs/engine.md has all figures and says what differs.
 */
const DIVISION_WITHIN = 5;
const VOWEL_WITHIN = 10;

/** What is said of one word: its pattern, where it divides, how its first vowel sounds. */
interface Pattern {
  readonly letters: 'VCV' | 'VCCV';
  readonly division: string;
  readonly vowel: 'short' | 'long' | 'schwa' | 'r' | 'other';
}

const patterns = dictionaryForms
  .filter((index) => builtLexicon.syllableCount(index) === 2)
  .flatMap((index) => patternOf(builtLexicon.readings(index)[0] as Reading) ?? []);

describe('two-syllable words, beside the divisions of NETtalk', () => {
  const rows = readFixture('nettalk-syllables.tsv').filter(
    ({ words, measure = '' }) => words === '2 syllables' && measure.includes('/'),
  );

  it('has five rows to compare, and words enough', () => {
    expect(rows.length).toBe(5);
    expect(count({ letters: 'VCV' })).toBeGreaterThan(1000);
    expect(count({ letters: 'VCCV' })).toBeGreaterThan(2000);
  });

  it.each(rows)('$pattern divided $measure: $percent%', ({ pattern, measure = '', percent }) => {
    const letters = pattern as Pattern['letters'];
    const division = measure.replace('dictionary division ', '');
    const ours = (100 * count({ letters, division })) / count({ letters });
    expect(Math.abs(ours - Number(percent))).toBeLessThanOrEqual(DIVISION_WITHIN);
  });
});

describe('two-syllable words, beside Kearns 2020', () => {
  const rows = readFixture('kearns-2020.tsv').filter(({ words }) => words === 'bisyllabic');

  it('has two rows to compare', () => {
    expect(rows.length).toBe(2);
  });

  it.each(rows)('$pattern with $expected: $percent%', ({ pattern, expected = '', percent }) => {
    const letters = pattern === 'V|CV' ? 'VCV' : 'VCCV';
    const vowel = expected.endsWith('long') ? 'long' : 'short';
    const ours = (100 * count({ letters, vowel })) / count({ letters });
    expect(Math.abs(ours - Number(percent))).toBeLessThanOrEqual(VOWEL_WITHIN);
  });
});

function count(wanted: Partial<Pattern>): number {
  return patterns.filter((pattern) =>
    Object.entries(wanted).every(([key, value]) => pattern[key as keyof Pattern] === value),
  ).length;
}

/**
 * The first vowel letter alone, then one or two consonant letters and a vowel letter; no digraph
 * between, and a division that falls among them. Null for other words (*rain·bow*, *safe·ty*).
 */
function patternOf({ word, cards, syllables }: Reading): Pattern | null {
  const match = /^(y|[^aeiouy]*qu|[^aeiouy]*)[aeiouy]([^aeiouy]{1,2})[aeiouy]/.exec(word);
  if (!match) return null;
  const [, onset = '', between = ''] = match;
  if (/ch|sh|th|ph|wh|ck|gh/.test(between)) return null;
  const first = cards.find(({ letters }) => letters.includes(onset.length));
  const kept = (syllables[1]?.from ?? 0) - onset.length - 1;
  if (!first || kept < 0 || kept > between.length) return null;
  const letters = between.length === 1 ? 'VCV' : 'VCCV';
  const division = `V${'C'.repeat(kept)}/${'C'.repeat(between.length - kept)}V`;
  return { letters, division, vowel: vowelOf(first) };
}

function vowelOf({ phonemes }: CardReading): Pattern['vowel'] {
  const sounds = phonemes.join(' ');
  if (/^ER|R$/.test(sounds)) return 'r';
  if (/^AX/.test(sounds)) return 'schwa';
  if (/^(AE|EH|IH|AA|AO|AH|UH)$/.test(sounds)) return 'short';
  return /^(Y )?(EY|IY|AY|OW|UW)$/.test(sounds) ? 'long' : 'other';
}
