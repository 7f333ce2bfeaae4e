import { expect, it } from 'vitest';
import { copyName } from './copy-name.ts';

const day = '2026-03-02';

it.each([
  [{ says: null, isLocked: false }, 'sweepline-copy-2026-03-02.jsonl'],
  [{ says: null, isLocked: true }, 'sweepline-copy-2026-03-02-locked.jsonl'],
  [{ says: 'Room 4', isLocked: false }, 'sweepline-room-4-2026-03-02.jsonl'],
  [{ says: '../Málà 4/', isLocked: true }, 'sweepline-ma-la-4-2026-03-02-locked.jsonl'],
  [{ says: '４年', isLocked: false }, 'sweepline-4-2026-03-02.jsonl'],
  [{ says: '***', isLocked: false }, 'sweepline-copy-2026-03-02.jsonl'],
])('a copy of %o is called %s', (spec, name) => {
  expect(copyName({ day, ...spec })).toBe(name);
});
