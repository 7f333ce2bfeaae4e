import type { CardReading, Reading } from '../reading.ts';
import { type Accent, isBritish } from './accent.ts';
import type { HereSound } from './here-sound.ts';
import { mergeSounds, soundsHere } from './sounds-here.ts';
import { saidInBritain } from './southern-british.ts';

/**
 * How a word is said in a class, by its cards: the spelling tells what American sounds do not, the *wh* of
 * *which* and the rounded vowel of *hot*. American as it is listed gives the reading's own sounds.
 */
export function saidHere(reading: Reading, accent: Accent): readonly HereSound[] {
  if (accent.length === 0) return reading.sounds;
  const said = isBritish(accent)
    ? fronted(saidInBritain(reading), accent)
    : soundsHere(reading.sounds, accent);
  return accent.includes('wh-apart') ? withWh(said, reading.cards) : said;
}

/** Southern British with the other habits a class there may have. */
function fronted(sounds: readonly HereSound[], accent: Accent): readonly HereSound[] {
  // Every habit that goes with southern British reads its own sounds alone and lets the others be.
  return mergeSounds(sounds as Parameters<typeof mergeSounds>[0], accent);
}

/** The w of each wh card as it is said apart. No habit takes away or adds a w, so that they can be counted. */
function withWh(sounds: readonly HereSound[], cards: readonly CardReading[]): readonly HereSound[] {
  const isWh = cards.flatMap(({ id, phonemes }) =>
    phonemes.filter((sound) => sound === 'W').map(() => id === 'wh=W'),
  );
  let at = 0;
  return sounds.map((sound) => (sound === 'W' && isWh[at++] ? 'HW' : sound));
}
