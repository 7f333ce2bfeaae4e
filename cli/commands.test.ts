import { describe, expect, it } from 'vitest';
import { drill } from './drill.ts';
import { Failure } from './failure.ts';
import { spell } from './spell.ts';
import { words } from './words.ts';

/** The keys that docs/cli.md promises. */
describe('the terminal', () => {
  it('spells a word into cards and syllables', () => {
    const [entry] = JSON.parse(spell(['make', '--json']));
    expect(entry.word).toBe('make');
    const [reading] = entry.readings;
    expect(reading).toMatchObject({ primary: true, sounds: 'M EY K' });
    expect(reading.cards[1]).toMatchObject({
      grapheme: 'a_e',
      letters: [1, 3],
      phonemes: ['EY'],
      id: 'a_e=EY',
      regular: true,
    });
    expect(reading.syllables).toEqual([{ from: 0, to: 4, type: 'vce' }]);
  });

  it('writes the schwa as CMUdict does, and silent letters without sounds', () => {
    const [about, island] = JSON.parse(spell(['about', 'island', '--json']));
    expect(about.readings[0].sounds).toBe('AH B AW T');
    const silent = island.readings[0].cards.find(
      ({ grapheme }: { grapheme: string }) => grapheme === 's',
    );
    expect(silent.phonemes).toEqual([]);
    expect(silent.regular).toBe(false);
  });

  it('says that it guesses where a word is not listed', () => {
    const [entry] = JSON.parse(spell(['blick', '--json']));
    expect(entry.readings[0].guess).toBe(true);
  });

  it('lists words commonest first, of taught cards only', () => {
    const found = JSON.parse(
      words(['--taught', 'a,m,s,t,sh,i,p', '--shape', 'cvc', '--limit', '8', '--json']),
    );
    expect(found).toHaveLength(8);
    const cards = new Set(['a', 'm', 's', 't', 'sh', 'i', 'p']);
    let band = 1;
    for (const word of found) {
      expect(word.cards.every((card: string) => cards.has(card))).toBe(true);
      expect(word.band).toBeGreaterThanOrEqual(band);
      band = word.band;
    }
  });

  it('gives the same drill for the same seed, with the promised keys', () => {
    const asked = ['--taught', 'step:30', '--seed', '7', '--flips', '30', '--json'];
    const made = JSON.parse(drill(asked));
    expect(JSON.parse(drill(asked))).toEqual(made);
    expect(made.run).toHaveLength(30);
    expect(made.board.piles).toHaveLength(3);
    expect(Object.keys(made.run[0]).sort()).toEqual(['cards', 'kind', 'sounds', 'word']);
    expect(Object.keys(made.auditory[0]).sort()).toEqual(['phoneme', 'spellings']);
    expect(made.run.filter(({ kind }: { kind: string }) => kind === 'real')).toHaveLength(15);
  });

  it('ends with a message that names what is unknown', () => {
    expect(() => words(['--taught', 'a,zhh'])).toThrow(Failure);
    expect(() => words(['--taught', 'a,zhh'])).toThrow('zhh');
    expect(() => words(['--taught', 'step:900'])).toThrow('900');
    expect(() => words(['--taught', 'a', '--shpe', 'cvc'])).toThrow('--shape');
    expect(() => drill(['--taught', 'a'])).toThrow('--seed');
  });
});
