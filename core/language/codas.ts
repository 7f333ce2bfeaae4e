import type { Phoneme } from './phonemes.ts';

/**
 * The consonants that may end an English syllable, by the coda tables of Yavaş
 * (Applied English Phonology): any one consonant except h, w, y and r; two and
 * three as listed there. An added -s, -ed or -th is not counted: it belongs to
 * an ending. `afterR` is set when an r-vowel comes before it: the r is then the
 * coda's first consonant.
 */
export function isLegalCoda(sounds: readonly Phoneme[], afterR: boolean): boolean {
  if (sounds.length === 0) return true;
  if (afterR) return AFTER_R.test(sounds.join(' '));
  if (sounds.length === 1) return !/^(HH|W|Y|R)$/.test(sounds[0] as string);
  return LEGAL_CODAS.test(sounds.join(' '));
}

const LEGAL_CODAS = new RegExp(
  `^(?:${[
    'L (?:P|B|T|D|CH|JH|K|F|V|TH|S|M|SH)', // liquid + consonant; no lg, lz, lʒ, lð
    'M P|M F|N T|N D|N CH|N JH|N S|N Z|N TH|NG K|NG TH', // nasal + obstruent at the same place
    'S (?:P|T|K)', // s + voiceless stop
    '[PK] [TS]|F T', // p or k + t or s; ft
    'D S T|K S T|M P T|NG K T|M P S|NG K S|N S T|NG S T|L P T|L T S|L S T',
  ].join('|')})$`,
);

/** What may follow the r: one consonant other than ʒ, ð, r, h, w, y and ŋ, or two. */
const AFTER_R = /^(?:P|B|T|D|K|G|CH|JH|F|V|TH|S|SH|M|N|L|Z|K T|P T|P S|T S|S T|L D|L Z)$/;
