import type { CardId } from '../../core/language/card-id.ts';
import { PHONEMES, type Phoneme, soundLabel } from '../../core/language/phonemes.ts';
import { SLIPS, type Slip } from '../../core/log/event.ts';
import type { Settings } from '../state/settings.ts';
import { slipSaid } from './slip-said.ts';

/** What was heard, as an observation has it: sounds as `said /ĭ/`, another slip in words, all else as it was written. */
export function heardSaid(heard: string, notation: Settings['notation']): string {
  const kind = SLIPS.find((slip) => slip === heard);
  if (kind) return slipSaid({ kind } as Slip, notation);
  if (heard.startsWith('letter ')) {
    return slipSaid({ kind: 'letter', card: heard.slice('letter '.length) as CardId }, notation);
  }
  const sounds = heard.split(' ');
  return sounds.every(isPhoneme) ? `said ${soundLabel(sounds, notation)}` : `said ${heard}`;
}

function isPhoneme(text: string): text is Phoneme {
  return (PHONEMES as readonly string[]).includes(text);
}
