import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { weekdayOf } from './day.ts';
import { dueBy, dueOf } from './due.ts';
import { chanceOfCard, estimateCard } from './estimate.ts';
import { knowledgeFrom } from './knowledge.ts';
import type { Observation } from './observation.ts';
import { everyWeekday, schoolDaysWithout } from './school-days.ts';

/** A Monday. */
const MONDAY = 20_514;
const MINA = { of: 'child', id: childId('Mina') } as const;
const GROUP = { of: 'group', id: groupId('g') } as const;

function read(card: CardId, day: number, right: boolean, child: ChildId | null = childId('Mina')) {
  const broke = right ? null : 1;
  const task = 'read' as const;
  return { day, child, groups: [groupId('g')], task, cards: [card], right, broke, heard: null };
}

/** On school days until a Friday, each card as often right as is said, of ten. */
function weeks(cards: Readonly<Record<CardId, number>>, count = 4): readonly Observation[] {
  return Array.from({ length: count * 7 }, (_, n) => MONDAY + n)
    .filter(everyWeekday)
    .flatMap((day, n) =>
      (Object.entries(cards) as [CardId, number][]).flatMap(([card, right]) => [
        read(card, day, (n * 7) % 10 < right),
        read(card, day, (n * 3 + 1) % 10 < right, childId('Tariq')),
      ]),
    );
}

const seen = weeks({ 'm=M': 10, 'e=EH': 4, 'sh=SH': 8 });
const { read: known } = knowledgeFrom(seen);
const FRIDAY = MONDAY + 25;

describe('when a card comes back', () => {
  it('is never said before it was there', () => {
    expect(dueOf(known, MINA, 'oi=OY')).toBeNull();
    expect(dueOf(known, { of: 'child', id: childId('Sol') }, 'm=M')).toBeNull();
    expect(dueBy(known, groupId('g'), 'oi=OY', FRIDAY + 3, 0.5)).toBeNull();
  });

  it('is the next school day for what is weak, and over the weekend that is Monday', () => {
    expect(dueOf(known, MINA, 'e=EH')).toEqual({ day: FRIDAY + 3, because: 'weak' });
  });

  it('is later for what goes well, and is the day on which it will have faded or is not sure', () => {
    const due = dueOf(known, MINA, 'm=M');
    const day = due?.day ?? 0;
    expect(day).toBeGreaterThan(FRIDAY + 3);
    const before = estimateCard(known, MINA, 'm=M', FRIDAY + 1);
    const then = estimateCard(known, MINA, 'm=M', day);
    const wider = then.high - then.low - (before.high - before.low);
    expect(
      then.p < 0.8 || before.p - then.p >= 0.05 || wider >= 0.1 || due?.because === 'long',
    ).toBe(true);
  });

  it('steps over holidays', () => {
    const holiday = { first: FRIDAY + 3, last: FRIDAY + 16 };
    expect(dueOf(known, MINA, 'e=EH', schoolDaysWithout([holiday]))).toEqual({
      day: FRIDAY + 17,
      because: 'weak',
    });
  });

  it('counts from what the group did together too', () => {
    const together = knowledgeFrom([...seen, read('m=M', FRIDAY + 10, true, null)]).read;
    const due = dueOf(together, MINA, 'm=M')?.day ?? 0;
    expect(due).toBeGreaterThan(FRIDAY + 10);
  });

  it('does not count what the group did while the child was away', () => {
    const monday = FRIDAY + 10;
    const together = (day: number, away: readonly string[]) => ({
      ...read('m=M', day, true, null),
      away: away.map(childId),
    });
    const dueAfter = (...more: readonly Observation[]) =>
      dueOf(knowledgeFrom([...seen, ...more]).read, MINA, 'm=M')?.day ?? 0;
    expect(dueAfter(together(monday, []))).toBeGreaterThan(monday);
    expect(Math.abs(dueAfter(together(monday, ['Mina'])) - dueAfter())).toBeLessThanOrEqual(3);
    expect(dueAfter(together(monday, ['Mina']), together(monday + 1, ['Mina']))).toBeLessThan(
      dueAfter(together(monday, ['Mina']), together(monday + 1, ['Sol'])),
    );
    // There, then away for two readings of a day and one of the next: what came before still counts.
    const there = dueAfter(together(monday, []));
    const since = [monday + 1, monday + 1, monday + 2].map((day) => together(day, ['Mina']));
    expect(Math.abs(dueAfter(together(monday, []), ...since) - there)).toBeLessThanOrEqual(3);
  });

  it('of a group follows its chance, and what is asked of one day agrees with it', () => {
    for (const card of ['m=M', 'e=EH', 'sh=SH'] as const) {
      const due = dueOf(known, GROUP, card);
      if (due === null) throw new Error('The group had every card.');
      for (let day = FRIDAY + 1; day <= due.day; day++) {
        const p = chanceOfCard(known, GROUP, card, day);
        const because = dueBy(known, groupId('g'), card, day, p);
        if (everyWeekday(day)) expect(because !== null).toBe(day === due.day);
      }
    }
  });

  it('of a child is the first school day on which one of three things is so, and each comes about', () => {
    const few = knowledgeFrom([...seen, read('s=S', FRIDAY, true), read('s=S', FRIDAY, true)]).read;
    const reasons = new Set<string>();
    for (const card of ['m=M', 'e=EH', 'sh=SH', 's=S'] as const) {
      for (const who of [MINA, { of: 'child', id: childId('Tariq') } as const]) {
        const due = dueOf(few, who, card);
        if (due === null) continue;
        const on = (day: number) => estimateCard(few, who, card, day);
        const { p, low, high } = on(FRIDAY + 1);
        const days = Array.from({ length: 28 }, (_, n) => FRIDAY + 1 + n).filter(everyWeekday);
        const said = days.map((day) => {
          const then = on(day);
          if (then.p < 0.8) return 'weak';
          if (p - then.p >= 0.05) return 'fading';
          return then.high - then.low - (high - low) >= 0.1 ? 'unsure' : null;
        });
        const at = said.findIndex((reason) => reason !== null);
        expect(due.day).toBe(at < 0 ? days.at(-1) : days[at]);
        expect(due.because).toBe(at < 0 ? 'long' : said[at]);
        reasons.add(due.because);
      }
    }
    expect(reasons.size).toBeGreaterThan(1);
  });

  it('of a group is asked of one day: not before the next school day, for what it lost, and at last for long', () => {
    const before = chanceOfCard(known, GROUP, 'm=M', FRIDAY + 1);
    const on = (day: number, p: number) => dueBy(known, groupId('g'), 'm=M', day, p);
    expect(before).toBeGreaterThan(0.9);
    expect(on(FRIDAY + 2, 0.1)).toBeNull();
    expect(on(FRIDAY + 3, 0.79)).toBe('weak');
    expect(on(FRIDAY + 3, before - 0.051)).toBe('fading');
    expect(on(FRIDAY + 3, before - 0.049)).toBeNull();
    expect(on(FRIDAY + 27, before)).toBeNull();
    expect(on(FRIDAY + 28, before)).toBe('long');
  });

  it('is the next day where the calendar has no school at all', () => {
    const never = () => false;
    expect(dueOf(known, MINA, 'm=M', never)).toEqual({ day: FRIDAY + 1, because: 'long' });
    expect(dueOf(known, MINA, 'e=EH', never)).toEqual({ day: FRIDAY + 1, because: 'weak' });
  });

  it('is a school day, one to twenty of them after the last, whatever was read', () => {
    const readings = fc.array(
      fc.record({
        card: fc.constantFrom('m=M', 'e=EH'),
        ago: fc.integer({ min: 0, max: 40 }),
        right: fc.boolean(),
      }),
      { minLength: 1, maxLength: 40 },
    );
    fc.assert(
      fc.property(readings, (all) => {
        const observations = all.map(({ card, ago, right }) => read(card, FRIDAY - ago, right));
        const own = knowledgeFrom(observations).read;
        for (const card of new Set(all.map((one) => one.card))) {
          const last = Math.max(
            ...observations.filter((one) => one.cards[0] === card).map(({ day }) => day),
          );
          const due = dueOf(own, MINA, card)?.day ?? 0;
          expect(weekdayOf(due)).toBeLessThan(5);
          expect(due).toBeGreaterThan(last);
          expect(due).toBeLessThanOrEqual(last + 28);
        }
      }),
      { numRuns: 40 },
    );
  });
});
