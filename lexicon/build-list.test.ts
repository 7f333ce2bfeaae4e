import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cuss } from 'cuss';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Reading } from '../core/language/reading.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { fromRoot } from '../house/root.mjs';
import { readFixture } from '../test/fixture.ts';
import { type BuiltList, buildList } from './build-list.ts';
import { makeReport } from './report.ts';

const naughtyWords = createRequire(import.meta.url)('naughty-words') as {
  readonly en: readonly string[];
};

let built: BuiltList;
let listed: ReadonlySet<string>;
beforeAll(() => {
  built = buildList();
  listed = new Set(built.words.map(({ word }) => word));
});

describe('the built list', () => {
  test('is the same bytes each time: as another process built it from the same sources', () => {
    const hash = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
    const kept = (name: string) => hash(readFileSync(fromRoot('lexicon/dist', name)));
    expect(hash(built.files.words.bytes)).toBe(kept('words.bin'));
    expect(hash(built.files.meanings.bytes)).toBe(kept('meanings.json'));
  });

  test('holds at least 30,000 words, each once', () => {
    expect(built.words.length).toBeGreaterThanOrEqual(30_000);
    expect(listed.size).toBe(built.words.length);
  });

  test('fits in 150 KB, and the meanings in 90 KB, after brotli', () => {
    expect(built.files.words.brotli).toBeLessThanOrEqual(150 * 1024);
    expect(built.files.meanings.brotli).toBeLessThanOrEqual(90 * 1024);
  });

  test('guesses in at most 0.5% of the 5,000 commonest words, and never in the first 1,000', () => {
    const guesses = built.words
      .slice(0, 5000)
      .map(({ word, readings }) => (readings[0]?.fallback ? word : ''));
    expect(guesses.slice(0, 1000).filter(Boolean)).toEqual([]);
    expect(guesses.filter(Boolean).length).toBeLessThanOrEqual(25);
  });

  test('reads back as it was built: every word, band and reading', () => {
    const lexicon = decodeLexicon(built.files.words.bytes);
    expect(lexicon.size).toBe(built.words.length);
    const wrong = built.words.filter(({ word, band, readings }) => {
      const index = lexicon.indexOf(word);
      const ordinary = readings[0] as Reading;
      const same =
        lexicon.word(index) === word &&
        lexicon.band(index) === band &&
        lexicon.cardIds(index).join(' ') === ordinary.cards.map(({ id }) => id).join(' ') &&
        lexicon.syllableCount(index) === ordinary.syllables.length &&
        lexicon.isRegular(index) === ordinary.cards.every(({ regular }) => regular);
      return !same || JSON.stringify(lexicon.readings(index)) !== JSON.stringify(readings);
    });
    expect(wrong.map(({ word }) => word)).toEqual([]);
  });

  test('matches its statistics, read by eye when they change', async () => {
    const report = makeReport(built.words, built.files, built.meanings.size);
    await expect(report).toMatchFileSnapshot('../test/goldens/lexicon-statistics.txt');
  });
});

describe('words a teacher expects', () => {
  /** Dolch 1936 and 1948; three of the five levels from memory. */
  test('every Dolch word is there but the contraction', () => {
    const words = readFixture('dolch-220.tsv').map(({ word = '' }) => word.toLowerCase());
    expect(words.filter((word) => !listed.has(word))).toEqual(["don't"]);
  });

  /** National Curriculum in England, English Appendix 1: Spelling (2013), Years 1 and 2. */
  test('every National Curriculum example is there but contractions, possessives and titles', () => {
    const words = readFixture('nc-appendix1.tsv')
      .flatMap((row) => `${row.example_words} ${row.exceptions_named}`.split(/[\s/,]+/))
      .filter((word) => /^[a-z]+$/i.test(word))
      .map((word) => word.toLowerCase());
    expect(words.length).toBeGreaterThan(400);
    expect(words.filter((word) => !listed.has(word)).sort()).toEqual(['mr', 'mrs']);
  });

  /** Ordinary words that a naive filter would lose, named in the project's brief on word safety. */
  test('ordinary words stay though they look alarming', () => {
    const words = 'but tick class pass wit kill gun fat hell mark will jack rob'.split(' ');
    expect(words.filter((word) => !listed.has(word))).toEqual([]);
  });

  /** Rated by both packages: cuss at its surest, and naughty-words. `butt` and such were reviewed as mild. */
  test('what two independent lists rate as vulgar is not there', () => {
    const both = naughtyWords.en.filter((word) => cuss[word] === 2);
    expect(both.length).toBeGreaterThan(40);
    expect(both.filter((word) => listed.has(word))).toEqual([]);
  });
});

/** From any dictionary; CMUdict lists another sense or a weak form first. */
test.each([
  ['read', 'R IY D', 'R EH D'],
  ['live', 'L IH V', 'L AY V'],
  ['lead', 'L IY D', 'L EH D'],
  ['wind', 'W IH N D', 'W AY N D'],
  ['tear', 'T IH R', 'T EH R'],
])('%s is %s first and keeps %s', (word, ordinary, other) => {
  const lexicon = decodeLexicon(built.files.words.bytes);
  const sounds = lexicon.readings(lexicon.indexOf(word)).map((reading) => reading.sounds.join(' '));
  expect(sounds).toEqual([ordinary, other]);
});

describe('meanings', () => {
  test('are short, and only of listed words', () => {
    const wrong = [...built.meanings].filter(
      ([word, meaning]) => !listed.has(word) || meaning.length > 61 || meaning.length < 3,
    );
    expect(wrong).toEqual([]);
  });

  test('are at hand for plain words of one syllable', () => {
    const missing = 'cat dog fen nib tun gob lug wen vat hut fig bog'
      .split(' ')
      .filter((word) => !built.meanings.has(word));
    expect(missing).toEqual([]);
  });

  test('name nothing that a class should not read', () => {
    const unfit = /\b(sex|sexual|naked|murder|drug|slang|vulgar|kill)\b/;
    expect([...built.meanings].filter(([, meaning]) => unfit.test(meaning))).toEqual([]);
  });
});
