import { dictionary } from 'cmu-pronouncing-dictionary';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFixture } from '../../test/fixture.ts';
import { align } from './align.ts';
import type { CardId } from './card-id.ts';
import { isLegalCoda } from './codas.ts';
import { type Correspondence, isVowelCard } from './correspondence.ts';
import {
  CORRESPONDENCES,
  correspondenceById,
  correspondencesByGrapheme,
} from './correspondences.ts';
import { type LaidSyllable, laySyllable, partsOf, soundsOf, spellingOf } from './laid-syllable.ts';
import { isLegalOnset } from './onsets.ts';
import { isVowelPhoneme } from './phonemes.ts';
import { parsePronunciation } from './pronunciation.ts';
import { brokenRules, SPELLING_RULES } from './spelling-rules.ts';

/** Cards written as ids, or as graphemes that mean their first sound. */
function lay(row: string): LaidSyllable {
  const cards = row
    .split(' ')
    .map(
      (text) => correspondenceById.get(text as CardId) ?? correspondencesByGrapheme.get(text)?.[0],
    );
  return laySyllable(cards as Correspondence[]) as LaidSyllable;
}

/** A real one-syllable word as cards, by its first pronunciation in CMUdict; null if it has no such. */
function layWord(word: string): LaidSyllable | null {
  const said = parsePronunciation(dictionary[word] ?? '');
  if (!said) return null;
  return laySyllable(
    align(word, said).cards.map(({ id }) => correspondenceById.get(id) as Correspondence),
  );
}

function broken(syllable: LaidSyllable): readonly string[] {
  return brokenRules(syllable).map(({ id }) => id);
}

/**
 * For each rule rows that break it and rows that keep it. Common practice where
 * the rule says so; the other rows follow the sentence of their source.
 */
const CASES: Readonly<Record<string, { breaks: readonly string[]; keeps: readonly string[] }>> = {
  'c-before-e-i-y': {
    breaks: ['c e t', 'c i_e t', 'sc i n'],
    keeps: ['c a t', 'c u_e b', 'sc a n', 'c=S e ll'],
  },
  'k-before-e-i-y-only': {
    breaks: ['k a n', 'k o b', 'sk u b', 'k oa t'],
    keeps: ['k i t', 'k e g', 'sk i n', 'k ee p', 'k i_e t'],
  },
  'soft-c-before-e-i-y': {
    breaks: ['c=S a t', 'c=S u t'],
    keeps: ['c=S e ll', 'c=S i t', 'c=S i_e t'],
  },
  'soft-g-before-e-i-y': { breaks: ['g=JH a m', 'g=JH o b'], keeps: ['g=JH e m', 'g=JH i ll'] },
  'hard-g-before-e-i-y': { breaks: ['g e f', 'g i_e t'], keeps: ['g a p', 'g oa t', 'gr i p'] },
  'ending-only': {
    breaks: [
      'x a t',
      'ck i t',
      'ng a t',
      'nk i t',
      'ff a t',
      'll a t',
      'ss a t',
      'zz a t',
      'tch i p',
      'dge a m',
      've a t',
    ],
    keeps: ['sh i p', 'z a p'],
  },
  'legal-onset': {
    breaks: ['t l a p', 'd n i t', 's r i m', 'v l o t'],
    keeps: ['t r a p', 'st r i p', 'thr o b', 'squ i d', 'p a t'],
  },
  'silent-first-letter-alone': { breaks: ['s kn i t', 's wr a p'], keeps: ['kn i t', 'wr a p'] },
  'wh-before-a-e-i': { breaks: ['wh o p', 'wh u t'], keeps: ['wh i p', 'wh e n', 'wh ee l'] },
  'qu-before-u': { breaks: ['qu u t', 'squ u_e t'], keeps: ['qu i t', 'squ i d', 'qu ee n'] },
  'voiced-th-first': { breaks: ['th=DH i b'], keeps: ['th i n'] },
  'or-after-w': { breaks: ['w or t', 'b or=ER t'], keeps: ['w or=ER m', 'f or t'] },
  'ar-after-w': {
    breaks: ['w ar p', 'b ar=AO+R t'],
    keeps: ['w ar=AO+R m', 'p ar t', 'qu ar=AO+R t'],
  },
  'a-says-o-after-w-only': {
    breaks: ['b a=AA t'],
    keeps: ['w a=AA n d', 'squ a=AA d', 's w a=AA n'],
  },
  'long-u-without-y': {
    breaks: ['r u_e=Y+UW l', 'j u_e=Y+UW n', 'fl u_e=Y+UW t'],
    keeps: ['r u_e=UW l', 'c u_e=Y+UW b', 'm u_e=Y+UW l'],
  },
  'long-u-with-y': {
    breaks: ['c u_e=UW b', 'm u_e=UW l', 'f ew=UW'],
    keeps: ['c u_e=Y+UW b', 't u_e=UW b', 'd u_e=UW k', 'bl ue=UW'],
  },
  'a-after-w': {
    breaks: ['w a n', 'qu a t', 'w a=AA g', 'sw a b'],
    keeps: ['w a g', 'w a x', 'qu a ck', 'tw a ng', 'w a=AA n t', 'w e t'],
  },
  'short-vowel-closed': { breaks: ['b a', 'st e'], keeps: ['b a t', 'm e=IY'] },
  'a-before-l': {
    breaks: ['f a ll', 's a l t', 'b a=AO t'],
    keeps: ['b a=AO ll', 'b e ll', 'b a t'],
  },
  'al-before-k-m': { breaks: ['t al=AO p', 'c al=AA k'], keeps: ['t al=AO k', 'c al=AA m'] },
  'o-long-before-ld': {
    breaks: ['g o ld', 'b o lt', 't o ll', 'm o st', 'b o th'],
    keeps: ['p o nd', 'h o t', 'r o ck'],
  },
  'i-long-before-ld': { breaks: ['m i ld', 'f i nd'], keeps: ['h i nt', 'l i ft'] },
  'long-vowel-open': {
    breaks: ['m e=IY t', 'g o=OW b', 'h i=AY p'],
    keeps: ['m e=IY', 'g o=OW', 'm o=OW st', 'g o=OW ld', 'k i=AY nd', 'fl y=AY'],
  },
  'a-i-u-not-last': {
    breaks: ['b a=EY', 'sp i=AY', 'dr u=UW', 'fl y=IY'],
    keeps: ['m e=IY', 'fl y=AY', 'g o=OW', 'gr ay', 'bl ue=UW'],
  },
  'team-inside': {
    breaks: ['r ai', 'b oi', 'f oa', 'p au', 'n ou'],
    keeps: ['r ai n', 'r ay', 'b oy', 't oe', 'n ow=AW', 's ea', 's ee', 'h igh'],
  },
  'team-last': {
    breaks: ['r ay n', 'b oy l', 'f ew=UW d', 'bl ue=UW n', 't oe d', 'p ie=AY t'],
    keeps: ['pl ay', 't oy', 'n ew=UW', 'f ie=IY ld', 'p ie=AY'],
  },
  'aw-ow-before': {
    breaks: ['t aw p', 's ow=OW p', 't ow=AW p'],
    keeps: ['y aw n', 'h aw k', 'cr aw l', 't ow=AW n', 'b ow=OW l', 's aw', 'cr ow=AW d'],
  },
  'gh-team-before-t': {
    breaks: ['l igh m', 't augh p', 'b ough=AO'],
    keeps: ['n igh t', 'h igh', 't augh t', 'w eigh', 'th ough=AO t'],
  },
  'oo-before-k': {
    breaks: ['b oo=UW k', 'm oo=UH n'],
    keeps: ['b oo=UH k', 'm oo=UW n', 'g oo=UH d', 'f oo=UH t'],
  },
  'silent-e-one-consonant': {
    breaks: ['b a_e x', 'b a_e ck', 'b a_e ll', 't a_e nd', 'b a_e sh', 'h a_e ve'],
    keeps: ['b a_e k', 'h o_e m', 'r a_e c=S', 'g a_e v', 'p a_e g=JH'],
  },
  'r-after-vowel': { breaks: ['b a r', 'b a_e r', 'c a r t'], keeps: ['b ar', 'c ar t'] },
  'r-vowel-with-e-last': {
    breaks: ['c are t', 'm ore n', 'f ire d'],
    keeps: ['c are', 'm ore', 'f ire', 'h air'],
  },
  'never-last': {
    breaks: ['b a c', 'b a j', 'b a h', 'b a w', 'b a y=Y', 'b a qu', 'b a v', 'm ea v'],
    keeps: ['b a ck', 'l o ve', 'r a_e v', 'f a ct'],
  },
  'first-only': { breaks: ['b a kn', 'b e wr', 'b a gn', 'b a wh'], keeps: ['kn o b', 'b a n'] },
  'ck-after-short': {
    breaks: ['b a k', 'l o k'],
    keeps: ['b a ck', 'l oo=UH k', 'b a_e k', 'm i lk', 'm a sk'],
  },
  'doubled-f-l-s-z': {
    breaks: ['st i f', 'b e l', 'm e s', 'b u z'],
    keeps: ['st i ff', 'b e ll', 'm e ss', 'b u zz', 'l ea f', 'h e lp', 'm i_e l'],
  },
  'double-after-short-only': {
    breaks: ['l ea ff', 'r ai ll', 'b a_e ss', 'f or ck', 'w ee ck'],
    keeps: ['cl i ff', 'h i ll', 'b a=AO ll', 'r o=OW ll'],
  },
  'tch-after-short': {
    breaks: ['b a ch', 'p ea tch', 'l u n tch'],
    keeps: ['b a tch', 'p ea ch', 'l u nch', 't or ch'],
  },
  'dge-after-short': {
    breaks: ['b a ge', 'l ar dge', 'r ai dge'],
    keeps: ['b a dge', 'l ar ge', 'h i n ge'],
  },
  'consonant-e-after-long': {
    breaks: ['b a ce', 'p i se', 'm o ze'],
    keeps: ['p ea ce', 'd a n ce', 'n oi se=Z', 'n er ve', 'b r ee ze'],
  },
  'ng-nk-x-after-short': {
    breaks: ['b ai ng', 'p ee nk', 's oa x'],
    keeps: ['b a ng', 'p i nk', 'f o x'],
  },
  'soft-c-g-last': {
    breaks: ['r a_e c=K', 'w a_e g=G', 'r a c=S', 'b a g=JH'],
    keeps: ['r a_e c=S', 'w a_e g=JH', 'b a g'],
  },
  'single-s-after-team': {
    breaks: ['p ea s', 'h ou s', 'n oi z', 'h or s'],
    keeps: ['p ea ce', 'h ou se', 'n oi se=Z', 'b u s', 'p ea s=Z'],
  },
  's-says-z-after-voiced': { breaks: ['c a t s=Z', 'd o g s'], keeps: ['c a t s', 'd o g s=Z'] },
  'legal-coda': {
    breaks: ['b a m b', 'b i t p', 'd e l g', 'b a n ng'],
    keeps: ['h e lp', 'n e xt', 'b u nch', 'f ir st', 'l a pt', 'm u mb'],
  },
  'few-after-long-r-vowel': {
    breaks: ['f ear g', 'br air f', 'd eer m'],
    keeps: ['b ear d', 'h air', 'f our th', 'l ear=ER n', 's oar=AO+R'],
  },
  'no-y-after-y-or-qu': { breaks: ['y y=AY', 'qu y=AY t'], keeps: ['y e s', 'qu i t'] },
  'no-oe-after-w': { breaks: ['t w oe', 'w oe'], keeps: ['t oe', 'w ow'] },
  'one-r': { breaks: ['c r or p', 'r ar'], keeps: ['c or p', 'r i p'] },
  'one-l': { breaks: ['s l i l m', 'l e ll'], keeps: ['s l i m', 'f e ll'] },
  'one-hiss': { breaks: ['th a sh', 'sh e ss', 'th e ff'], keeps: ['th i n', 'sh o t', 's a sh'] },
  'e-not-last': { breaks: ['bl e=IY', 't e=IY'], keeps: ['bl ee', 'b e t', 't ea'] },
  'y-inside': { breaks: ['b y=IH ck', 'j y=IH sh'], keeps: ['g y=IH m', 'm y=IH th'] },
  'ow-oi-before': {
    breaks: ['g ou b', 'm oi b', 'y ou f'],
    keeps: ['l ou d', 'c oi n', 'm ou th', 'sh ou t'],
  },
  'looks-like-more-than-one': { breaks: ['d oi s=Z', 'sn ai s=Z'], keeps: ['d oi d', 'n oi se=Z'] },
  'mb-after-letter': { breaks: ['qu ear mb', 'b ea mb'], keeps: ['th u mb', 'l a mb'] },
  'past-form': { breaks: ['l a p t', 'f a c t', 't a x t'], keeps: ['l a p', 'l a s t'] },
  'cluster-after-long': {
    breaks: ['l ea mp', 'r ai sk', 's oi lk'],
    keeps: ['p ai nt', 'f ie=IY ld', 't oa st', 'r ou nd'],
  },
};

describe('spelling rules', () => {
  test('every rule is covered by a table, and keeps what it should keep', () => {
    expect(Object.keys(CASES).sort()).toEqual(SPELLING_RULES.map(({ id }) => id).sort());
  });

  for (const rule of SPELLING_RULES) {
    test(`${rule.id}: ${rule.title}`, () => {
      const { breaks, keeps } = CASES[rule.id] as (typeof CASES)[string];
      for (const row of breaks) expect(`${row}: ${rule.breaks(lay(row))}`).toBe(`${row}: true`);
      for (const row of keeps) expect(`${row}: ${rule.breaks(lay(row))}`).toBe(`${row}: false`);
      expect(rule.exceptions).toEqual([...rule.exceptions].sort());
    });
  }

  // National Curriculum in England, English Appendix 1: Spelling (DfE 2013), Years 1 and 2, rows
  // of correspondences; British words as CMUdict says them.
  const rows = readFixture('nc-appendix1.tsv').filter(({ kind }) => kind === 'gpc');
  const exceptional = new Set(SPELLING_RULES.flatMap(({ exceptions }) => exceptions));

  test('short example words of the National Curriculum keep every rule', () => {
    let checked = 0;
    for (const { example_words, grapheme } of rows) {
      for (const word of (example_words ?? '').split(' ')) {
        if (exceptional.has(word)) continue;
        const syllable = layWord(word.toLowerCase());
        if (!syllable) continue;
        checked++;
        expect(`${grapheme} ${word}: ${broken(syllable)}`).toBe(`${grapheme} ${word}: `);
      }
    }
    expect(checked).toBeGreaterThan(150);
  });

  test('words that the National Curriculum names as exceptions break the rule of their row', () => {
    const doubled = ['if', 'pal', 'us', 'bus', 'yes'];
    const tch = ['rich', 'which', 'much', 'such'];
    const named = rows.flatMap(({ exceptions_named }) => exceptions_named?.split(' ') ?? []);
    for (const word of [...doubled, ...tch]) expect(named).toContain(word);
    for (const word of doubled) {
      const syllable = layWord(word) as LaidSyllable;
      expect(`${word} ${broken(syllable)}`).toContain('doubled-f-l-s-z');
    }
    for (const word of tch) {
      expect(`${word} ${broken(layWord(word) as LaidSyllable)}`).toContain('tch-after-short');
    }
  });

  test('every named exception is a real word that breaks its rule', () => {
    for (const rule of SPELLING_RULES) {
      for (const word of rule.exceptions) {
        expect(Object.hasOwn(dictionary, word) ? '' : word).toBe('');
        const syllable = layWord(word);
        if (syllable) expect(`${word} ${rule.breaks(syllable)}`).toBe(`${word} true`);
      }
    }
  });

  test('a rule that reads one side does not care what stands on the other', () => {
    const vowels = fc.constantFrom(...CORRESPONDENCES.filter(isVowelCard));
    const consonants = CORRESPONDENCES.filter(
      (card) => !isVowelCard(card) && card.phonemes.length > 0,
    );
    const side = fc
      .array(fc.constantFrom(...consonants), { maxLength: 2 })
      .map((cards) => cards.flatMap(partsOf));
    fc.assert(
      fc.property(vowels, side, side, side, (vowel, onset, coda, other) => {
        const base = { vowel, opens: true, closes: true };
        for (const rule of SPELLING_RULES) {
          if (rule.reads === 'all') continue;
          const swapped =
            rule.reads === 'beginning' ? { onset, coda: other } : { onset: other, coda };
          expect(`${rule.id} ${rule.breaks({ ...base, ...swapped })}`).toBe(
            `${rule.id} ${rule.breaks({ ...base, onset, coda })}`,
          );
        }
      }),
    );
  });
});

describe('onsets and codas', () => {
  test('the clusters that Hayes & Wilson (2008) count are legal, every one', () => {
    const counted = readFixture('onsets-hayes-wilson-2008.tsv')
      .map(({ onset_arpabet }) => (onset_arpabet as string).split(' '))
      .filter((onset) => onset.length > 1);
    expect(counted.length).toBe(33);
    for (const onset of counted) expect(isLegalOnset(onset as never), onset.join(' ')).toBe(true);
  });

  test('onsets that no table lists are not legal', () => {
    // Hayes & Wilson 2008 list none of these; classic examples of impossible English onsets.
    for (const onset of ['T L', 'D L', 'S R', 'N R', 'Z V', 'K N', 'B N', 'NG']) {
      expect(isLegalOnset(onset.split(' ') as never)).toBe(false);
    }
  });

  test('the example words of the coda tables end legally', () => {
    let checked = 0;
    for (const { size, examples } of readFixture('codas.tsv')) {
      if (size === 'suffix') continue;
      for (const word of (examples ?? '').toLowerCase().split(' ').filter(Boolean)) {
        const said = parsePronunciation(dictionary[word] ?? '')?.sounds;
        if (!said) continue;
        const at = said.findLastIndex(isVowelPhoneme);
        const coda = said.slice(at + 1);
        const afterR = coda[0] === 'R' || said[at] === 'ER';
        const rest = coda[0] === 'R' ? coda.slice(1) : coda;
        checked++;
        expect(`${word} ${isLegalCoda(rest, afterR)}`).toBe(`${word} true`);
      }
    }
    expect(checked).toBeGreaterThan(20);
  });
});

describe('a laid syllable', () => {
  test('spells a split card around the ending and says the cards in order', () => {
    expect(spellingOf(lay('b a_e k'))).toBe('bake');
    expect(soundsOf(lay('b a_e k')).join(' ')).toBe('B EY K');
    expect(spellingOf(lay('str i nk'))).toBe('strink');
    expect(soundsOf(lay('str i nk')).join(' ')).toBe('S T R IH NG K');
  });

  test('needs exactly one vowel', () => {
    const cards = (['b=B', 't=T'] satisfies readonly CardId[]).map(
      (id) => correspondenceById.get(id) as Correspondence,
    );
    expect(laySyllable(cards)).toBeNull();
    const vowel = correspondenceById.get('a=AE') as Correspondence;
    expect(laySyllable([vowel, ...cards, vowel])).toBeNull();
  });
});
