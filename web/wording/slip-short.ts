import { lettersShown } from '../../core/language/card-id.ts';
import type { LikelySlip } from '../../core/language/likely-slips.ts';
import type { SoundStyle } from '../../core/language/phonemes.ts';
import { soundLabel } from '../../core/language/phonemes.ts';

/** What was heard instead, as short as a button has room for: `/ĕ/`, `left out`. */
export function slipShort(slip: LikelySlip, notation: SoundStyle): string {
  if (slip.kind === 'phoneme') return soundLabel([slip.sound], notation);
  return slip.kind === 'letter' ? `the ${lettersShown(slip.card)}` : short[slip.kind];
}

/** What can be answered of a mark, as a key for lists. */
export function slipKey(slip: LikelySlip): string {
  if (slip.kind === 'phoneme') return slip.sound;
  return slip.kind === 'letter' ? `letter ${slip.card}` : slip.kind;
}

const short: Readonly<Record<Exclude<LikelySlip['kind'], 'phoneme' | 'letter'>, string>> = {
  'letter-name': 'letter name',
  'left-out': 'left out',
  'added-vowel': 'added vowel',
  swapped: 'swapped',
  'another-word': 'another word',
  'sounded-out': 'sounded out',
  nothing: 'nothing',
  other: 'something else',
};
