import { type Notation, type Phoneme, type SoundStyle, soundLabel } from '../phonemes.ts';
import type { Reading } from '../reading.ts';
import { type Accent, isBritish } from './accent.ts';
import type { HereSound } from './here-sound.ts';
import { saidHere } from './said-here.ts';
import { britishSounds } from './sounds-here.ts';
import { cardsInBritain } from './southern-british.ts';

/**
 * How sounds are written in a class. Only what belongs to the sound itself shows on a card: southern British
 * has its own signs, *wh* kept apart is /hw/, and where *cot* and *caught* are alike the sound of aw is that
 * of o. What is alike only in some places (*pen* before n) is written as it is taught.
 */
export function soundStyleFor(accent: Accent, notation: Notation): SoundStyle {
  if (!accent.some((habit) => SHOWN.has(habit))) return notation;
  const key = `${notation} ${accent.join(' ')}`;
  const known = made.get(key);
  if (known) return known;
  const write = (sounds: readonly Phoneme[], grapheme = ''): string => {
    const isHw = accent.includes('wh-apart') && grapheme === 'wh' && sounds.join() === 'W';
    if (isHw) return signs(['HW'], notation);
    if (isBritish(accent)) return signs(cardInBritain(sounds, grapheme), notation);
    const heard = sounds.map((sound, at) => {
      const isAw = accent.includes('cot-caught') && sound === 'AO' && sounds[at + 1] !== 'R';
      return isAw ? 'AA' : sound;
    });
    return soundLabel(heard, notation).slice(1, -1);
  };
  const style = { write };
  made.set(key, style);
  return style;
}

/** How a whole word is said in a class, written like its sounds. */
export function wordLabel(reading: Reading, accent: Accent, notation: Notation): string {
  if (accent.length === 0) return soundLabel(reading.sounds, notation);
  const said = saidHere(reading, accent);
  return isBritish(accent) || said.includes('HW')
    ? `/${signs(said, notation, isBritish(accent))}/`
    : soundLabel(said as readonly Phoneme[], notation);
}

/** How one card of a word is said in a class, written like its sounds: in southern Britain the word tells which a is meant. */
export function cardLabel(
  reading: Reading,
  at: number,
  accent: Accent,
  notation: Notation,
): string {
  const card = reading.cards[at];
  if (!card) return '';
  return isBritish(accent)
    ? `/${signs(cardsInBritain(reading)[at] ?? [], notation)}/`
    : soundLabel(card.phonemes, soundStyleFor(accent, notation), card.grapheme);
}

const SHOWN: ReadonlySet<string> = new Set(['southern-british', 'wh-apart', 'cot-caught']);
const made = new Map<string, SoundStyle>();

/** The letters tell the a of *father* and the al of *palm* from the o of *hot*. */
function cardInBritain(sounds: readonly Phoneme[], grapheme: string): readonly HereSound[] {
  if (/^(al|ah|aa|a_e)$/.test(grapheme) && sounds.join() === 'AA') return ['AA'];
  return britishSounds(sounds);
}

function signs(sounds: readonly HereSound[], notation: Notation, british = true): string {
  return sounds
    .map((sound) => {
      if (sound === 'HW') return notation === 'ipa' ? 'ʍ' : 'hw';
      const sign = british ? BRITISH[sound] : undefined;
      if (sign) return sign[notation === 'ipa' ? 1 : 0];
      return soundLabel([sound as Phoneme], notation).slice(1, -1);
    })
    .join('');
}

/**
 * The vowels as British classrooms write them (common practice, no source) and as the International Phonetic
 * Alphabet does in England's National Curriculum, English Appendix 1.
 */
const BRITISH: Readonly<Partial<Record<HereSound, readonly [classroom: string, ipa: string]>>> = {
  AA: ['ar', 'ɑː'],
  AE: ['a', 'æ'],
  AH: ['u', 'ʌ'],
  AO: ['or', 'ɔː'],
  AW: ['ow', 'aʊ'],
  AX: ['ə', 'ə'],
  AY: ['igh', 'aɪ'],
  EA: ['air', 'ɛə'],
  EH: ['e', 'ɛ'],
  ER: ['ur', 'ɜː'],
  EY: ['ai', 'eɪ'],
  IA: ['ear', 'ɪə'],
  IH: ['i', 'ɪ'],
  IY: ['ee', 'iː'],
  OH: ['o', 'ɒ'],
  OW: ['oa', 'əʊ'],
  OY: ['oi', 'ɔɪ'],
  UA: ['ure', 'ʊə'],
  UH: ['o͝o', 'ʊ'],
  UW: ['o͞o', 'uː'],
};
