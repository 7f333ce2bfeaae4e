import { expect, it } from 'vitest';
import { forgetCopies, lastCopyOf, noteCopy } from './last-copy.ts';

it('knows of each class its own last copy, until the class is deleted', () => {
  expect(lastCopyOf('a')).toBeNull();
  noteCopy(['a', 'b'], '2026-10-05');
  noteCopy(['b'], '2026-10-19');
  expect([lastCopyOf('a'), lastCopyOf('b')]).toEqual(['2026-10-05', '2026-10-19']);
  forgetCopies('b');
  expect([lastCopyOf('a'), lastCopyOf('b')]).toEqual(['2026-10-05', null]);
});
