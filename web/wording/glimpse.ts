import { correspondenceById } from '../../core/language/correspondences.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import type { Moment } from '../../core/warm-up/moments.ts';
import { settings } from '../state/settings.ts';

/** What comes next, as short as it can be said. */
export function glimpseOf(moment: Moment | undefined): string {
  if (!moment) return 'end';
  if (moment.part === 'blending') return moment.flip.word;
  if (moment.part === 'auditory') return soundLabel(moment.sound.phonemes, settings.value.notation);
  return correspondenceById.get(moment.id)?.grapheme ?? '';
}
