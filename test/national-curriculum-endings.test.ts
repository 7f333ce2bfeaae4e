import { describe, expect, it } from 'vitest';
import type { CardId } from '../core/language/card-id.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import { isOneShortVowel } from '../core/language/vowel-before-ending.ts';
import { findMorphemes } from '../lexicon/morphology.ts';
import { readSources } from '../lexicon/sources.ts';
import { readWordNet } from '../lexicon/wordnet.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * England's National Curriculum, English Appendix 1: Spelling (DfE 2013), Year 2, the rows on
 * endings: each example word is built from its base as its row says, the base is in the word list,
 * base and ending are found apart, and the exceptions that a row names go against it. The words
 * with x are from memory of the same row.
 */
const ENDINGS = ['ing', 'est', 'ment', 'ness', 'less', 'ful', 'ed', 'er', 'es', 'ly', 'y'] as const;

const { sizes, pronunciations } = readSources();
const finder = {
  said: (word: string) => (sizes.has(word) ? pronunciations.get(word) : undefined),
  wordnet: readWordNet((word) => sizes.has(word)),
};

/** How a row of the table changes a base before an ending; null where its rule does not apply. */
const RULES: readonly {
  readonly row: string;
  readonly change: (base: string, ending: string) => string | null;
}[] = [
  {
    row: 'Adding -es to words ending -y',
    change: (base) => (base.endsWith('y') ? `${base.slice(0, -1)}i` : null),
  },
  {
    row: 'Adding -ed -ing -er -est to root ending consonant + y',
    change: (base, ending) => {
      if (!/[^aeiou]y$/.test(base)) return null;
      return ending === 'ing' ? base : `${base.slice(0, -1)}i`;
    },
  },
  {
    row: 'Adding -ing -ed -er -est -y to words ending consonant + e',
    change: (base) => (/[^aeiou]e$/.test(base) ? base.slice(0, -1) : null),
  },
  {
    row: 'Adding -ing -ed -er -est -y to one-syllable words, single consonant after single vowel letter',
    change: (base) => (/^[^aeiou]*[aeiou][^aeiou]$/.test(base) ? base + base.at(-1) : null),
  },
  {
    row: 'Suffixes -ment -ness -ful -less -ly',
    change: (base) => (/[aeiou].*[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}i` : base),
  },
];

const rows = readFixture('nc-appendix1.tsv').filter(
  ({ year, kind }) => year === '2' && kind === 'suffix',
);

/** Endings that run together with their base begin no part of their own (*shi·ny*, *run·ny*). */
const RUN_TOGETHER = ['shiny', 'runny'];

/** Words of the table that the pronouncing dictionary leaves out; the word list has them said by rule. */
const UNSAID = ['hummed', 'plainness', 'merriment'];

describe.each(RULES)('$row', ({ row, change }) => {
  const found = rows.find((one) => one.row === row);
  const examples = found?.example_words?.split(' ') ?? [];

  it('has example words', () => {
    expect(examples.length).toBeGreaterThan(4);
  });

  it.each(examples)('%s is a listed base and its ending, joined by the rule', (word) => {
    expect(listed(word), `${word} is in the word list`).toBe(true);
    expect(built(word, change), word).not.toBeNull();
  });

  const parted = examples.filter((word) => !RUN_TOGETHER.includes(word) && !UNSAID.includes(word));
  it.each(parted)('%s parts where its ending begins', (word) => {
    const { breaks } = findMorphemes(word, pronunciations.get(word)?.[0] as string, finder);
    const ending = built(word, change)?.ending as string;
    const at = word.length - ending.length;
    // copie·d and flie·s: one vowel card holds the letters on both sides.
    const joined = /i(ed|es)$/.test(word) ? at + 1 : at;
    expect(breaks, word).toContain(joined);
  });
});

describe('the words that the rows name as exceptions', () => {
  it('are the ones checked here', () => {
    expect(rows.flatMap(({ exceptions_named }) => exceptions_named?.split(' ') ?? [])).toEqual(
      expect.arrayContaining(
        'skiing taxiing being mixing mixed boxer sixes argument'.split(' ') as unknown[],
      ),
    );
  });

  it('“the only ordinary words with ii are skiing and taxiing”', () => {
    const words = listedWords().filter((word) => /ii/.test(word));
    expect(words.sort()).toEqual(['skiing', 'taxiing']);
  });

  it('being keeps the e of be', () => {
    expect(findMorphemes('being', pronunciations.get('being')?.[0] as string, finder)).toEqual({
      breaks: [2],
      suffixAt: 2,
    });
    expect(change(2)('be', 'ing')).not.toBe('be');
  });

  it('x is never doubled', () => {
    expect(listedWords().filter((word) => /xx/.test(word))).toEqual([]);
    for (const word of ['mixing', 'mixed', 'boxer', 'sixes']) {
      expect(built(word, change(3)), word).toBeNull();
      expect(builtLexicon.cardIds(builtLexicon.indexOf(word)), word).toContain('x=K+S');
    }
  });

  it('argument is not argue with -ment added straight on', () => {
    expect(listed('argue')).toBe(true);
    expect(built('argument', change(4))).toBeNull();
  });
});

describe('a doubled consonant before an ending', () => {
  it('is one card, and the vowel before it is short', () => {
    const doubled = rows.find(({ row }) => row === RULES[3]?.row)?.example_words?.split(' ') ?? [];
    for (const word of doubled) {
      const ids = builtLexicon.cardIds(builtLexicon.indexOf(word));
      const at = ids.findIndex((id) => correspondenceById.get(id)?.kind === 'double');
      expect(at, word).toBeGreaterThan(0);
      const vowel = correspondenceById.get(ids[at - 1] as CardId);
      expect(vowel && isOneShortVowel(vowel), word).toBe(true);
    }
  });
});

function change(rule: number): (typeof RULES)[number]['change'] {
  return RULES[rule]?.change as (typeof RULES)[number]['change'];
}

/** The listed base and the ending that a rule joins to this word, or null. */
function built(
  word: string,
  rule: (typeof RULES)[number]['change'],
): { readonly base: string; readonly ending: string } | null {
  for (const ending of ENDINGS) {
    if (!word.endsWith(ending)) continue;
    const stem = word.slice(0, -ending.length);
    const bases = [stem, `${stem}e`, `${stem.slice(0, -1)}y`, stem.slice(0, -1)];
    const base = bases.find((one) => listed(one) && rule(one, ending) === stem);
    if (base) return { base, ending };
  }
  return null;
}

function listed(word: string): boolean {
  return builtLexicon.indexOf(word) >= 0;
}

function listedWords(): string[] {
  return Array.from({ length: builtLexicon.size }, (_, index) => builtLexicon.word(index));
}
