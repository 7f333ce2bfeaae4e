import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { check } from './check.ts';
import { Failure } from './failure.ts';

const folder = mkdtempSync(join(tmpdir(), 'sweepline-check-'));
afterAll(() => rmSync(folder, { recursive: true }));

function fileOf(value: unknown): string {
  const path = join(folder, 'reading.json');
  writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value));
  return path;
}

const made = JSON.parse(
  check(['make', '--taught', 'step:24', '--seed', '7', '--items', '12', '--json']),
);

describe('check', () => {
  it('makes a form of words at sight, and scores it', () => {
    const args = ['--taught', 'word:was,word:said', '--seed', '1', '--items', '4', '--json'];
    const form = JSON.parse(check(['make', '--kind', 'sight-words', ...args]));
    expect(form.items.map(({ text }: { text: string }) => text).sort()).toEqual([
      'said',
      'said',
      'was',
      'was',
    ]);
    const marks = [{ at: 0, kind: 'wrong', cards: [1], said: 'saw' }];
    const scored = JSON.parse(check(['score', fileOf({ ...form, marks }), '--json']));
    expect([scored.right, scored.asked]).toEqual([3, 4]);
  });

  it('makes a form with the promised keys, the same for the same seed', () => {
    expect(Object.keys(made).sort()).toEqual(['hardness', 'items', 'kind', 'offBy', 'seed']);
    expect(made.items).toHaveLength(12);
    expect(Object.keys(made.items[0]).sort()).toEqual(['cards', 'sounds', 'text']);
    const again = ['make', '--taught', 'step:24', '--seed', '7', '--items', '12', '--json'];
    expect(JSON.parse(check(again))).toEqual(made);
    const letters = JSON.parse(
      check([
        'make',
        '--taught',
        'a,m,s',
        '--seed',
        '1',
        '--items',
        '6',
        '--kind',
        'letter-sounds',
        '--json',
      ]),
    );
    expect(
      letters.items
        .map(({ text }: { text: string }) => text)
        .sort()
        .join(''),
    ).toBe('aammss');
  });

  it('prints the rows of the page that the child reads', () => {
    const printed = check(['make', '--taught', 'step:24', '--seed', '7', '--items', '12']);
    const texts = made.items.map(({ text }: { text: string }) => text);
    const rows = printed.split('\n').slice(0, 3);
    expect(rows).toEqual([
      texts.slice(0, 5).join('  '),
      texts.slice(5, 10).join('  '),
      texts.slice(10).join('  '),
    ]);
  });

  it('scores what it made, with what was marked', () => {
    const marks = [
      { at: 0, kind: 'wrong', cards: [1], said: 'dit' },
      { at: 1, kind: 'self-corrected' },
      { at: 11, kind: 'hesitated' },
    ];
    const file = fileOf({ ...made, marks, reached: 10, seconds: 60 });
    const score = JSON.parse(check(['score', file, '--json']));
    expect(score).toMatchObject({ asked: 10, right: 9, accuracy: 0.9, rightPerMinute: 9 });
    expect(score.soundsAsked - score.soundsRight).toBe(made.items[0].cards[0] === 'qu=K+W' ? 2 : 1);
    expect(score.missed).toEqual([
      { at: 0, text: made.items[0].text, kind: 'wrong', cards: [1], said: 'dit' },
    ]);
    expect(score.note).toContain('not a diagnosis');
    expect(check(['score', file])).toContain('not a diagnosis');
  });

  it('says what two checks mean beside each other', () => {
    const before = join(folder, 'before.json');
    const marks = made.items.map((_: unknown, at: number) => ({ at, kind: 'wrong' }));
    writeFileSync(before, JSON.stringify({ ...made, marks }));
    const now = fileOf({ ...made, marks: [] });
    const args = ['score', now, '--before', before];
    expect(JSON.parse(check([...args, '--json'])).comparison).toEqual({
      code: 'more',
      by: 12,
      asked: 12,
      least: 4,
    });
    expect(check(args)).toContain('12 of 12 more right than before, more than chance.');
    const letters = ['make', '--taught', 'a,m', '--seed', '1', '--kind', 'letter-sounds', '--json'];
    writeFileSync(before, check(letters));
    expect(() => check(args)).toThrow('both are of one kind');
  });

  it.each([
    ['no command', ['mark'], 'check make'],
    ['no seed', ['make', '--taught', 'step:24'], '--seed'],
    [
      'an unknown kind',
      ['make', '--taught', 'a', '--seed', '1', '--kind', 'words'],
      'nonsense-words',
    ],
    ['no file', ['score'], 'reading.json'],
  ])('tells what to do: %s', (_, args, hint) => {
    expect(() => check(args)).toThrow(Failure);
    expect(() => check(args)).toThrow(hint);
  });

  it.each([
    ['no JSON', '{', 'not JSON'],
    ['no items', {}, 'check make'],
    ['a mark outside', { ...made, marks: [{ at: 12, kind: 'wrong' }] }, 'mark 1'],
    ['a mark of no kind', { ...made, marks: [{ at: 0, kind: 'bad' }] }, 'self-corrected'],
    [
      'a card that is not there',
      { ...made, marks: [{ at: 0, kind: 'wrong', cards: [9] }] },
      'card',
    ],
    ['too many reached', { ...made, reached: 13 }, 'reached'],
    ['no time', { ...made, seconds: 0 }, 'seconds'],
    ['a row outside', { ...made, skippedRows: [{ from: 10, count: 10 }] }, 'skipped row'],
    ['an unknown card', { items: [{ text: 'x', cards: ['zz=Q'], sounds: [] }] }, 'zz=Q'],
  ])('says what in a file cannot be read: %s', (_, value, hint) => {
    expect(() => check(['score', fileOf(value)])).toThrow(hint);
  });
});
