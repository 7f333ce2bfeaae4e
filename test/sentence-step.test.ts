import { describe, expect, test } from 'vitest';
import { parseItem } from '../core/sequence/item.ts';
import type { Item, Sequence } from '../core/sequence/sequence.ts';
import { builtLexicon } from './built-lexicon.ts';
import { stepOfSentence } from './sentence-step.ts';

/** A small order of our own: steps as lists of items in text form. */
function orderOf(...steps: readonly string[]): Sequence {
  return {
    name: 'small',
    steps: steps.map((items, place) => ({
      number: place + 1,
      stage: 'one',
      grade: 'K',
      title: items,
      items: items.split(' ').map(itemOf),
      why: '',
    })),
  };
}

function itemOf(text: string): Item {
  const read = parseItem(text);
  if ('error' in read) throw new Error(read.error.message);
  return read.item;
}

const letters = 'a b c d e f g h i m n o p s t u';
const order = orderOf(letters, 'word:the', 'sh', 'habit:ending-clusters', 'word:said');

describe('the step of a sentence', () => {
  test('is the first at which every word is taught', () => {
    expect(stepOfSentence('Dad hid.', order, builtLexicon).step).toBe(1);
    expect(stepOfSentence('Dad hid the cat.', order, builtLexicon).step).toBe(2);
    expect(stepOfSentence('Dad hid the fish.', order, builtLexicon).step).toBe(3);
    expect(stepOfSentence('Shut the best tent!', order, builtLexicon).step).toBe(4);
  });

  test('names the words that it waits for, each once, and their newest items', () => {
    const { because } = stepOfSentence('The fish, the fish, the ship!', order, builtLexicon);
    const sh = itemOf('sh');
    expect(because).toEqual([
      { word: 'fish', code: 'waits', items: [sh] },
      { word: 'ship', code: 'waits', items: [sh] },
    ]);
  });

  test('counts an irregular word from the step that teaches it by heart', () => {
    expect(stepOfSentence('Dad said it.', order, builtLexicon)).toEqual({
      step: 5,
      because: [{ word: 'said', code: 'waits', items: [itemOf('word:said')] }],
    });
  });

  test('reads names by their letters, and only with a capital', () => {
    expect(stepOfSentence('Ned sat.', order, builtLexicon).step).toBe(1);
    expect(stepOfSentence('The ned sat.', order, builtLexicon)).toEqual({
      step: null,
      because: [{ word: 'ned', code: 'unknown', items: [] }],
    });
  });

  test('is null where a word is never taught, and says why', () => {
    expect(stepOfSentence('Do not zip it.', order, builtLexicon)).toEqual({
      step: null,
      because: [
        { word: 'do', code: 'irregular', items: [] },
        { word: 'zip', code: 'waits', items: [itemOf('z')] },
      ],
    });
    expect(stepOfSentence('…', order, builtLexicon)).toEqual({ step: null, because: [] });
  });

  test('judges an inflected form as a word of its own', () => {
    expect(stepOfSentence('Ten cats sat.', order, builtLexicon).step).toBe(1);
    expect(stepOfSentence('Ten dogs sat.', order, builtLexicon).step).toBe(null);
  });
});
