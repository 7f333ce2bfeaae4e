import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { assembleReading } from './assemble.ts';
import type { CardId } from './card-id.ts';
import type { SyllableType } from './reading.ts';

/**
 * The six types as they are taught, and what fits none of them. Common practice; published examples are
 * held in test/texas-syllables.test.ts.
 */
describe('the types of syllables', () => {
  it.each<[divided: string, types: readonly SyllableType[]]>([
    ['cat', ['closed']],
    ['jump·ing', ['closed', 'closed']],
    ['rab·bit', ['closed', 'closed']],
    ['me', ['open']],
    ['mu·sic', ['open', 'closed']],
    ['cake', ['vce']],
    ['in·side', ['closed', 'vce']],
    ['hoped', ['vce']],
    ['hik·ing', ['vce', 'closed']],
    ['bak·er', ['vce', 'r']],
    ['sign·ing', ['closed', 'closed']],
    ['rolled', ['closed']],
    ['rain', ['team']],
    ['coin', ['team']],
    ['rain·coat', ['team', 'team']],
    ['star', ['r']],
    ['cor·ner', ['r', 'r']],
    ['lit·tle', ['closed', 'cle']],
    ['ta·ble', ['open', 'cle']],
    ['na·tion', ['open', 'other']],
  ])('%s', (divided, types) => {
    const word = divided.replaceAll('·', '');
    const [reading] = builtLexicon.readings(builtLexicon.indexOf(word));
    expect(reading?.syllables.map(({ from, to }) => word.slice(from, to)).join('·')).toBe(divided);
    expect(reading?.syllables.map(({ type }) => type)).toEqual(types);
  });
});

describe('letters under their cards', () => {
  it.each<[word: string, ids: readonly CardId[], letters: readonly (readonly number[])[]]>([
    ['ship', ['sh=SH', 'i=IH', 'p=P'], [[0, 1], [2], [3]]],
    ['cake', ['c=K', 'a_e=EY', 'k=K'], [[0], [1, 3], [2]]],
    ['cakes', ['c=K', 'a_e=EY', 'k=K', 's=S'], [[0], [1, 3], [2], [4]]],
  ])('%s', (word, ids, letters) => {
    const reading = assembleReading(word, ids, []);
    expect(reading.cards.map((card) => card.letters)).toEqual(letters);
    expect(reading.cards.map(({ id }) => id)).toEqual(ids);
    expect(reading.fallback).toBe(false);
  });

  it.each<[word: string, ids: readonly CardId[]]>([
    ['cat', ['c=K', 'a=AE']],
    ['cat', ['c=K', 'o=AA', 't=T']],
    ['cat', ['c=K', 'a=AE', 't=T', 's=S']],
    ['cats', ['c=K', 'a=AE', 't=T']],
    ['cak', ['c=K', 'a_e=EY', 'k=K', 's=S']],
    ['', ['c=K']],
  ])('cards that do not spell it are a fault: %s', (word, ids) => {
    expect(() => assembleReading(word, ids, [])).toThrow(`${ids.join(' ')} does not spell ${word}`);
  });

  it('letters that no row explains have the sounds that were guessed, or none', () => {
    const reading = assembleReading('coz', ['c=K', 'o=?ER+L', 'z=?'], []);
    expect(reading.sounds).toEqual(['K', 'ER', 'L']);
    expect(reading.cards[1]).toMatchObject({ grapheme: 'o', phonemes: ['ER', 'L'], id: 'o=?ER+L' });
    expect(reading.cards[2]).toMatchObject({ grapheme: 'z', phonemes: [] });
    expect(reading.fallback).toBe(true);
  });
});
