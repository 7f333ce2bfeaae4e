import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cuss } from 'cuss';
import { describe, expect, test } from 'vitest';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import { commonWords, pronunciations } from './common-words.ts';
import { parseHarmlessList, parseScreenList } from './list.ts';

const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const rows = parseScreenList(read('list.tsv'));
const harmless = parseHarmlessList(read('harmless.tsv'));
const cleared = read('cleared.tsv')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split('\t')[0] as string);
const listed = new Map(rows.map((row) => [row.spelling, row]));
const screen = createWordScreen(SCREEN_DATA);

describe('the reviewed lists', () => {
  test('hold each spelling once, and no spelling on two lists', () => {
    expect(listed.size).toBe(rows.length);
    const fit = [...cleared, ...harmless.map(({ spelling }) => spelling)];
    expect(fit.filter((spelling) => listed.has(spelling))).toEqual([]);
    expect(new Set(cleared).size).toBe(cleared.length);
  });

  test('stop at least 500 spellings and ask about at least 400', () => {
    const asks = rows.filter(({ severity }) => severity === 'ask').length;
    expect(rows.length - asks).toBeGreaterThanOrEqual(500);
    expect(asks).toBeGreaterThanOrEqual(400);
  });

  test('judge each row as it says', () => {
    const wrong = rows.flatMap(({ spelling, sounds, severity }, place) => {
      const wanted = severity === 'ask' ? 'ask' : 'stop';
      const { verdict } = screen.judge(spelling, sounds[0] ?? []);
      return verdict === wanted || verdict === 'stop' ? [] : [[place, verdict, wanted]];
    });
    expect(wrong).toEqual([]);
  });

  test('leave what was weighed and found fit, and what is harmless, clear', () => {
    const fit = [
      ...harmless,
      ...cleared.map((spelling) => ({ spelling, sounds: pronunciations(spelling) })),
    ];
    const wrong = fit.flatMap(({ spelling, sounds }) =>
      sounds.filter((said) => screen.judge(spelling, said).verdict !== 'clear').map(() => spelling),
    );
    expect(wrong).toEqual([]);
  });
});

describe('the public lists are inputs', () => {
  const naughty: { readonly en: readonly string[] } = createRequire(import.meta.url)(
    'naughty-words',
  );
  const common = new Set(commonWords([10, 20, 35, 40, 50]).map(({ word }) => word));

  test('every English word of theirs was listed, weighed, or is caught by a listed one', () => {
    const known = new Set([...cleared, ...harmless.map(({ spelling }) => spelling)]);
    const missed = [...Object.keys(cuss), ...naughty.en].filter(
      (word) =>
        common.has(word) &&
        !known.has(word) &&
        pronunciations(word).some((said) => screen.judge(word, said).verdict === 'clear'),
    );
    expect(missed).toEqual([]);
  });
});

describe('common English words (SCOWL sizes 10 to 35 as the CMU dictionary says them)', () => {
  const words = commonWords([10, 20, 35]);
  const hidden = words.flatMap(({ word, said }) => {
    const verdicts = said.map((sounds) => screen.judge(word, sounds).verdict);
    if (verdicts.includes('stop')) return [{ word, verdict: 'stop' }];
    return verdicts.includes('ask') ? [{ word, verdict: 'ask' }] : [];
  });
  const starts = [...listed.keys()].filter((spelling) => spelling.length > 2);
  /** Begins like a listed word, give or take its last letter: an ending or a compound of it. */
  const belongs = (word: string) =>
    starts.some((spelling) => word.startsWith(spelling) || word.startsWith(spelling.slice(0, -1)));

  test('are at most 1% stopped and 3% hidden, the listed ones included', () => {
    const stopped = hidden.filter(({ verdict }) => verdict === 'stop').length;
    expect(stopped / words.length).toBeLessThanOrEqual(0.01);
    expect(hidden.length / words.length).toBeLessThanOrEqual(0.03);
  });

  test('are hidden only if they are listed, or an ending or compound of a listed word', () => {
    expect(hidden.filter(({ word }) => !belongs(word))).toEqual([]);
  });
});
