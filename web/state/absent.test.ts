import { expect, it } from 'vitest';
import { childId } from '../../core/ids.ts';
import { absent, awayOn, setAbsent } from './absent.ts';
import { today } from './day.ts';

it('who is away is away on that day, and has come when that is said', () => {
  setAbsent(childId('tam'), true);
  setAbsent(childId('wren'), true);
  setAbsent(childId('tam'), false);
  expect([...absent.value]).toEqual(['wren']);
  expect(awayOn.value(today())).toEqual(['wren']);
  expect(awayOn.value('2020-01-06')).toEqual([]);
});
