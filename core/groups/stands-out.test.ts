import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scriptedReadings } from '../../test/scripted-readings.ts';
import { missedLast } from '../facts/card-facts.ts';
import { classMap, type MapRow } from '../facts/class-map.ts';
import { readingsIn } from '../facts/class-readings.ts';
import { childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { WhoChild } from '../learners/estimate.ts';
import { knowledgeFrom } from '../learners/knowledge.ts';
import { PUBLISHED_THRESHOLDS } from '../learners/thresholds.ts';
import { type StandsOut, standsOut, standsOutSaid } from './stands-out.ts';

const DAY = 20_000;
const CHILDREN = ['Ada', 'Ben', 'Cleo', 'Dov'].map(childId);
const CARDS: readonly CardId[] = ['i=IH', 'e=EH', 'sh=SH', 'st=S+T', 'bl=B+L'];

/** Rows of the map after each child read its lines, one a day. */
function rowsOf(lines: Readonly<Record<string, readonly string[]>>): readonly MapRow<WhoChild>[] {
  const all = Object.entries(lines).flatMap(([child, days]) =>
    days.flatMap((line, n) => scriptedReadings(childId(child), DAY - days.length + n, line)),
  );
  const spec = {
    known: knowledgeFrom(all).read,
    readings: readingsIn(all, 'read'),
    day: DAY,
    thresholds: PUBLISHED_THRESHOLDS,
  };
  return classMap(
    spec,
    CHILDREN.map((id) => ({ of: 'child', id }) as const),
    CARDS,
  );
}

const said = (all: readonly StandsOut[]) =>
  all.map((one) => `${standsOutSaid(one, 'classroom')} (${one.children.join(', ')})`);

// Each was read aloud beside its script.
describe('what stands out', () => {
  it.each<
    [string, Readonly<Record<string, readonly string[]>>, readonly CardId[], readonly string[]]
  >([
    ['of whom nothing was noted', {}, [], []],
    [
      'a shared way first, then what was missed, then what is new',
      {
        Ada: ['st!1:S bl!1:B', 'st!1:S e!1'],
        Ben: ['st!1:S bl!1:B', 'st!1:S'],
        Cleo: ['i!1:EH sh', 'i!1:EH'],
        Dov: ['sh!1'],
      },
      ['sh=SH'],
      [
        '2 of 4 drop the second consonant in st or bl (Ada, Ben)',
        'Missed lately by 1 of 4, in 2 of 2 readings, the last three of each (Cleo)',
        'New is sh: 2 of 4 have read it alone, 1 of them right each time; still to read it (Ada, Ben)',
      ],
    ],
    [
      'who missed nothing, where there is room',
      { Ada: ['sh i e'], Ben: ['sh'], Cleo: ['sh'], Dov: ['sh'] },
      ['sh=SH'],
      ['4 of 4 missed nothing lately (Ada, Ben, Cleo, Dov)'],
    ],
    [
      'that nobody has read what is new',
      { Ada: ['i'] },
      ['bl=B+L'],
      [
        'New is bl: none of 4 has read it alone yet (Ada, Ben, Cleo, Dov)',
        '1 of 4 missed nothing lately (Ada)',
      ],
    ],
  ])('%s', (_, lines, newest, sentences) => {
    expect(said(standsOut(rowsOf(lines), newest))).toEqual(sentences);
  });

  const word = fc.constantFrom(
    'i',
    'e',
    'sh',
    'st',
    'bl',
    'i!1:EH',
    'sh!1:S',
    'st!1:S',
    'st!1',
    'bl!1:left-out',
  );
  const lines = fc.dictionary(
    fc.constantFrom(...CHILDREN),
    fc.array(
      fc.array(word, { maxLength: 5 }).map((words) => words.join(' ')),
      { maxLength: 5 },
    ),
    { maxKeys: 4 },
  );

  it('is never wrong beside the map, for any log', () => {
    fc.assert(
      fc.property(lines, fc.subarray([...CARDS], { maxLength: 2 }), (all, newest) => {
        const rows = rowsOf(all);
        const cellOf = (id: string, card: CardId) =>
          rows.find(({ who }) => who.id === id)?.cells.find((cell) => cell.card === card);
        const found = standsOut(rows, newest);
        expect(found.length).toBeLessThanOrEqual(3);
        for (const one of found) {
          const text = standsOutSaid(one, 'classroom');
          expect(one.size).toBe(CHILDREN.length);
          expect(one.children).toEqual(CHILDREN.filter((id) => one.children.includes(id)));
          const missers = (card: CardId) =>
            CHILDREN.filter((id) => missedLast(cellOf(id, card)?.seen ?? { last: [] }) > 0);
          if (one.code === 'way') {
            const open = new Set(one.cards.flatMap(missers));
            for (const id of one.children) expect(open).toContain(id);
            expect(text.startsWith(`${one.children.length} of 4 `)).toBe(true);
          }
          if (one.code === 'missed') expect(one.children).toEqual(missers(one.cards[0] as CardId));
          if (one.code === 'new') {
            const asked = CHILDREN.map((id) => cellOf(id, one.cards[0] as CardId)?.seen);
            const read = asked.filter((seen) => (seen?.last.length ?? 0) > 0);
            expect(one.read).toBe(read.length);
            expect(one.children).toHaveLength(4 - read.length);
            expect(one.right).toBe(read.filter((seen) => seen?.missed === 0).length);
          }
          if (one.code === 'clear') {
            const missing = new Set(CARDS.flatMap(missers));
            for (const id of one.children) expect(missing).not.toContain(id);
          }
        }
      }),
      { numRuns: 80 },
    );
  });
});
