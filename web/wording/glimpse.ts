import type { AuditorySound } from '../../core/drills/drill.ts';
import { lettersShown } from '../../core/language/card-id.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import type { Moment } from '../../core/warm-up/moments.ts';
import { soundStyle } from '../state/accent.ts';

/** What comes next, as short as it can be said. */
export function glimpseOf(moment: Moment | undefined): string {
  if (!moment) return 'end';
  if (moment.part === 'blending') return moment.flip.word;
  if (moment.part === 'auditory') return soundGlimpse(moment.sound);
  return lettersShown(moment.id);
}

/** A sound to say, or all sounds of a word to say: never its letters, since the children who see this spell it. */
function soundGlimpse({ phonemes }: AuditorySound): string {
  return phonemes.length === 0 ? 'a word' : soundLabel(phonemes, soundStyle.value);
}
