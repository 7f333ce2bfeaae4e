import { describe, expect, it } from 'vitest';
import type { CardId } from '../core/language/card-id.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { partsOfContraction } from '../core/texts/contractions.ts';
import { judgePassage } from '../core/texts/passage.ts';
import { tokensOf } from '../core/texts/tokens.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * England's National Curriculum, English Appendix 1: Spelling (DfE 2013), Year 2, and the row of
 * Years 5 and 6 on ei after c: every example word shows its row's spelling, and what the table says
 * of a row holds in the word list. Endings: national-curriculum-endings.test.ts. Short words
 * against each rule: core/language/spelling-rules.test.ts.
 *
 * Per row the cards, one after another, that count as its spelling; American, mapped by hand from
 * the table's RP. In *age* the e stands behind the g and belongs to a_e.
 */
const cardsByRow: Readonly<Record<string, readonly string[]>> = {
  '/dʒ/ spelt -dge': ['dge=JH'],
  '/dʒ/ spelt -ge': ['ge=JH', 'a_e=EY g=JH', 'u_e=Y+UW g=JH'],
  '/dʒ/ spelt g before e i y': ['g=JH'],
  '/dʒ/ spelt j': ['j=JH'],
  '/s/ spelt c before e i y': ['c=S'],
  '/n/ spelt kn': ['kn=N'],
  '/n/ spelt gn': ['gn=N'],
  '/r/ spelt wr': ['wr=R'],
  '/l/ or /əl/ spelt -le': ['le=AX+L'],
  '/l/ or /əl/ spelt -el': ['e=AX l=L'],
  '/l/ or /əl/ spelt -al': ['a=AX l=L'],
  'Words ending -il': ['i=IH l=L'],
  '/aɪ/ spelt -y at the end of words': ['y=AY'],
  '/ɔ:/ spelt a before l and ll': ['a=AO l=L', 'a=AO ll=L', 'al=AO'],
  '/ʌ/ spelt o': ['o=AH'],
  '/i:/ spelt -ey': ['ey=IY'],
  '/ɒ/ spelt a after w and qu': ['a=AA'],
  '/ɜ:/ spelt or after w': ['w=W or=ER'],
  '/ɔ:/ spelt ar after w': ['w=W ar=AO+R'],
  '/ʒ/ spelt s': ['s=ZH', 'si=ZH'],
  'Words ending -tion': ['ti=SH o=AX n=N'],
  '/i:/ spelt ei after c': ['c=S ei=IY'],
};

const table = readFixture('nc-appendix1.tsv');
const rows = table.filter(({ year, kind, row = '' }) => {
  return (year === '2' && kind === 'gpc') || row === '/i:/ spelt ei after c';
});
const rowOf = (start: string) => table.find(({ row }) => row?.startsWith(start));
const all = Array.from({ length: builtLexicon.size }, (_, index) => index);

describe('Year 2 of the National Curriculum', () => {
  it('has all its spelling rows mapped', () => {
    expect(rows.map(({ row }) => row).sort()).toEqual(Object.keys(cardsByRow).sort());
  });

  it.each(rows)('$row: $example_words', ({ row = '', example_words = '' }) => {
    for (const word of example_words.split(' ')) {
      const readings = readingsOf(word);
      const shown = cardsByRow[row]?.some((cards) => readings.some((ids) => shows(ids, cards)));
      expect(shown, `${word} shows ${cardsByRow[row]}`).toBe(true);
    }
  });

  it('“the letter j is never used at the end of English words”', () => {
    expect(all.map((index) => builtLexicon.word(index)).filter((word) => /j$/.test(word))).toEqual(
      [],
    );
  });

  it('“-dge straight after the short vowels”, after all other sounds -ge', () => {
    const ge = all.filter(
      (index) =>
        builtLexicon.syllableCount(index) === 1 && builtLexicon.cardIds(index).at(-1) === 'ge=JH',
    );
    expect(ge.length).toBeGreaterThan(20);
    for (const index of ge) {
      const before = correspondenceById.get(builtLexicon.cardIds(index).at(-2) as CardId);
      expect(before?.kind, builtLexicon.word(index)).not.toBe('short-vowel');
    }
  });

  it('kn, gn and wr stand at the beginning of words or of their parts', () => {
    const words = 'knock know knee gnat gnaw write written wrote wrong wrap'.split(' ');
    for (const word of words) expect(readingsOf(word)[0]?.[0], word).toMatch(/^(kn|gn|wr)=/);
  });

  it('“great, break and steak are the only common words where /eɪ/ is spelt ea”', () => {
    expect(rowOf('Common exception words (Y2)')?.rule).toContain('great, break and steak');
    const common = all
      .filter((index) => builtLexicon.band(index) <= 5)
      .filter((index) => builtLexicon.cardIds(index).includes('ea=EY'))
      .map((index) => builtLexicon.word(index));
    for (const word of ['great', 'break', 'steak']) expect(common).toContain(word);
    expect(common.filter((word) => !/^(out|heart|un)?(great|break|steak)/.test(word))).toEqual([]);
  });

  it('its ea words are irregular there', () => {
    for (const word of ['great', 'break', 'steak']) {
      expect(builtLexicon.isRegular(builtLexicon.indexOf(word)), word).toBe(false);
    }
  });

  it('protein, caffeine and seize have ei for /ē/ and no c before it', () => {
    const words = rowOf('/i:/ spelt ei after c')?.exceptions_named?.split(' ') ?? [];
    expect(words).toEqual(['protein', 'caffeine', 'seize']);
    for (const word of words) {
      const [ids = []] = readingsOf(word);
      expect(ids, word).toContain('ei=IY');
      expect(shows(ids, 'c=S ei=IY'), word).toBe(false);
    }
  });
});

describe('contractions and possessives of Year 2', () => {
  /** What each is built on; common knowledge. */
  const built: Readonly<Record<string, string>> = {
    "can't": 'can',
    "didn't": 'did',
    "hasn't": 'has',
    "couldn't": 'could',
    "it's": 'it',
    "I'll": 'i',
    "girl's": 'girl',
    "child's": 'child',
    "man's": 'man',
  };
  const names = ["Megan's", "Ravi's"];

  it('has every example of the table', () => {
    const examples = ['Contractions', 'Possessive apostrophe'].flatMap(
      (start) => rowOf(start)?.example_words?.split(' ') ?? [],
    );
    expect(examples.sort()).toEqual([...Object.keys(built), ...names].sort());
  });

  it.each(Object.entries(built))('%s is one word, built on %s', (written, base) => {
    for (const text of [written, written.replace("'", '’')]) {
      const [token] = tokensOf(text);
      expect(token?.text).toBe(text);
      const parts = partsOfContraction(token?.word ?? '', builtLexicon);
      expect(parts && builtLexicon.word(parts.base)).toBe(base);
    }
  });

  it.each(names)('%s is a name, judged by its letters', (name) => {
    const taught = taughtUpTo(SEQUENCE, SEQUENCE.steps.length);
    const passage = judgePassage(`We like ${name} hat.`, taught, builtLexicon, SEQUENCE);
    expect(passage.judged.get(name.toLowerCase())).toMatchObject({ name: true, source: 'guess' });
  });
});

function readingsOf(word: string): readonly (readonly string[])[] {
  const index = builtLexicon.indexOf(word.toLowerCase());
  expect(index, `${word} is in the word list`).toBeGreaterThanOrEqual(0);
  return builtLexicon.readings(index).map(({ cards }) => cards.map(({ id }) => id));
}

/** Whether the cards named stand one after another in a word. */
function shows(ids: readonly string[], cards: string): boolean {
  return ` ${ids.join(' ')} `.includes(` ${cards} `);
}
