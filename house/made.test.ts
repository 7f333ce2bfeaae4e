import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ensureMade } from './made.mjs';
import { fromRoot } from './root.mjs';

let place: string;
let makes: number;

beforeEach(() => {
  mkdirSync(fromRoot('node_modules/.cache'), { recursive: true });
  place = mkdtempSync(fromRoot('node_modules/.cache/made-'));
  makes = 0;
  write('source/a.ts', 'a');
  write('source/deeper/b.ts', 'b');
});

afterEach(() => rmSync(place, { recursive: true }));

function write(path: string, content: string): void {
  mkdirSync(join(place, path, '..'), { recursive: true });
  writeFileSync(join(place, path), content);
}

const named = (path: string) => relative(fromRoot(), join(place, path));

const ensure = (make = () => write('dist/thing', 'made')) =>
  ensureMade({
    from: [named('source'), named('absent')],
    files: [named('dist/thing')],
    stamp: named('dist/made-from.txt'),
    make: async () => {
      makes++;
      make();
    },
  });

describe('a made thing', () => {
  it('is made once while nothing changes', async () => {
    await ensure();
    await ensure();
    expect(makes).toBe(1);
  });

  it.each([
    ['a source changes', () => write('source/deeper/b.ts', 'c')],
    ['a source is added', () => write('source/c.ts', '')],
    ['a source is removed', () => rmSync(join(place, 'source/a.ts'))],
    ['a source gets another name', () => write('source/deeper/../b.ts', 'b')],
    ['the thing is gone', () => rmSync(join(place, 'dist/thing'))],
    ['its stamp is gone', () => rmSync(join(place, 'dist/made-from.txt'))],
  ])('is made again when %s', async (_, change) => {
    await ensure();
    change();
    await ensure();
    expect(makes).toBe(2);
  });

  it('does not depend on tests, notes or what was built', async () => {
    await ensure();
    write('source/a.test.ts', 'test');
    write('source/NOTES.md', 'note');
    write('source/dist/x.js', 'built');
    await ensure();
    expect(makes).toBe(1);
  });

  it('is made again after a make that failed', async () => {
    await ensure();
    write('source/a.ts', 'broken');
    const failing = () => {
      throw new Error('no paper');
    };
    await expect(ensure(failing)).rejects.toThrow('no paper');
    write('source/a.ts', 'a');
    await ensure();
    expect(makes).toBe(3);
  });

  it('says so when the make leaves out a file', async () => {
    await expect(ensure(() => {})).rejects.toThrow('dist/thing');
  });
});
