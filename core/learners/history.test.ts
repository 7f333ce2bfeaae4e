import { describe, expect, it } from 'vitest';
import { childId, groupId } from '../ids.ts';
import type { Who } from './estimate.ts';
import { historiesOf } from './history.ts';
import type { Observation } from './observation.ts';

const word: Observation = {
  day: 3,
  child: childId('Mina'),
  groups: [groupId('reds'), groupId('all')],
  task: 'read',
  cards: ['m=M', 'a=AE', 't=T'],
  right: true,
  broke: null,
  heard: null,
};
const mina = { of: 'child', id: childId('Mina') } as const;

describe('the days of a card', () => {
  it('count how often it is known how it went, and how often it went wrong', () => {
    const histories = historiesOf(
      [word, { ...word, right: false, broke: 2 }, { ...word, day: 1 }],
      'read',
      mina,
    );
    expect(histories.get('a=AE')).toEqual([
      { day: 1, asked: 1, missed: 0, unclear: 0 },
      { day: 3, asked: 2, missed: 1, unclear: 0 },
    ]);
    expect(histories.get('m=M')?.[1]).toEqual({ day: 3, asked: 2, missed: 0, unclear: 0 });
    expect(histories.get('t=T')?.[1]).toEqual({ day: 3, asked: 1, missed: 0, unclear: 0 });
  });

  it('keep apart what was not said: any of the cards may have been what broke', () => {
    const histories = historiesOf([{ ...word, right: false }], 'read', mina);
    expect(histories.get('t=T')).toEqual([{ day: 3, asked: 0, missed: 0, unclear: 1 }]);
    const alone = historiesOf([{ ...word, cards: ['m=M'], right: false }], 'read', mina);
    expect(alone.get('m=M')).toEqual([{ day: 3, asked: 1, missed: 1, unclear: 0 }]);
  });

  it('are in order and each once, however the readings come', () => {
    const days = [3, 1, 2, 1, 3, 2, 3];
    const all = days.map((day) => ({ ...word, day }));
    expect(historiesOf(all, 'read', mina).get('m=M')).toEqual([
      { day: 1, asked: 2, missed: 0, unclear: 0 },
      { day: 2, asked: 2, missed: 0, unclear: 0 },
      { day: 3, asked: 3, missed: 0, unclear: 0 },
    ]);
  });

  it('are days too on which a card came after the one that broke', () => {
    const histories = historiesOf([{ ...word, right: false, broke: 1 }], 'read', mina);
    expect(histories.get('t=T')).toEqual([{ day: 3, asked: 0, missed: 0, unclear: 0 }]);
  });

  it('are those of one child, or of all that a group did, in one task', () => {
    const all = [
      word,
      { ...word, child: null, groups: [groupId('reds')] },
      { ...word, child: childId('Tariq') },
    ];
    const asked = (who: Who, task: 'read' | 'spell' = 'read') =>
      historiesOf(all, task, who).get('m=M')?.[0]?.asked;
    const group = (id: string): Who => ({ of: 'group', id: groupId(id) });
    expect(asked(mina)).toBe(1);
    expect(asked(group('reds'))).toBe(3);
    expect(asked(group('all'))).toBe(2);
    expect(asked(group('blues'))).toBeUndefined();
    expect(asked(group('reds'), 'spell')).toBeUndefined();
  });
});
