import { isLegalCoda } from './codas.ts';
import type { Correspondence } from './correspondence.ts';
import { afterCoda, lettersOf } from './laid-syllable.ts';
import { CODAS, COMMON_PRACTICE, NATIONAL_CURRICULUM, type SpellingRule } from './spelling-rule.ts';
import { isOneShortVowel, isSplit, lastCoda } from './vowel-before-ending.ts';

/** Rules about the consonants that end a syllable. */
export const ENDING_RULES: readonly SpellingRule[] = [
  {
    id: 'never-last',
    title: 'c, h, j, q, v, w and y do not end a short word',
    why: 'As consonants these letters stand at the beginning; at the end /k/ is ck, /j/ is ge or dge, /v/ is ve.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['disc', 'rev', 'zinc'],
    reads: 'ending',
    breaks: (s) =>
      s.coda.some((card) => NEVER_IN_CODA.has(card.id)) ||
      (s.closes && !isSplit(s) && LAST_NEVER.has(s.coda.at(-1)?.id ?? '')),
  },
  {
    id: 'first-only',
    title: 'kn, wr, gn, wh and qu begin a word',
    why: 'These spellings stand at the beginning, never at the end.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['sign'],
    reads: 'ending',
    breaks: (s) => s.coda.some((card) => /^(kn|wr|gn|wh|rh)=|^gh=G$/.test(card.id)),
  },
  {
    id: 'ck-after-short',
    title: 'After one short vowel, /k/ is ck',
    why: 'At the end of a short word, straight after one short vowel, /k/ is spelled ck.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['trek', 'yak'],
    reads: 'ending',
    breaks: (s) => lastCoda(s, 'k') && isOneShortVowel(s.vowel),
  },
  {
    id: 'doubled-f-l-s-z',
    title: 'f, l, s and z are doubled after one short vowel',
    why: 'At the end of a short word, straight after one short vowel, write ff, ll, ss or zz.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['bus', 'gas', 'if', 'pal', 'plus', 'quiz', 'this', 'us', 'yes'],
    reads: 'ending',
    breaks: (s) =>
      ['f', 'l', 's', 'z'].some((letter) => lastCoda(s, letter)) && isOneShortVowel(s.vowel),
  },
  {
    id: 'double-after-short-only',
    title: 'ck, ff, ll, ss and zz follow one short vowel',
    why: 'Doubled endings stand straight after one short vowel; after a long vowel one letter is enough.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      s.coda.some(
        (card, index) =>
          (card.kind === 'double' || card.id === 'ck=K') &&
          (index > 0 || s.coda.length > 1 || !takesDouble(s.vowel, card)),
      ),
  },
  {
    id: 'tch-after-short',
    title: 'After one short vowel, /ch/ is tch',
    why: 'Straight after one short vowel /ch/ is spelled tch; everywhere else it is ch.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['much', 'rich', 'such', 'which'],
    reads: 'ending',
    breaks: (s) =>
      (s.coda[0]?.id === 'ch=CH' && isOneShortVowel(s.vowel)) ||
      s.coda.some(
        (card, index) => card.id === 'tch=CH' && (index > 0 || !isOneShortVowel(s.vowel)),
      ),
  },
  {
    id: 'dge-after-short',
    title: 'After one short vowel, /j/ is dge',
    why: 'Straight after one short vowel /j/ is spelled dge; after all else it is ge.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      (s.coda[0]?.id === 'ge=JH' && isOneShortVowel(s.vowel)) ||
      s.coda.some(
        (card, index) => card.id === 'dge=JH' && (index > 0 || !isOneShortVowel(s.vowel)),
      ),
  },
  {
    id: 'consonant-e-after-long',
    title: 'ce, ge, se and ze follow a team, an r-vowel or a consonant',
    why: 'After one vowel letter the e would make the vowel long: then it is a silent-e word.',
    source: COMMON_PRACTICE,
    exceptions: ['give', 'glove', 'have', 'love'],
    reads: 'ending',
    breaks: (s) =>
      s.coda.some(
        (card, index) =>
          card.kind === 'consonant-e' &&
          (isSplit(s) || index < s.coda.length - 1 || (index === 0 && isOneLetter(s.vowel))),
      ),
  },
  {
    id: 'ng-nk-x-after-short',
    title: 'ng, nk and x follow one short vowel',
    why: 'ng, nk and x stand straight after one short vowel.',
    source: COMMON_PRACTICE,
    exceptions: ['coax', 'hoax', 'young'],
    reads: 'ending',
    breaks: (s) => /^(ng|n|x)=(NG|K\+S)$/.test(s.coda[0]?.id ?? '') && !isOneShortVowel(s.vowel),
  },
  {
    id: 'soft-c-g-last',
    title: 'c and g are soft before e, and only there',
    why: 'At the end c says /s/ and g says /j/ when an e follows, and not without it.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'ending',
    breaks: (s) => s.coda.some((card, index) => isWronglySoft(card, afterCoda(s, index))),
  },
  {
    id: 'single-s-after-team',
    title: 'After a vowel team or r-vowel, /s/ is se or ce',
    why: 'A single s after a vowel team looks like the s of more than one: house, peace, horse.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      s.coda.length === 1 && /^(s=S|z=Z)$/.test(s.coda[0]?.id ?? '') && isTeam(s.vowel),
  },
  {
    id: 'looks-like-more-than-one',
    title: 'A single s after a vowel team looks like more than one',
    why: 'A new word such as dois or chears is read as doi or chear with an s.',
    source: COMMON_PRACTICE,
    exceptions: ['hers', 'news'],
    reads: 'ending',
    breaks: (s) => s.closes && s.coda.length === 1 && s.coda[0]?.id === 's=Z' && isTeam(s.vowel),
  },
  {
    id: 'mb-after-letter',
    title: 'mb follows a, i, o or u',
    why: 'mb stands after a, i, o or u alone: lamb, climb, comb, thumb.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) => s.coda.some(({ id }) => id === 'mb=M') && !/^[aiou]$/.test(s.vowel.grapheme),
  },
  {
    id: 's-says-z-after-voiced',
    title: 's says /z/ only after a voiced sound',
    why: 'After p, t, k, f and th, s says /s/: cats, but dogs.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      s.coda.some((card, index) => {
        const before = s.coda[index - 1]?.phonemes.at(-1);
        if (!before) return false;
        if (card.id === 's=Z') return VOICELESS.has(before);
        return card.id === 's=S' && index === s.coda.length - 1 && VOICED_STOP.has(before);
      }),
  },
  {
    id: 'legal-coda',
    title: 'These consonants do not end an English word together',
    why: 'No English word ends with these sounds in a row, so they are hard to say.',
    source: CODAS,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      !isLegalCoda(
        s.coda.flatMap((card) => card.phonemes),
        s.vowel.kind === 'r-vowel' || s.coda[0]?.id === 'r=R',
      ),
  },
  {
    id: 'past-form',
    title: 'pt, ct and xt end real words only',
    why: 'A new word that ends so is heard as one with -ed: lapt is lapped.',
    source: COMMON_PRACTICE,
    exceptions: ['act', 'apt', 'fact', 'kept', 'next', 'slept', 'strict', 'swept', 'text', 'wept'],
    reads: 'ending',
    breaks: (s) => s.closes && /^(?:pt|ct|xt)$/.test(lettersOf(s.coda)),
  },
  {
    id: 'cluster-after-long',
    title: 'After a long vowel only a few clusters stand',
    why: 'After a vowel team the ending is one consonant, or nt, nd, st, ld, lt: paint, field, toast.',
    source: COMMON_PRACTICE,
    exceptions: ['doubt', 'launch'],
    reads: 'ending',
    breaks: (s) =>
      s.coda.length > 1 &&
      (s.vowel.kind === 'vowel-team' || s.vowel.kind === 'diphthong') &&
      !AFTER_LONG.test(lettersOf(s.coda)),
  },
  {
    id: 'few-after-long-r-vowel',
    title: 'Few endings follow air, ear, eer, oar and our',
    why: 'After these stand d, t, th, n, ce or se, or nothing: beard, court, fierce.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'ending',
    breaks: (s) =>
      s.coda.length > 0 &&
      LONG_R_VOWEL.test(s.vowel.id) &&
      !/^(d|t|th|n|ce|se|ch)$/.test(lettersOf(s.coda)),
  },
];

const LONG_R_VOWEL = /^(air|ear|eer|oar|oor|our|ier|are|ere)=(?!ER)/;
const NEVER_IN_CODA: ReadonlySet<string> = new Set([
  'h=HH',
  'j=JH',
  'w=W',
  'y=Y',
  'qu=K+W',
  'wh=W',
]);
const LAST_NEVER: ReadonlySet<string> = new Set(['c=K', 'v=V']);
const AFTER_LONG = /^(nt|nd|st|ld|lt|nce|nge|lse|nse)$/;
const VOICELESS: ReadonlySet<string> = new Set(['P', 'T', 'K', 'F', 'TH']);
const VOICED_STOP: ReadonlySet<string> = new Set(['B', 'D', 'G', 'V', 'M', 'NG', 'L']);

function isWronglySoft({ id }: Correspondence, after: string): boolean {
  const softens = /^[eiy]/.test(after);
  if (id === 'c=K' || id === 'g=G') return softens;
  return (id === 'c=S' || id === 'g=JH') && !softens;
}

/** Short vowels, the a of ball and the o of roll, each before its own doubled letters. */
function takesDouble(vowel: Correspondence, { id }: Correspondence): boolean {
  if (isOneShortVowel(vowel)) return true;
  return id === 'll=L' && (vowel.id === 'a=AO' || vowel.id === 'o=OW');
}

function isTeam({ kind }: Correspondence): boolean {
  return kind === 'vowel-team' || kind === 'diphthong' || kind === 'r-vowel';
}

function isOneLetter({ grapheme }: Correspondence): boolean {
  return grapheme.length === 1;
}
