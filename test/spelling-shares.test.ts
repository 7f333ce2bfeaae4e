import { describe, expect, it } from 'vitest';
import { builtLexicon } from './built-lexicon.ts';
import { dictionaryForms } from './dictionary-forms.ts';
import { readFixture } from './fixture.ts';

/**
 * Hanna 1966 as revised by Fry 2004: how often a sound is spelled so, in percent of its occurrences
 * in a dictionary. Each word of ours counts once, by its ordinary reading.
 * Consonants hold to the published figure within five points; what does not is listed with both
 * figures and a reason. The published figures from /ng/ to the end of the table (18 sounds) are from
 * memory. The vowels that differ are listed in docs/engine.md.
 */
const WITHIN = 5;

/** A reviewed row is read again when ours moves by more than this. */
const STEADY = 1.5;

/**
 * Our cards by the spelling that the table counts them under. It counts a final e apart, so that a
 * card with one goes with its consonant; -ed goes with d and t; g and ge are one there.
 */
const spellingsOfOurs: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  '/b/': { b: 'b=B be=B' },
  '/ch/': { ch: 'ch=CH', t: 't=CH', tch: 'tch=CH' },
  '/d/': { d: 'd=D de=D ed=D' },
  '/f/': { f: 'f=F fe=F', ph: 'ph=F', ff: 'ff=F ffe=F' },
  '/g/': { g: 'g=G', gg: 'gg=G', x: 'x=G+Z' },
  '/h/': { h: 'h=HH' },
  '/j/': { ge: 'g=JH ge=JH', j: 'j=JH', dge: 'dge=JH dg=JH', d: 'd=JH' },
  '/k/': { c: 'c=K', k: 'k=K ke=K', ck: 'ck=K', ch: 'ch=K che=K' },
  '/ks/': { x: 'x=K+S' },
  '/l/': { l: 'l=L le=L', ll: 'll=L lle=L' },
  '/m/': { m: 'm=M me=M', mm: 'mm=M mme=M' },
  '/n/': { n: 'n=N ne=N' },
  '/ng/': { ng: 'ng=NG ngue=NG', n: 'n=NG' },
  '/p/': { p: 'p=P pe=P', pp: 'pp=P ppe=P' },
  '/r/': { r: 'r=R' },
  '/s/': { s: 's=S se=S', c: 'c=S ce=S', ss: 'ss=S sse=S' },
  '/sh/': { ti: 'ti=SH', sh: 'sh=SH', ci: 'ci=SH', ssi: 'ssi=SH' },
  '/t/': { t: 't=T te=T ed=T', tt: 'tt=T tte=T' },
  '/th/': { th: 'th=TH th=DH the=DH' },
  '/v/': { v: 'v=V ve=V' },
  '/w/': { w: 'w=W', u: 'u=W gu=G+W' },
  '/y/': { i: 'i=Y', y: 'y=Y' },
  '/z/': { s: 's=Z se=Z', z: 'z=Z ze=Z' },
  '/zh/': { si: 'si=ZH', s: 's=ZH', g: 'g=ZH ge=ZH' },
};

/** Where our cards hold a sound together with another, that other is no part of its count. */
const soundsOfOurs: Readonly<Record<string, RegExp>> = {
  '/ch/': /^CH$/,
  '/g/': /^G(\+.*)?$/,
  '/h/': /^HH$/,
  '/j/': /^JH$/,
  '/ks/': /^K\+S$/,
  '/ng/': /^NG$/,
  '/sh/': /^SH$/,
  '/th/': /^(TH|DH)$/,
  '/w/': /^(W|G\+W)$/,
  '/zh/': /^ZH$/,
};

/** Rows that a comparison could not fail, or that we count otherwise. */
const notCompared: Readonly<Record<string, string>> = {
  '/hw/': 'one sound with /w/ in most American speech; our wh is always its spelling',
  '/kw/': 'qu is one card with both sounds, and /k/ with /w/ is counted nowhere else',
  '/ks/ cs': 'c and s are two cards',
  '/ul/': 'el, al and il are a faded vowel and an l, not cards of their own',
};

const SHORT_WORDS =
  'every one-syllable word is in our list, however rare: without those of the two rarest bands it is';

/** Further off than five points: ours, the published figure, why. Read by eye. */
const reviewed: Readonly<Record<string, readonly [ours: number, published: number, why: string]>> =
  {
    '/ch/ t': [25, 31, `${SHORT_WORDS} 29`],
    '/ng/ ng': [53, 59, '-ing is left out of ours with its base; of the table we do not know'],
    '/ng/ n': [47, 41, 'the other side of the same'],
    '/sh/ sh': [33, 26, `${SHORT_WORDS} 30`],
    '/y/ i': [48, 55, `${SHORT_WORDS} 58`],
    '/y/ y': [49, 44, `${SHORT_WORDS} 40`],
    '/z/ s': [70, 64, 'no reason found; the published figure is from memory'],
    '/zh/ si': [56, 49, 'rare: 124 cards in our list; the published figure is from memory'],
    '/zh/ s': [26, 33, 'the same'],
  };

const cards = countCards();
const rows = readFixture('hanna-fry-spellings.tsv')
  .filter(({ phoneme = '' }) => phoneme in spellingsOfOurs)
  .map(({ phoneme = '', grapheme = '', percent, source = '' }) => ({
    row: `${phoneme} ${grapheme}`,
    ours: share(phoneme, grapheme),
    published: Number(percent),
    from: source.includes('memory') ? 'from memory' : 'read',
  }))
  .filter(({ row }) => !(row in notCompared));

describe('consonant spellings, beside Hanna 1966 and Fry 2004', () => {
  it('has every consonant row of the table compared, or a reason why not', () => {
    const vowels = /^\/(a|A|Ar|ar|aw|u|e|E|Er|er|i|I|O|oi|OO|oo|ow|U)\//;
    const left = readFixture('hanna-fry-spellings.tsv')
      .map(({ phoneme, grapheme }) => [`${phoneme}`, `${phoneme} ${grapheme}`] as const)
      .filter(([phoneme]) => !vowels.test(phoneme))
      .filter(([phoneme, row]) => !(phoneme in notCompared) && !(row in notCompared))
      .map(([, row]) => row);
    expect(rows.map(({ row }) => row)).toEqual(left);
  });

  it.each(rows)('$row: $ours against $published, $from', ({ row, ours, published }) => {
    const known = reviewed[row];
    if (known) {
      expect(published).toBe(known[1]);
      expect(Math.abs(ours - known[0])).toBeLessThanOrEqual(STEADY);
    } else expect(Math.abs(ours - published)).toBeLessThanOrEqual(WITHIN);
  });

  it('lists no row as further off that is not', () => {
    const near = rows.filter(
      ({ row, ours, published }) => row in reviewed && Math.abs(ours - published) <= WITHIN,
    );
    expect(near).toEqual([]);
    const known = new Set(rows.map(({ row }) => row));
    expect(Object.keys(reviewed).filter((row) => !known.has(row))).toEqual([]);
  });
});

function share(phoneme: string, grapheme: string): number {
  const sounds = soundsOfOurs[phoneme] ?? new RegExp(`^${phoneme.slice(1, -1).toUpperCase()}$`);
  let all = 0;
  for (const [id, count] of cards) {
    if (sounds.test(id.slice(id.indexOf('=') + 1)) && !isOther(phoneme, id)) all += count;
  }
  const ours = spellingsOfOurs[phoneme]?.[grapheme] ?? '';
  const found = ours.split(' ').reduce((sum, id) => sum + (cards.get(id) ?? 0), 0);
  return Math.round((1000 * found) / all) / 10;
}

/** The wh of *white* is /hw/ in the table, and the gu of *penguin* both /g/ and /w/. */
function isOther(phoneme: string, id: string): boolean {
  return phoneme === '/w/' && id === 'wh=W';
}

function countCards(): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const index of dictionaryForms) {
    for (const id of builtLexicon.cardIds(index)) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return counts;
}
