import { describe, expect, test } from 'vitest';
import type { CardId } from '../../language/card-id.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { parseItem } from '../../sequence/item.ts';
import { stepOf } from '../../sequence/step-of.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import { candidates, vowelPile } from './shapes.ts';
import { laterShapes, longerShapeFor, shapesFor } from './shapes-for.ts';
import { cardsTaught } from './taught-cards.ts';

function stepWith(text: string): number {
  const read = parseItem(text);
  return ('item' in read && stepOf(SEQUENCE, read.item)) || 0;
}

function cardsOf(step: number): readonly CardId[] {
  const items = SEQUENCE.steps[step - 1]?.items ?? [];
  return items.flatMap((item) => (item.kind === 'card' ? [item.id] : []));
}

describe('the shapes for a step', () => {
  test('each can be laid with what is taught, and from the third step on there is one', () => {
    for (let step = 3; step <= SEQUENCE.steps.length; step++) {
      const taught = taughtUpTo(SEQUENCE, step);
      const shapes = shapesFor(taught, cardsOf(step));
      expect(`${step} ${shapes.length > 0}`).toBe(`${step} true`);
      for (const shape of shapes) {
        // Of syllables the words of the list are the candidates (search/syllable-piles.test.ts).
        if (shape.form === 'beats') continue;
        for (const pile of candidates(shape, cardsTaught(taught))) expect(pile).not.toEqual([]);
      }
    }
  });

  test('a new vowel stands among earlier ones in the first shape', () => {
    for (const item of ['a_e', 'ea', 'oa', 'ar', 'ou']) {
      const step = stepWith(item);
      const taught = taughtUpTo(SEQUENCE, step);
      const [first] = shapesFor(taught, cardsOf(step));
      const vowels = cardsTaught(taught).filter(vowelPile(first as never).takes);
      expect(vowels.map(({ id }) => id)).toEqual(expect.arrayContaining([...cardsOf(step)]));
      expect(vowels.length).toBeGreaterThan(cardsOf(step).length + 3);
    }
  });

  test('two syllables wait for the habit of long words, clusters in piles for theirs', () => {
    const ids = (step: number): readonly string[] =>
      shapesFor(taughtUpTo(SEQUENCE, step)).map(({ id }) => id);
    const beats = stepWith('habit:long-words');
    expect(ids(beats - 1)).not.toContain('closed-closed');
    expect(ids(beats)).toContain('closed-closed');
    const clusters = stepWith('habit:r-clusters');
    expect(ids(clusters - 1)).not.toContain('ccvc');
    expect(ids(clusters)).toContain('ccvc');
  });

  test('cards that lie in no short word ask for a longer shape', () => {
    for (const [item, wanted] of [
      ['tt', 'doubled'],
      ['le', 'consonant-le'],
      ['ed', 'base-ending'],
      ['oa', undefined],
    ] as const) {
      const step = stepWith(item);
      const shape = longerShapeFor(taughtUpTo(SEQUENCE, step), cardsOf(step));
      expect(`${item} ${shape?.id}`).toBe(`${item} ${wanted}`);
    }
  });
});

describe('shapes that come later', () => {
  test('each can be laid from the step it names on, and not a step before', () => {
    for (const step of [12, 40]) {
      const later = laterShapes(taughtUpTo(SEQUENCE, step), SEQUENCE.steps.length, (at) =>
        taughtUpTo(SEQUENCE, at),
      );
      expect(later.length).toBeGreaterThan(3);
      for (const { shape, step: from } of later) {
        if (from === null) throw new Error(`${shape.id} never comes`);
        expect(from).toBeGreaterThan(step);
        const ids = (at: number) => shapesFor(taughtUpTo(SEQUENCE, at)).map(({ id }) => id);
        expect(ids(from)).toContain(shape.id);
        expect(ids(from - 1)).not.toContain(shape.id);
      }
    }
  });

  test('lack words of two beats where their cards are there', () => {
    const later = laterShapes(taughtUpTo(SEQUENCE, 40), SEQUENCE.steps.length, (at) =>
      taughtUpTo(SEQUENCE, at),
    );
    expect(later.find(({ shape }) => shape.id === 'closed-closed')?.lacks).toBe('long-words');
  });
});
