import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { ScreenVerdict } from './screen.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { parseScreenLine } from './screen-line.ts';
import { createWordScreen } from './word-screen.ts';

/**
 * The evaluation set, see docs/screen.md: labeled by hand before the list was
 * written, split in halves by a hash. The targets are those the project set.
 */
interface Labeled {
  readonly half: 'tuning' | 'held-out';
  readonly label: 'stop' | 'ask' | 'harmless';
  readonly shape: string;
  readonly cards: string;
  readonly sounds: string;
  readonly verdict: ScreenVerdict;
}

const readText = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const screen = createWordScreen(SCREEN_DATA);

const all: readonly Labeled[] = readText('test/fixtures/screen/evaluation.tsv')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('half\t'))
  .map((line) => {
    const [half, label, shape, cards, sounds] = line.split('\t') as [
      string,
      string,
      string,
      string,
      string,
    ];
    const parsed = parseScreenLine(`${cards}\t${sounds}`);
    if ('error' in parsed) throw new Error(parsed.error.message);
    const { verdict } = screen.judge(parsed.line.word, parsed.line.sounds);
    return { half, label, shape, cards, sounds, verdict } as Labeled;
  });
const heldOut = all.filter(({ half }) => half === 'held-out');
const labeled = (label: Labeled['label']) => heldOut.filter((row) => row.label === label);
const share = (part: number, whole: number) => part / whole;

describe('the set', () => {
  test('has at least 600 combinations over every board shape', () => {
    expect(all.length).toBeGreaterThanOrEqual(600);
    const shapes = new Set(all.map(({ shape }) => shape.replace(' nonsense', '')));
    for (const shape of ['cvc', 'ccvc', 'cvcc', 'vce', 'team', 'r', 'open', 'two', 'ending']) {
      expect(shapes).toContain(shape);
    }
  });

  test('is split by a hash of what is judged, not by choice', () => {
    for (const { half, cards, sounds } of all) {
      expect(half).toBe(fnv1a(`${cards}\t${sounds}`) % 2 === 0 ? 'tuning' : 'held-out');
    }
  });
});

describe('the held-out half meets the targets', () => {
  test('at least 99% of distinct stop sounds are stopped', () => {
    const stopped = new Map<string, boolean>();
    for (const { sounds, verdict } of labeled('stop')) {
      stopped.set(sounds, (stopped.get(sounds) ?? true) && verdict === 'stop');
    }
    const right = [...stopped.values()].filter(Boolean).length;
    expect(share(right, stopped.size)).toBeGreaterThanOrEqual(0.99);
  });

  test('at least 97% of stop combinations as spelled are stopped', () => {
    const rows = labeled('stop');
    const right = rows.filter(({ verdict }) => verdict === 'stop').length;
    expect(share(right, rows.length)).toBeGreaterThanOrEqual(0.97);
  });

  test('at most 1% of harmless words are stopped, at most 3% stopped or asked about', () => {
    const rows = labeled('harmless');
    const stopped = rows.filter(({ verdict }) => verdict === 'stop').length;
    const hidden = rows.filter(({ verdict }) => verdict !== 'clear').length;
    expect(share(stopped, rows.length)).toBeLessThanOrEqual(0.01);
    expect(share(hidden, rows.length)).toBeLessThanOrEqual(0.03);
  });

  test('at most 15% of mild words are clear', () => {
    const rows = labeled('ask');
    const clear = rows.filter(({ verdict }) => verdict === 'clear').length;
    expect(share(clear, rows.length)).toBeLessThanOrEqual(0.15);
  });

  test('every failure is told in docs/screen.md', () => {
    const told = readText('docs/screen.md');
    const wrong = heldOut.filter(({ label, verdict }) =>
      label === 'harmless'
        ? verdict !== 'clear'
        : label === 'ask'
          ? verdict === 'clear'
          : verdict !== 'stop',
    );
    expect(wrong.filter(({ cards }) => !told.includes(`\`${cards}\``))).toEqual([]);
  });
});

describe('leaks that were looked for: two parts over two syllables, Spanish, milder slang', () => {
  const rows = readText('test/fixtures/screen/leaks.tsv')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('half\t'))
    .map((line) => {
      const [half, label, cards, sounds] = line.split('\t') as [string, string, string, string];
      const parsed = parseScreenLine(`${cards}\t${sounds}`);
      if ('error' in parsed) throw new Error(parsed.error.message);
      const { verdict } = screen.judge(parsed.line.word, parsed.line.sounds);
      return { half, label, cards, sounds, verdict };
    });

  test('are split by the same hash', () => {
    for (const { half, cards, sounds } of rows) {
      expect(half).toBe(fnv1a(`${cards}\t${sounds}`) % 2 === 0 ? 'tuning' : 'held-out');
    }
  });

  test.each([
    ['stop', 'stopped', 0.95],
    ['ask', 'stopped or asked', 0.75],
    ['harmless', 'clear', 0.99],
  ] as const)('of the held-out half labeled %s, enough are %s', (wanted, _, least) => {
    const asked = rows.filter(({ half, label }) => half === 'held-out' && label === wanted);
    const right = asked.filter(({ verdict }) =>
      wanted === 'ask' ? verdict !== 'clear' : verdict === (wanted === 'stop' ? 'stop' : 'clear'),
    );
    expect(asked.length).toBeGreaterThan(30);
    expect(share(right.length, asked.length)).toBeGreaterThanOrEqual(least);
  });
});

/** FNV-1a, 32 bits (Fowler, Noll & Vo), over ASCII text. */
function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  }
  return hash;
}
