import { expect, it } from 'vitest';
import { childId, classId } from '../../core/ids.ts';
import { absent, setAbsent } from './absent.ts';
import { today } from './day.ts';
import { classState, openClass } from './open-class.ts';

it('who is away is away on that day in the log of the class, and has come when that is said', async () => {
  await openClass(classId('absences'));
  setAbsent(childId('tam'), true);
  setAbsent(childId('wren'), true);
  setAbsent(childId('tam'), false);
  expect([...absent.value]).toEqual(['wren']);
  expect(classState.value.calendar.away).toEqual(new Map([[today(), ['wren']]]));
  await openClass(classId('no-absences'));
  expect([...absent.value]).toEqual([]);
});
