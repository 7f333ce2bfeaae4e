import type { Correspondence } from './correspondence.ts';
import { afterOnset, type LaidSyllable, lettersOf, splitVowel } from './laid-syllable.ts';
import { isLegalOnset } from './onsets.ts';
import {
  COMMON_PRACTICE,
  NATIONAL_CURRICULUM,
  ONSETS,
  type SpellingRule,
} from './spelling-rule.ts';

/** Rules about what may begin a syllable, and before which vowel. */
export const BEGINNING_RULES: readonly SpellingRule[] = [
  {
    id: 'c-before-e-i-y',
    title: 'Before e, i and y, /k/ is k',
    why: 'c turns soft before e, i and y, so /k/ is spelled with k there.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['sceptic', 'soccer'],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'c=K', (after) => /^[eiy]/.test(after)),
  },
  {
    id: 'k-before-e-i-y-only',
    title: 'Before a, o, u and consonants, /k/ is c',
    why: 'k is kept for e, i and y; before a, o, u or another consonant /k/ is spelled with c.',
    source: COMMON_PRACTICE,
    exceptions: ['kangaroo', 'koala', 'skate', 'skull', 'skunk'],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'k=K', (after) => !/^[eiy]/.test(after)),
  },
  {
    id: 'soft-c-before-e-i-y',
    title: 'c is soft only before e, i and y',
    why: 'c says /s/ only when e, i or y comes next.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'c=S', (after) => !/^[eiy]/.test(after)),
  },
  {
    id: 'soft-g-before-e-i-y',
    title: 'g is soft only before e, i and y',
    why: 'g says /j/ only when e, i or y comes next.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'g=JH', (after) => !/^[eiy]/.test(after)),
  },
  {
    id: 'hard-g-before-e-i-y',
    title: 'Hard g is not built before e, i and y',
    why: 'g before e, i or y is often soft, so a new word could be read both ways.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['gear', 'geese', 'get', 'gift', 'gill', 'girl', 'give'],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'g=G', (after) => /^[eiy]/.test(after)),
  },
  {
    id: 'ending-only',
    title: 'Some spellings never begin a word',
    why: 'ck, ng, tch, dge, x and doubled letters stand after a vowel, never at the beginning.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['llama', 'xylophone'],
    reads: 'beginning',
    breaks: (s) => s.onset.some((card) => isEndingOnly(card)),
  },
  {
    id: 'legal-onset',
    title: 'These consonants do not begin an English word together',
    why: 'No English word begins with these sounds in a row, so they are hard to say.',
    source: ONSETS,
    exceptions: ['sphere', 'view', 'vroom'],
    reads: 'beginning',
    breaks: (s) => s.onset.length > 0 && !isLegalOnset(s.onset.flatMap((card) => card.phonemes)),
  },
  {
    id: 'silent-first-letter-alone',
    title: 'kn, wr, gn and wh begin a word',
    why: 'kn, wr, gn, wh, rh and gh stand first, with no other consonant beside them.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => s.onset.length > 1 && s.onset.some((card) => FIRST_ONLY.has(card.id)),
  },
  {
    id: 'wh-before-a-e-i',
    title: 'wh stands before a, e and i',
    why: 'Before o, wh says /h/ as in who, and before u it is not used.',
    source: COMMON_PRACTICE,
    exceptions: ['whoa', 'whoosh', 'whorl'],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'wh=W', (after) => /^[ou]/.test(after)),
  },
  {
    id: 'no-y-after-y-or-qu',
    title: 'No y follows y or qu',
    why: 'English writes neither yy nor quy.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) =>
      inOnset(s, 'y=Y', (after) => after.startsWith('y')) ||
      inOnset(s, 'qu=K+W', (after) => after.startsWith('y')),
  },
  {
    id: 'no-oe-after-w',
    title: 'No oe follows w',
    why: 'After w an o with e looks like the word two; write ow.',
    source: COMMON_PRACTICE,
    exceptions: ['woe'],
    reads: 'beginning',
    breaks: (s) => s.vowel.id === 'oe=OW' && /w$/.test(lettersOf(s.onset)),
  },
  {
    id: 'one-r',
    title: 'No r on both sides of the vowel',
    why: 'Two r in one beat are hard to say, and children lose one.',
    source: COMMON_PRACTICE,
    exceptions: ['prior', 'rare', 'rear', 'roar'],
    reads: 'beginning',
    breaks: (s) =>
      s.vowel.kind === 'r-vowel' && s.onset.some(({ phonemes }) => phonemes.includes('R')),
  },
  {
    id: 'qu-before-u',
    title: 'No u follows qu',
    why: 'qu already ends in u, and English never writes another u after it.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => inOnset(s, 'qu=K+W', (after) => after.startsWith('u')),
  },
  {
    id: 'voiced-th-first',
    title: 'The th of this begins only small words',
    why: 'Only little words such as this, that and them begin so; any new word has the th of thumb.',
    source: COMMON_PRACTICE,
    exceptions: ['than', 'that', 'them', 'then', 'these', 'this', 'those', 'though', 'thus'],
    reads: 'beginning',
    breaks: (s) => s.opens && s.onset[0]?.id === 'th=DH',
  },
  {
    id: 'or-after-w',
    title: 'After w, or says /er/',
    why: 'or changes its sound after w: word, work, worm.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['sword', 'worn'],
    reads: 'beginning',
    breaks: (s) =>
      (s.vowel.id === 'or=AO+R' && /w$/.test(lettersOf(s.onset))) ||
      (s.vowel.id === 'or=ER' && s.closes && !/w$/.test(lettersOf(s.onset))),
  },
  {
    id: 'ar-after-w',
    title: 'After w, ar says /or/',
    why: 'ar changes its sound after w and qu: war, warm, quart.',
    source: NATIONAL_CURRICULUM,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) =>
      (s.vowel.id === 'ar=AA+R' && W_SOUND.test(lettersOf(s.onset))) ||
      (s.vowel.id === 'ar=AO+R' && !W_SOUND.test(lettersOf(s.onset))) ||
      (s.vowel.id === 'ar=ER' && s.opens && s.closes),
  },
  {
    id: 'a-says-o-after-w-only',
    title: 'a says /ŏ/ only after w and qu',
    why: 'The a of want and swan follows w, wh or qu.',
    source: NATIONAL_CURRICULUM,
    exceptions: ['father', 'spa'],
    reads: 'beginning',
    breaks: (s) => s.vowel.id === 'a=AA' && !W_SOUND.test(lettersOf(s.onset)),
  },
  {
    id: 'long-u-without-y',
    title: 'After r, l, j, ch, s, t, d and n, long u says /oo/',
    why: 'rule, flute and June have no /y/ before the /oo/, so the card must be the other long u.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => startsWithYu(s.vowel) && NO_YU_AFTER.has(lastSound(s.onset)),
  },
  {
    id: 'long-u-with-y',
    title: 'After b, c, f, h, m and p, long u says /yoo/',
    why: 'cube, huge and mule have a /y/ before the /oo/, so the card must be the other long u.',
    source: COMMON_PRACTICE,
    exceptions: [],
    reads: 'beginning',
    breaks: (s) => isPlainLongU(s.vowel) && YU_AFTER.has(lastSound(s.onset)),
  },
];

const W_SOUND = /(w|wh|qu)$/;
const FIRST_ONLY: ReadonlySet<string> = new Set(['kn=N', 'wr=R', 'gn=N', 'wh=W', 'rh=R', 'gh=G']);
const ENDING_ONLY: ReadonlySet<string> = new Set(['x=K+S', 'ck=K', 'ng=NG', 'tch=CH', 'dge=JH']);
const NO_YU_AFTER: ReadonlySet<string> = new Set('R L JH CH SH S Z T D N TH DH Y W'.split(' '));
const YU_AFTER: ReadonlySet<string> = new Set(['', ...'B K F G HH M P V'.split(' ')]);

function inOnset(s: LaidSyllable, id: string, test: (after: string) => boolean): boolean {
  return s.onset.some((card, index) => card.id === id && test(afterOnset(s, index)));
}

function isEndingOnly({ id, kind }: Correspondence): boolean {
  return kind === 'double' || kind === 'consonant-e' || ENDING_ONLY.has(id) || id === 'n=NG';
}

function lastSound(onset: readonly Correspondence[]): string {
  return onset.at(-1)?.phonemes.at(-1) ?? '';
}

function startsWithYu({ phonemes }: Correspondence): boolean {
  return phonemes[0] === 'Y' && (phonemes[1] === 'UW' || phonemes[1] === 'UH');
}

function isPlainLongU(vowel: Correspondence): boolean {
  return vowel.phonemes[0] === 'UW' && /^(u|ue|ew|eu)$/.test(splitVowel(vowel).join(''));
}
