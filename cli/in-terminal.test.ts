import { expect, it } from 'vitest';
import { type Paced, pacedEach } from '../core/paced.ts';
import { inTerminal } from './in-terminal.ts';

function* ten(): Paced<string> {
  yield* pacedEach(
    Array.from({ length: 10 }, (_, n) => n),
    () => {},
    1,
  );
  return 'read';
}

/** What is written while each look at the clock finds another 100 ms gone. */
function written(isTTY: boolean, each = 100): readonly string[] {
  const all: string[] = [];
  let at = 0;
  const now = () => {
    at += each;
    return at - each;
  };
  expect(inTerminal(ten(), 'Reading …', { isTTY, write: (text) => all.push(text) }, now)).toBe(
    'read',
  );
  return all;
}

it('shows how far long work is, and leaves nothing of it', () => {
  const all = written(true);
  expect(all.slice(0, 2)).toEqual(['\rReading … 40 %', '\rReading … 50 %']);
  expect(all.at(-1)).toBe(`\r${' '.repeat(14)}\r`);
});

it('says nothing of short work, and nothing to a file', () => {
  expect(written(true, 1)).toEqual([]);
  expect(written(false)).toEqual([]);
});
