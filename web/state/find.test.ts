import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { taughtUpTo } from '../../core/sequence/teach.ts';
import { readAs } from '../../core/words/decodable.ts';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { makePlainScreen } from '../../test/plain-screen.ts';
import { hardnessOf } from './easiest-first.ts';
import { find } from './find.ts';
import { verdictOf } from './verdict-of.ts';
import { ANY_WORD, type WordWish } from './wish.ts';

const all = taughtUpTo(SEQUENCE, SEQUENCE.steps.length);

function spelled(some: Partial<WordWish>): readonly string[] {
  return find({ ...ANY_WORD, ...some }, all, { lexicon }).map((entry) =>
    entry.map((index) => lexicon.word(index)).join('/'),
  );
}

// The pairs are common practice, no source.
describe('finding words', () => {
  it('brings pairs that differ in one card', () => {
    expect(spelled({ left: 'i=IH', right: 'e=EH' })).toContain('pin/pen');
    expect(spelled({ left: 'sh=SH', right: 'ch=CH' })).toContain('ship/chip');
  });

  it('keeps to the place of a card', () => {
    expect(spelled({ card: 'sh=SH', place: 'beginning' })).toContain('ship');
    expect(spelled({ card: 'sh=SH', place: 'beginning' })).not.toContain('fish');
    expect(spelled({ card: 'sh=SH', place: 'ending' })).toContain('fish');
  });

  it('leaves irregular words out unless they are wanted', () => {
    expect(spelled({})).not.toContain('said');
    expect(spelled({ irregular: true, onlyTaught: false })).toContain('said');
  });

  it('leaves out what is read by heart and its forms unless they are wanted', () => {
    const early = taughtUpTo(SEQUENCE, 60);
    const words = (irregular: boolean) =>
      find({ ...ANY_WORD, irregular }, early, { lexicon })
        .flat()
        .map((index) => lexicon.word(index));
    for (const index of find(ANY_WORD, early, { lexicon }).flat()) {
      const way = readAs(index, lexicon, { ...early, irregularWords: new Set() });
      expect(['cards', 'flexed']).toContain(way?.kind);
    }
    expect(words(true).length).toBeGreaterThan(words(false).length);
  });

  it('finds letters side by side, and orders by the alphabet', () => {
    const words = spelled({ letters: 'ough', irregular: true, onlyTaught: false });
    expect(words.length).toBeGreaterThan(5);
    for (const word of words) expect(word).toContain('ough');
    const sorted = spelled({ card: 'sh=SH', order: 'letters' });
    expect(sorted).toEqual(sorted.toSorted((one, other) => (one < other ? -1 : 1)));
    expect(sorted.length).toBe(spelled({ card: 'sh=SH' }).length);
  });

  it('orders the easiest first by hardness, the same words in both orders', () => {
    const wish = { ...ANY_WORD, card: 'sh=SH' as const };
    const common = find(wish, all, { lexicon });
    const easy = find({ ...wish, order: 'easy' }, all, { lexicon });
    expect([...easy].sort()).toEqual([...common].sort());
    const values = easy.map(([index]) => hardnessOf(index as number, lexicon));
    expect(values).toEqual([...values].sort((one, other) => one - other));
  });
});

describe('the verdict on a word', () => {
  it('is the strictest over all the ways it can be said', () => {
    const read = lexicon.indexOf('read');
    expect(lexicon.readings(read).length).toBeGreaterThan(1);
    const last = lexicon.readings(read).at(-1)?.sounds.join(' ');
    const screen = {
      judge: (_: string, sounds: readonly string[]) => ({
        verdict: sounds.join(' ') === last ? ('stop' as const) : ('clear' as const),
        category: null,
        reason: null,
      }),
    };
    expect(verdictOf(read, lexicon, screen).verdict).toBe('stop');
    expect(verdictOf(read, lexicon, makePlainScreen([], [])).verdict).toBe('clear');
  });
});
