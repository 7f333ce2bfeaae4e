import { expect, it } from 'vitest';
import { classId } from '../../core/ids.ts';
import { forgetCopies, lastCopyOf, noteCopy } from './last-copy.ts';

it('knows of each class its own last copy, until the class is deleted', () => {
  expect(lastCopyOf(classId('a'))).toBeNull();
  noteCopy([classId('a'), classId('b')], '2026-10-05');
  noteCopy([classId('b')], '2026-10-19');
  expect([lastCopyOf(classId('a')), lastCopyOf(classId('b'))]).toEqual([
    '2026-10-05',
    '2026-10-19',
  ]);
  forgetCopies(classId('b'));
  expect([lastCopyOf(classId('a')), lastCopyOf(classId('b'))]).toEqual(['2026-10-05', null]);
});
