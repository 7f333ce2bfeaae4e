import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { readNewest, readTaught } from './engine.ts';
import { namedFile } from './own-order.ts';

const folder = mkdtempSync(join(tmpdir(), 'own-order-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const said = () => {
  const lines: string[] = [];
  vi.spyOn(process.stderr, 'write').mockImplementation((line) => lines.push(String(line)) > 0);
  return lines;
};

describe('--taught with an order of one’s own', () => {
  const path = file('order.csv', 'm\na\nt – the\nsh\nai');

  test('all of it, or its first steps', () => {
    expect([...readTaught(`@${path}`).correspondences]).toEqual([
      'm=M',
      'a=AE',
      't=T',
      'sh=SH',
      'ai=EY',
    ]);
    const first = readTaught(`@${path}:3`);
    expect([...first.correspondences]).toEqual(['m=M', 'a=AE', 't=T']);
    expect([...first.irregularWords]).toEqual(['the']);
  });

  test('its last step is the newest', () => {
    expect(readNewest(`@${path}:4`)).toEqual(['sh=SH']);
    expect(readNewest(`@${path}`)).toEqual(['ai=EY']);
  });

  test('a list in JSON is still a list', () => {
    const json = file('known.json', '["a", "m"]');
    expect([...readTaught(`@${json}`).correspondences]).toEqual(['a=AE', 'm=M']);
  });

  test('a step beyond the last, or a slip, ends the command and says why', () => {
    expect(() => readTaught(`@${path}:9`)).toThrow('has steps 1 to 5; there is no step 9');
    const slip = file('slip.csv', 'm\nzq');
    expect(() => readTaught(`@${slip}`)).toThrow('Line 2: we know no card or word “zq”');
  });

  test('letters with several sounds are taken in the first, which is said', () => {
    const lines = said();
    const asks = file('asks.csv', 'm\nth');
    expect([...readTaught(`@${asks}`).correspondences]).toEqual(['m=M', 'th=TH']);
    expect(lines.join('')).toContain('th as in thumb or feather?');
    vi.restoreAllMocks();
  });

  test('a file whose name ends in a number is that file', () => {
    const odd = file('order:2', 'm\na\nt');
    expect(namedFile(odd)).toEqual({ path: odd, upTo: null });
  });
});
