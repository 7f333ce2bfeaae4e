import { type LaidSyllable, lettersOf } from './laid-syllable.ts';
import { COMMON_PRACTICE, NATIONAL_CURRICULUM, type SpellingRule } from './spelling-rule.ts';
import { isSplit } from './vowel-before-ending.ts';

/** Rules about which vowel spelling stands where. */
export const VOWEL_RULES: readonly SpellingRule[] = [
  {
    id: 'a-after-w',
    title: 'After w and qu, a says /ŏ/',
    why: 'a changes its sound after w, wh and qu (want, quad), except before k, g, x and ng.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['swam', 'wham'],
    reads: 'all',
    breaks: (s) =>
      /(w|wh|qu)$/.test(lettersOf(s.onset)) &&
      (s.vowel.id === 'a=AE' || s.vowel.id === 'a=AA') &&
      /^(c?k|n?g|x|nk)/.test(lettersOf(s.coda)) === (s.vowel.id === 'a=AA'),
  },
  {
    id: 'one-l',
    title: 'No l on both sides of the vowel',
    why: 'Two l in one beat are hard to say, and children lose one.',
    source: COMMON_PRACTICE,
    exceptions: ['flail', 'loll', 'lull'],
    reads: 'all',
    breaks: (s) =>
      [s.onset, s.coda].every((side) => side.some(({ phonemes }) => phonemes[0] === 'L')),
  },
  {
    id: 'one-hiss',
    title: 'No th or sh with another hissing sound behind the vowel',
    why: 'Two such sounds in one beat twist the tongue: thash, shess, theff.',
    source: COMMON_PRACTICE,
    exceptions: ['sheath', 'theft', 'these', 'thief', 'this', 'those', 'thus'],
    reads: 'all',
    breaks: (s) => {
      const first = s.onset.at(-1)?.phonemes[0] ?? '';
      const after = s.coda[0]?.phonemes[0] ?? '';
      if (/^(TH|DH)$/.test(first)) return /^(TH|DH|S|Z|SH|F|V)$/.test(after);
      return first === 'SH' && /^(TH|DH|S|Z|SH)$/.test(after);
    },
  },
  {
    id: 'short-vowel-closed',
    title: 'A short vowel needs an ending',
    why: 'A vowel letter at the end of a word is not short.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) => s.vowel.kind === 'short-vowel' && s.coda.length === 0,
  },
  {
    id: 'e-not-last',
    title: 'Only be, he, me, she, we and the end in one e',
    why: 'At the end of a new word a single e looks silent; write ee or ea.',
    source: COMMON_PRACTICE,
    exceptions: ['be', 'he', 'me', 'she', 'the', 'we'],
    reads: 'ending',
    breaks: (s) => s.coda.length === 0 && s.opens && s.closes && s.vowel.grapheme === 'e',
  },
  {
    id: 'y-inside',
    title: 'y inside a word stands before a few letters',
    why: 'y says the short i in words such as gym, myth and lynx, not before doubled letters, ck or sh.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      s.vowel.id === 'y=IH' && !/^(m|mph|n|nch|nx|p|ph|pt|st|t|th)$/.test(lettersOf(s.coda)),
  },
  {
    id: 'ow-oi-before',
    title: 'After /ow/ and /oi/ comes d, l, n, s, t or their like',
    why: 'No English syllable has a p, b, f, v, m, k or g straight after /ow/ or /oi/.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      /^(AW|OY)$/.test(s.vowel.phonemes[0] ?? '') &&
      /^(P|B|F|V|M|K|G|SH)$/.test(s.coda[0]?.phonemes[0] ?? ''),
  },
  {
    id: 'a-before-l',
    title: 'Before l and ll, a says /aw/',
    why: 'a changes its sound before l and ll: ball, salt, walk.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['gal', 'pal', 'scalp', 'shall'],
    reads: 'ending',
    breaks: (s) => {
      const beforeL = /^l/.test(lettersOf(s.coda));
      return (s.vowel.id === 'a=AE' && beforeL) || (s.vowel.id === 'a=AO' && !beforeL);
    },
  },
  {
    id: 'al-before-k-m',
    title: 'al keeps its l silent before k and m',
    why: 'The al of walk stands before k, the al of palm before m.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      (s.vowel.id === 'al=AO' && lettersOf(s.coda) !== 'k') ||
      (s.vowel.id === 'al=AA' && lettersOf(s.coda) !== 'm'),
  },
  {
    id: 'o-long-before-ld',
    title: 'o is long in old, olt, oll, olk, ost and oth',
    why: 'Before these endings o is often long: old, bolt, roll, most, both.',
    source: COMMON_PRACTICE,
    exceptions: ['cloth', 'cost', 'doll', 'frost', 'lost', 'moth'],
    reads: 'ending',
    breaks: (s) => s.vowel.id === 'o=AA' && /^(l[dltk]?|st|th)$/.test(lettersOf(s.coda)),
  },
  {
    id: 'i-long-before-ld',
    title: 'i is long in ild and ind',
    why: 'Before ld and nd i is often long: wild, child, kind, find.',
    source: COMMON_PRACTICE,
    exceptions: ['gild'],
    reads: 'ending',
    breaks: (s) => s.vowel.id === 'i=IH' && /^(ld|nd)$/.test(lettersOf(s.coda)),
  },
  {
    id: 'long-vowel-open',
    title: 'A single long vowel ends its syllable',
    why: 'One vowel letter is long where nothing follows it (me, go, fly), and in old, most, wild and kind.',
    source: COMMON_PRACTICE,
    exceptions: ['change', 'range', 'sign', 'strange'],
    reads: 'ending',
    breaks: (s) => s.vowel.kind === 'long-vowel' && s.coda.length > 0 && !isLongAnyway(s),
  },
  {
    id: 'a-i-u-not-last',
    title: 'Short words do not end in a, i or u',
    why: 'At the end of a short word /ā/ is ay, /ī/ is y, and /ū/ is ue or ew.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['flu', 'hi', 'ski', 'spa'],
    reads: 'ending',
    breaks: (s) => s.coda.length === 0 && s.opens && s.closes && /^(a|i|u)=|^y=IY/.test(s.vowel.id),
  },
  {
    id: 'team-inside',
    title: 'ai, oi, oa, au and ou need an ending',
    why: 'These teams stand inside a word; at its end write ay, oy, ow or aw.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['bayou', 'cocoa', 'you'],
    reads: 'ending',
    breaks: (s) => s.coda.length === 0 && INSIDE.test(s.vowel.id),
  },
  {
    id: 'team-last',
    title: 'ay, oy, ew, ue, oe and ie end a word',
    why: 'These teams stand at the end; inside a word write ai, oi, oo, oa or igh.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['cried', 'dried', 'goes', 'news', 'tried'],
    reads: 'ending',
    breaks: (s) => s.coda.length > 0 && AT_END.test(s.vowel.id),
  },
  {
    id: 'aw-ow-before',
    title: 'aw and ow stand at the end, or before n and l',
    why: 'Inside a word aw and ow stand only before a few letters: yawn, crawl, hawk, town, growl, crowd.',
    source: COMMON_PRACTICE,
    exceptions: ['browse'],
    reads: 'ending',
    breaks: (s) => s.coda.length > 0 && isMisplacedW(s),
  },
  {
    id: 'gh-team-before-t',
    title: 'igh, eigh, augh and ough stand at the end or before t',
    why: 'After igh and its kin comes t or nothing: night, high, eight, taught.',
    source: COMMON_PRACTICE,
    exceptions: ['eighth'],
    reads: 'ending',
    breaks: (s) => {
      if (!/gh=/.test(s.vowel.id)) return false;
      const after = lettersOf(s.coda);
      return after !== 't' && (after !== '' || /^(augh|ough=AO)/.test(s.vowel.id));
    },
  },
  {
    id: 'oo-before-k',
    title: 'oo is short before k',
    why: 'Before k oo says the vowel of book; the vowel of book stands before k, d, t and f.',
    source: COMMON_PRACTICE,
    exceptions: ['spook', 'wool'],
    reads: 'ending',
    breaks: (s) =>
      (s.vowel.id === 'oo=UW' && lettersOf(s.coda) === 'k') ||
      (s.vowel.id === 'oo=UH' && !/^[kdtf]$/.test(lettersOf(s.coda))),
  },
  {
    id: 'silent-e-one-consonant',
    title: 'One consonant stands before a silent e',
    why: 'A silent e works across one consonant, and not across x, w, y, h, ck or doubled letters.',
    source: COMMON_PRACTICE,
    exceptions: ['ache', 'bathe', 'paste', 'taste', 'waste'],
    reads: 'ending',
    breaks: (s) =>
      isSplit(s) && (s.coda.length !== 1 || !/^[bcdfgklmnpstvz]$/.test(lettersOf(s.coda))),
  },
  {
    id: 'r-after-vowel',
    title: 'A vowel and its r are one card',
    why: 'r changes the vowel before it: use ar, or, er, ir or ur.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) => s.coda.some((card) => /^r+=R$/.test(card.id)),
  },
  {
    id: 'r-vowel-with-e-last',
    title: 'are, ore, ire, ure and ere end a word',
    why: 'The e of these cards is the last letter, so no ending follows.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['scared'],
    reads: 'ending',
    breaks: (s) => s.coda.length > 0 && /^[a-z]+re=/.test(s.vowel.id),
  },
];

const INSIDE = /^(ai=|oi=|oa=|au=|ou=|ei=|eu=|ui=|ie=IY|ea=EH|oo=UH|augh=|ough=AO)/;
const AT_END = /^(ay|oy|ew|ue|oe|ey|ye|ie)=(?!IY$)|^ey=/;

function isMisplacedW({ vowel, coda }: LaidSyllable): boolean {
  const after = lettersOf(coda);
  if (vowel.id === 'aw=AO') return !/^[nlk]$/.test(after);
  if (vowel.id === 'ow=OW') return !/^[nl]$/.test(after);
  return vowel.id === 'ow=AW' && !/^[nld]$/.test(after);
}

function isLongAnyway({ vowel, coda }: LaidSyllable): boolean {
  const after = lettersOf(coda);
  if (vowel.id === 'o=OW') return /^(ld|lt|ll|st)$/.test(after);
  return vowel.id === 'i=AY' && /^(ld|nd)$/.test(after);
}
