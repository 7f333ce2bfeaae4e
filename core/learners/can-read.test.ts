import { expect, it } from 'vitest';
import { childId, groupId } from '../ids.ts';
import { type CardId, makeSightId } from '../language/card-id.ts';
import { canRead } from './can-read.ts';
import { parseDay } from './day.ts';
import { knowledgeFrom } from './knowledge.ts';
import type { Observation } from './observation.ts';

const first = parseDay('2026-03-02') ?? 0;
const taught = {
  correspondences: new Set<CardId>(['m=M', 'a=AE', 'e=EH']),
  habits: new Set<never>(),
  irregularWords: new Set(['said']),
};

/** Twenty days on which a child reads m and a correctly and e wrongly. */
const readings = Array.from({ length: 20 }, (_, day) =>
  (['m=M', 'a=AE', 'e=EH'] as const).map(
    (card): Observation => ({
      day: first + day,
      child: childId('wren'),
      groups: [groupId('all')],
      task: 'read',
      cards: [card],
      right: card !== 'e=EH',
      broke: card === 'e=EH' ? 1 : null,
      heard: null,
    }),
  ),
).flat();

it('a child is given the cards that it reads correctly, and not the one it does not', () => {
  const { read } = knowledgeFrom(readings);
  const given = canRead(taught, read, childId('wren'), first + 20);
  expect([...given.correspondences]).toEqual(['m=M', 'a=AE']);
  expect([...given.irregularWords]).toEqual([]);
});

it('a child is given the words known by sight that it has read correctly itself, and no others', () => {
  const words = ['said', 'was'].flatMap((word) =>
    Array.from(
      { length: 20 },
      (_, day): Observation => ({
        day: first + day,
        child: childId('wren'),
        groups: [groupId('all')],
        task: 'read',
        cards: [makeSightId(word)],
        right: word === 'said',
        broke: word === 'said' ? null : 1,
        heard: null,
      }),
    ),
  );
  const { read } = knowledgeFrom([...readings, ...words]);
  const known = { ...taught, irregularWords: new Set(['said', 'was', 'they']) };
  expect([...canRead(known, read, childId('wren'), first + 20).irregularWords]).toEqual(['said']);
});

it('of a child of whom nothing is known nothing is promised', () => {
  const { read } = knowledgeFrom([]);
  expect([...canRead(taught, read, childId('tam'), first).correspondences]).toEqual([]);
});
