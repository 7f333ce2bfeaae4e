import { describe, expect, test } from 'vitest';
import type { Lexicon } from '../words/lexicon.ts';
import { explainStep } from './explain-step.ts';
import type { Item, Sequence } from './sequence.ts';

/** A word list of a few one-syllable words, each with its cards; `!` marks an irregular one. */
function tinyLexicon(entries: readonly (readonly [word: string, cards: string])[]): Lexicon {
  const cardsOf = (index: number): string => entries[index]?.[1] ?? '';
  return {
    size: entries.length,
    word: (index) => entries[index]?.[0] ?? '',
    band: () => 1,
    indexOf: (word) => entries.findIndex(([known]) => known === word),
    readings: () => [],
    cardIds: (index) => cardsOf(index).replace('!', '').split(' '),
    isRegular: (index) => !cardsOf(index).includes('!'),
    syllableCount: () => 1,
    saidAs: () => [],
  };
}

const lexicon = tinyLexicon([
  ['at', 'a=AE t=T'],
  ['was', '!w=W a=AA s=Z'],
  ['mat', 'm=M a=AE t=T'],
  ['am', 'a=AE m=M'],
  ['sat', 's=S a=AE t=T'],
]);

const card = (id: string): Item => ({ kind: 'card', id });
const step = (number: number, ...items: readonly Item[]) => ({
  number,
  stage: 'Start',
  grade: 'K' as const,
  title: '',
  items,
  why: '',
});
const sequence: Sequence = {
  name: 'Tiny',
  steps: [
    step(1, card('a=AE')),
    step(2, card('t=T')),
    step(3, card('m=M'), { kind: 'word', word: 'was' }),
    step(4, card('s=S')),
  ],
};

describe('what a step is worth', () => {
  test('is the words it opens by rule, commonest first', () => {
    expect(explainStep(sequence, 1, lexicon)).toEqual({ opens: 0, examples: [] });
    expect(explainStep(sequence, 2, lexicon)).toEqual({ opens: 1, examples: ['at'] });
    expect(explainStep(sequence, 3, lexicon)).toEqual({ opens: 2, examples: ['mat', 'am'] });
    expect(explainStep(sequence, 4, lexicon)).toEqual({ opens: 1, examples: ['sat'] });
  });
});
