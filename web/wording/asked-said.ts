import type { AuditorySound } from '../../core/drills/drill.ts';
import { sightIn } from '../../core/drills/sight.ts';
import { lettersShown } from '../../core/language/card-id.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import { soundStyle } from '../state/accent.ts';

/** What is said to be written: a sound as she reads it, `/sh/`, or a word known by sight, `“was”`. */
export function askedSaid(sound: AuditorySound): string {
  const word = sightIn(sound);
  return word === null ? soundLabel(sound.phonemes, soundStyle.value) : `“${lettersShown(word)}”`;
}
