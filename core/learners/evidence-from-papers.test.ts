import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { childId, classId, eventId, groupId, papersId } from '../ids.ts';
import type { EventSpec, LogEvent, PaperAnswer } from '../log/event.ts';
import { replay } from '../log/replay.ts';
import { parseWords } from '../papers/said-words.ts';
import { observationsOf } from './evidence-from-log.ts';

type Said = readonly [word: number, answer: PaperAnswer];
const { words } = parseWords('ship, rain', builtLexicon);

describe('papers as observations', () => {
  const told = (...said: Said[]) => {
    const begun: EventSpec = {
      kind: 'papers-begun',
      body: {
        papersId: papersId('pile'),
        groupId: groupId('whole-class'),
        day: '2026-03-02',
        words,
      },
    };
    const child: EventSpec = {
      kind: 'set',
      body: { of: 'child', id: childId('ann'), field: 'name', value: 'Ann' },
    };
    const read = said.map(([word, answer]): EventSpec => {
      return {
        kind: 'papers-read',
        body: { papersId: papersId('pile'), child: childId('ann'), word, answer },
      };
    });
    const events = [child, begun, ...read].map(
      (spec, at): LogEvent => ({
        id: eventId(`e${at}`),
        classId: classId('class'),
        at,
        by: 'desk',
        ...spec,
      }),
    );
    return observationsOf(replay(classId('class'), events)).map(({ cards, right, task }) => ({
      cards: cards.join(' '),
      right,
      task,
    }));
  };

  it('a right word tells of all its cards', () => {
    expect(told([0, { kind: 'wrote', text: 'ship' }])).toEqual([
      { cards: 'sh=SH i=IH p=P', right: true, task: 'spell' },
    ]);
  });

  it('a slip tells of the spellings of the sounds that were heard, and of no other', () => {
    expect(told([0, { kind: 'wrote', text: 'sip' }])).toEqual([
      { cards: 'i=IH', right: true, task: 'spell' },
      { cards: 'p=P', right: true, task: 'spell' },
    ]);
    expect(told([1, { kind: 'wrote', text: 'rane' }])).toContainEqual({
      cards: 'ai=EY',
      right: false,
      task: 'spell',
    });
  });

  it('a card that was tapped broke', () => {
    expect(told([0, { kind: 'broke', cards: [1] }])).toEqual([
      { cards: 'sh=SH i=IH p=P', right: false, task: 'spell' },
    ]);
  });
});
