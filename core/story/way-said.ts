import { isPhoneme, type Phoneme, type SoundStyle, soundLabel } from '../language/phonemes.ts';
import type { SlipPattern, SlipWay } from './slip-pattern.ts';

/** A way of going wrong on some cards, of one child or of many: `drops the second consonant in st`. */
export function waySaid(
  { way, sound }: SlipPattern,
  cards: string,
  whose: 'one' | 'many',
  style: SoundStyle,
): string {
  const verb = verbs[way][whose === 'one' ? 0 : 1];
  if (way === 'leaves-out-after') return `${verb} out ${cards} after another consonant`;
  if (way !== 'says') return `${verb} ${rests[way]}${cards}`;
  const sounds = (sound ?? '').split(' ').filter(isPhoneme) as readonly Phoneme[];
  return `${verb} ${soundLabel(sounds, style)} for ${cards}`;
}

const verbs: Readonly<Record<SlipWay, readonly [one: string, many: string]>> = {
  says: ['says', 'say'],
  'drops-second': ['drops', 'drop'],
  'drops-first': ['drops', 'drop'],
  'drops-one': ['leaves', 'leave'],
  'misses-second': ['misses', 'miss'],
  'misses-first': ['misses', 'miss'],
  'leaves-out-after': ['leaves', 'leave'],
  'leaves-out': ['leaves', 'leave'],
  'letter-name': ['says', 'say'],
  'added-vowel': ['adds', 'add'],
  swapped: ['swaps', 'swap'],
  'sounds-out': ['sounds', 'sound'],
  'another-word': ['says', 'say'],
  misses: ['misses', 'miss'],
};

/** What stands between the verb and the cards. */
const rests: Readonly<Record<Exclude<SlipWay, 'says' | 'leaves-out-after'>, string>> = {
  'drops-second': 'the second consonant in ',
  'drops-first': 'the first consonant in ',
  'drops-one': 'a sound out of ',
  'misses-second': 'the second consonant in ',
  'misses-first': 'the first consonant in ',
  'leaves-out': 'out ',
  'letter-name': 'the letter’s name for ',
  'added-vowel': 'a vowel to ',
  swapped: 'the sounds around ',
  'sounds-out': 'out ',
  'another-word': 'another word for ',
  misses: '',
};
