import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { whitenessOf } from '../../test/classroom/whiteness.ts';
import { parseDay } from '../learners/day.ts';
import { observationsOf } from '../learners/evidence-from-log.ts';
import { replay } from '../log/replay.ts';
import { understand } from '../log/understand.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { SAMPLE_CHILDREN } from './sample-children.ts';
import { SAMPLE_CLASS, SAMPLE_DAYS, sampleClass } from './sample-class.ts';

const today = parseDay('2026-03-02')!;
const engine = { lexicon: builtLexicon, screen: createWordScreen(SCREEN_DATA) };
const batches = [...sampleClass(engine, today)];
const events = batches.flat();
const state = replay(SAMPLE_CLASS, events);

describe('the sample class', () => {
  it('is made of events that every build understands, a batch for each school day, all before today', () => {
    expect(batches).toHaveLength(SAMPLE_DAYS);
    expect(events.filter((event) => understand(event) === null)).toEqual([]);
    expect(new Set(events.map(({ id }) => id)).size).toBe(events.length);
    expect(Math.max(...events.map(({ at }) => at))).toBeLessThan(today * 86_400_000);
    expect([...state.drills.values()].at(-1)?.day).toBe('2026-02-27');
  });

  it('leaves no surprise of one day in those of the next: what is known follows it as it moves', () => {
    const inOrder = observationsOf(state).toSorted((one, other) => one.day - other.day);
    const { correlation, count } = whitenessOf(inOrder);
    expect(count).toBeGreaterThan(1000);
    expect(Math.abs(correlation)).toBeLessThanOrEqual(0.05);
  });

  it('has something for every screen: groups, warm-ups, marks, checks and papers', () => {
    expect(state.children.size).toBe(SAMPLE_CHILDREN.length);
    expect(state.groups.size).toBe(3);
    expect(state.drills.size).toBe(SAMPLE_DAYS);
    expect(state.checks.size).toBe(2 * SAMPLE_CHILDREN.length);
    expect(state.papers.size).toBe(4);
    for (const { drill, ended } of state.drills.values()) {
      // Full; how near a board comes to her share of real words may be said beside it.
      expect([12, 20]).toContain(drill.run.length);
      expect(ended).not.toBeNull();
    }
  });

  it('shows each trouble that a child was given, in what it is marked for', () => {
    const heard = (name: string) =>
      events.flatMap((event) => {
        const known = understand(event);
        if (known?.kind !== 'marked' || known.body.child !== `sample-${name}`) return [];
        const { broke, cards, heard } = known.body;
        return [`${broke ? cards[broke - 1] : ''} ${JSON.stringify(heard)}`];
      });
    expect(
      heard('Dev').filter((line) => line.startsWith('i=IH {"kind":"phoneme","sound":"EH"}')).length,
    ).toBeGreaterThan(3);
    expect(heard('Bao').filter((line) => line.includes('"letter"')).length).toBeGreaterThan(2);
    expect(heard('Anouk').length).toBeLessThan(6);
  });

  it('is the same class whenever it is made for the same day', () => {
    const [first] = sampleClass(engine, today);
    expect(first).toEqual(batches[0]);
  });
});
