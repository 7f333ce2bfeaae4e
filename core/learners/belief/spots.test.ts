import { describe, expect, it } from 'vitest';
import type { CardId } from '../../language/card-id.ts';
import { wordParts } from '../word-parts.ts';
import { cardOf, contextNumber, contextsOf, lowestOf, MOST_CARDS, openWords } from './spots.ts';

const SHIP: readonly CardId[] = ['sh=SH', 'i=IH', 'p=P'];
const STOP: readonly CardId[] = ['s=S', 't=T', 'o=AA', 'p=P'];

function open() {
  const ids: string[] = [];
  const read = openWords(wordParts, (id) => {
    if (!ids.includes(id)) ids.push(id);
    return ids.indexOf(id);
  });
  return (cards: readonly CardId[]) => {
    const into = new Int32Array(MOST_CARDS);
    return [...into.subarray(0, read(cards, into))].map((spot) => ({
      card: ids[cardOf(spot)],
      contexts: numbersIn(contextsOf(spot)),
    }));
  };
}

function numbersIn(set: number): readonly number[] {
  return set === 0 ? [] : [lowestOf(set), ...numbersIn(set & (set - 1))];
}

describe('the spots of a word', () => {
  const beginning = contextNumber('beginning');
  const clusters = contextNumber('s-clusters');

  it('are its cards, each with its place and the habits it asks for there', () => {
    expect(open()(STOP)).toEqual([
      { card: 's=S', contexts: [beginning, clusters] },
      { card: 't=T', contexts: [beginning, clusters] },
      { card: 'o=AA', contexts: [contextNumber('middle')] },
      { card: 'p=P', contexts: [contextNumber('ending')] },
    ]);
  });

  it('stand in no place where a card is alone', () => {
    expect(open()(['sh=SH'])).toEqual([{ card: 'sh=SH', contexts: [] }]);
  });

  it('are those of the word whichever list it comes in, between other words', () => {
    const read = open();
    const first = read(SHIP);
    read(STOP);
    expect(read([...SHIP])).toEqual(first);
    expect(read(SHIP)).toEqual(first);
  });

  it('end where a word is longer than any that children read', () => {
    const read = open();
    const long = Array.from({ length: MOST_CARDS + 1 }, (_, n) => STOP[n % 4] as CardId);
    expect(read(long).map(({ card }) => card)).toEqual(long.slice(0, MOST_CARDS));
    expect(read(SHIP).map(({ card }) => card)).toEqual(SHIP);
  });
});
