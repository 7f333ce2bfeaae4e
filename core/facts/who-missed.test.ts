import { describe, expect, it } from 'vitest';
import { childId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { WhoChild } from '../learners/estimate.ts';
import { cardFacts } from './card-facts.ts';
import type { MapRow } from './class-map.ts';
import { whoMissed } from './who-missed.ts';

/** What is estimated has no say in who missed what. */
const NOT_ASKED = { p: 0.5, low: 0, high: 1, n: 0, last: null };

/** How each card went, reading by reading: `r` right, `m` missed. */
function row(name: string, went: Readonly<Record<string, string>>): MapRow<WhoChild> {
  return {
    who: { of: 'child', id: childId(name) },
    cells: Object.entries(went).map(([card, outcomes]) => ({
      card: card as CardId,
      seen: cardFacts(
        card as CardId,
        [...outcomes].map((one, day) => ({
          ...{ day, heard: null, word: [card as CardId], at: 0, inCheck: false },
          outcome: one === 'm' ? 'missed' : 'right',
        })),
        0,
      ),
      estimate: NOT_ASKED,
      word: 'growing' as const,
    })),
  };
}

const rows = [
  row('Ada', { 'i=IH': 'mmm', 'e=EH': 'mrrr', 'sh=SH': 'rm', 'ch=CH': '' }),
  row('Ben', { 'i=IH': 'rrr', 'e=EH': 'rr', 'sh=SH': 'rrm', 'ch=CH': 'r' }),
  row('Cleo', { 'i=IH': 'r', 'e=EH': '', 'sh=SH': '', 'ch=CH': '' }),
];
const found = whoMissed(rows).map(({ card, by, readers }) => [
  card,
  by.map(({ who, missed, asked }) => `${who.id} ${missed}/${asked}`),
  readers,
]);

describe('who missed what lately', () => {
  it('has each card that somebody missed, what the most children missed first', () => {
    expect(found).toEqual([
      ['sh=SH', ['Ada 1/2', 'Ben 1/3'], 2],
      ['i=IH', ['Ada 3/3'], 3],
    ]);
  });

  it('has nothing of what was read right three times since, or was never read', () => {
    const cards = found.map(([card]) => card);
    expect(cards).not.toContain('e=EH');
    expect(cards).not.toContain('ch=CH');
  });

  it('is empty where nobody is', () => {
    expect(whoMissed([])).toEqual([]);
  });
});
