import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFixture } from '../../test/fixture.ts';
import type { CardId } from '../language/card-id.ts';
import type { CheckItem } from './check-form.ts';
import { type CheckReading, ITEM_MARKS, type ItemMark, scoreCheck } from './score-check.ts';

const word = (text: string): CheckItem => ({ text, cards: [], answers: [] });
const item = (...cards: readonly CardId[]): CheckItem => ({
  text: cards.join(),
  cards,
  answers: [],
});

/** How each worked example of the handbooks is marked here; what is ignored has no mark. */
const marksByRule: Readonly<Record<string, (text: string) => readonly ItemMark[]>> = {
  omission: (text) => [{ at: text.split(' ').indexOf('oak'), kind: 'left-out' }],
  'hesitation 3 s': () => [{ at: 3, kind: 'hesitated' }],
  'context pronunciation': () => [{ at: 2, kind: 'wrong', said: 'red' }],
  'self-correction within 3 s': () => [{ at: 3, kind: 'self-corrected', said: 'could' }],
  repetition: () => [],
  dialect: () => [],
  insertion: () => [],
  mispronunciation: () => [{ at: 1, kind: 'wrong', said: 'dig' }],
  substitution: () => [{ at: 3, kind: 'wrong', said: 'hat' }],
};

describe('the worked examples of the handbooks', () => {
  // Sources beside each row: test/fixtures/cbm-scoring-rules.tsv.
  const examples = readFixture('cbm-scoring-rules.tsv').filter(({ printed_text }) => printed_text);

  test.each(
    examples.filter(({ rule }) => rule !== 'omitted line').map((row) => [row.rule, row] as const),
  )('%s', (rule, row) => {
    const text = row.printed_text ?? '';
    const items = text.split(' ').map(word);
    const marks = marksByRule[rule ?? '']?.(text) ?? [];
    expect(items).toHaveLength(Number(row.words_correct_if_perfect));
    const score = scoreCheck({ items, marks, reached: items.length, seconds: null });
    expect(score.right).toBe(Number(row.words_correct_scored));
  });

  test('a line left out: each word an error, or, by the other house rule, one', () => {
    const row = examples.find(({ rule }) => rule === 'omitted line');
    const items = (row?.printed_text ?? '').split(' ').map(word);
    const from = items.findIndex(({ text }) => text === 'I');
    const reading: CheckReading = {
      items,
      marks: [],
      reached: items.length,
      seconds: null,
      skippedRows: [{ from, count: 6 }],
    };
    const each = scoreCheck(reading);
    expect([each.asked, each.right]).toEqual([16, Number(row?.words_correct_scored)]);
    const one = scoreCheck(reading, 'one');
    expect([one.asked, one.right]).toEqual([11, 10]);
  });
});

describe('a score', () => {
  const mip = item('m=M', 'i=IH', 'p=P');
  const quob = item('qu=K+W', 'o=AA', 'b=B');

  test('counts the sounds that were right in a word that was not', () => {
    const marks: readonly ItemMark[] = [
      { at: 0, kind: 'wrong', cards: [2], said: 'mep' },
      { at: 1, kind: 'wrong' },
      { at: 2, kind: 'hesitated' },
    ];
    const score = scoreCheck({ items: [mip, mip, mip, quob], marks, reached: 4, seconds: 30 });
    expect(score).toMatchObject({
      asked: 4,
      right: 1,
      accuracy: 0.25,
      soundsAsked: 13,
      soundsRight: 6,
      rightPerMinute: 2,
      soundsPerMinute: 12,
      hesitated: 1,
    });
    expect(score.missed.map(({ said }) => said)).toEqual(['mep', undefined, undefined]);
  });

  test('says nothing of a share or a rate where nothing was asked or timed', () => {
    const none = scoreCheck({ items: [mip], marks: [], reached: 0, seconds: null });
    expect(none).toMatchObject({ asked: 0, accuracy: null, rightPerMinute: null });
    expect(scoreCheck({ items: [mip], marks: [], reached: 1, seconds: 0 }).rightPerMinute).toBe(
      null,
    );
  });

  const marks = fc.array(
    fc.record({
      at: fc.nat(11),
      kind: fc.constantFrom(...ITEM_MARKS),
      cards: fc.subarray([1, 2, 3]),
    }),
    { maxLength: 12 },
  );

  test('stays within what was asked, and a further error never raises it', () => {
    fc.assert(
      fc.property(marks, fc.nat(12), fc.nat(11), (all, reached, at) => {
        const reading = { items: Array(12).fill(mip), marks: all, reached, seconds: 60 };
        const score = scoreCheck(reading);
        expect(score.asked).toBe(reached);
        expect(score.right + score.missed.length).toBe(score.asked);
        expect(score.soundsRight).toBeLessThanOrEqual(score.soundsAsked);
        const worse = scoreCheck({ ...reading, marks: [...all, { at, kind: 'wrong' }] });
        expect(worse.right).toBeLessThanOrEqual(score.right);
        expect(worse.soundsRight).toBeLessThanOrEqual(score.soundsRight);
      }),
    );
  });
});
