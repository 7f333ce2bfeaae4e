import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { scheduleOf } from './schedule.ts';

const well = (day: number) => ({ day, asked: 4, missed: 0, unclear: 0 });
const badly = (day: number) => ({ day, asked: 4, missed: 3, unclear: 0 });
const mixed = (day: number) => ({ day, asked: 4, missed: 1, unclear: 0 });

describe('when a card comes back', () => {
  it('is never said before it was there', () => {
    expect(scheduleOf([])).toBeNull();
  });

  it('is later the better it went', () => {
    const due = (last: typeof well) => scheduleOf([well(0), last(3)])?.due ?? 0;
    expect(due(badly)).toBeLessThan(due(mixed));
    expect(due(mixed)).toBeLessThan(due(well));
  });

  it('is put off further each time that it goes well, up to a school year', () => {
    let days = [well(0)];
    let before = 0;
    for (let time = 0; time < 12; time++) {
      const schedule = scheduleOf(days);
      expect(schedule?.interval).toBeGreaterThanOrEqual(before);
      before = schedule?.interval ?? 0;
      days = [...days, well(schedule?.due ?? 0)];
    }
    expect(before).toBe(180);
  });

  it('is after the last day, always', () => {
    for (const last of [well, mixed, badly]) {
      expect(scheduleOf([badly(0), badly(1), last(2)])?.due).toBeGreaterThan(2);
    }
  });

  it('is what the FSRS scheduler itself answers, card by card and date by date', () => {
    // The library's own scheduler, driven with dates; ours is driven with day numbers.
    const scheduler = fsrs({ enable_fuzz: false, enable_short_term: false });
    const dateOf = (day: number) => new Date(Date.UTC(2026, 0, 1 + day));
    let card = createEmptyCard(dateOf(0));
    for (const [day, grade] of [
      [0, Rating.Good],
      [3, Rating.Hard],
      [9, Rating.Again],
      [11, Rating.Good],
    ] as const) {
      card = scheduler.next(card, dateOf(day), grade).card;
    }
    const ours = scheduleOf([well(0), mixed(3), badly(9), well(11)]);
    expect(dateOf(ours?.due ?? 0)).toEqual(card.due);
  });
});
