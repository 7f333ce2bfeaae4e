import { describe, expect, it } from 'vitest';
import { type ChildId, childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Who } from '../learners/estimate.ts';
import { knowledgeFrom } from '../learners/knowledge.ts';
import type { Observation } from '../learners/observation.ts';
import { PUBLISHED_THRESHOLDS } from '../learners/thresholds.ts';
import { byNeed, classMap, countWords, type MapRow, shakiest } from './class-map.ts';
import { readingsIn } from './class-readings.ts';

const DAY = 20_000;

function reads(
  child: ChildId,
  card: CardId,
  right: boolean,
  times: number,
): readonly Observation[] {
  return Array.from({ length: times }, (_, n) => ({
    day: DAY - times + n,
    child,
    groups: [groupId('g')],
    task: 'read' as const,
    cards: [card],
    right,
    broke: right ? null : 1,
    heard: null,
  }));
}

const CARDS: readonly CardId[] = ['m=M', 'e=EH', 'sh=SH'];
const all: readonly Who[] = [
  { of: 'group', id: groupId('g') },
  { of: 'child', id: childId('Mina') },
  { of: 'child', id: childId('Kofi') },
  { of: 'child', id: childId('never noted') },
];
const observations = [
  ...reads(childId('Mina'), 'm=M', true, 30),
  ...reads(childId('Mina'), 'e=EH', false, 12),
  ...reads(childId('Kofi'), 'm=M', true, 2),
];
const spec = {
  known: knowledgeFrom(observations).read,
  readings: readingsIn(observations, 'read'),
  day: DAY,
  thresholds: PUBLISHED_THRESHOLDS,
};
const rows = classMap(spec, all, CARDS);

describe('a class map', () => {
  it('has a row for each, and each card in the order asked for', () => {
    expect(rows.map(({ who }) => who)).toEqual(all);
    for (const { cells } of rows) expect(cells.map(({ card }) => card)).toEqual(CARDS);
  });

  it('says secure, shaky, growing and not yet seen where the readings say so', () => {
    const words = (row: number) => rows[row]?.cells.map(({ word }) => word);
    expect(words(1)).toEqual(['secure', 'shaky', 'not yet seen']);
    expect(words(2)).toEqual(['growing', 'not yet seen', 'not yet seen']);
    expect(words(3)).toEqual(['not yet seen', 'not yet seen', 'not yet seen']);
    expect(countWords(rows[1]?.cells ?? [])).toEqual({
      secure: 1,
      growing: 0,
      shaky: 1,
      'not yet seen': 1,
    });
  });

  it('goes by the thresholds it is given', () => {
    const strict = classMap({ ...spec, thresholds: { secure: 1, shaky: 0.9 } }, all, CARDS);
    expect(strict[1]?.cells.map(({ word }) => word)).toEqual(['growing', 'shaky', 'not yet seen']);
  });

  it('calls no card secure for a group in which a child missed it lately', () => {
    const one = [
      ...observations,
      ...reads(childId('Kofi'), 'm=M', false, 1),
      ...reads(childId('Mina'), 'm=M', true, 4),
    ];
    const lax = { secure: 0.1, shaky: 0.05 };
    const known = knowledgeFrom(one).read;
    const map = { ...spec, known, readings: readingsIn(one, 'read'), thresholds: lax };
    const word = (who: Who) => classMap(map, [who], ['m=M'])[0]?.cells[0]?.word;
    expect(word({ of: 'group', id: groupId('g') })).toBe('growing');
    expect(word({ of: 'child', id: childId('Mina') })).toBe('secure');
  });

  it('finds the cards that are shaky, and no other', () => {
    expect(shakiest(rows.slice(1))).toEqual(['e=EH']);
    expect(shakiest(rows.slice(2))).toEqual([]);
    expect(shakiest([])).toEqual([]);
  });

  it('puts those first who need it most, and leaves alike ones as they were', () => {
    const names = (all: readonly MapRow[]) => all.map(({ who }) => who.id);
    expect(names(byNeed(rows.slice(1).toReversed()))).toEqual(['Mina', 'Kofi', 'never noted']);
    const never = rows.slice(3);
    expect(names(byNeed([...never, ...never]))).toEqual(names([...never, ...never]));
    const more = [
      ...observations,
      ...reads(childId('Kofi'), 'e=EH', false, 2),
      ...reads(childId('Kofi'), 'm=M', false, 2),
    ];
    const known = knowledgeFrom(more).read;
    const now = classMap({ ...spec, known, readings: readingsIn(more, 'read') }, all, CARDS);
    expect(names(byNeed(now.slice(1)))).toEqual(['Kofi', 'Mina', 'never noted']);
  });
});
