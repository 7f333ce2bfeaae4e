import { correspondenceById, soundLabel } from '../engine.ts';
import { settings } from '../memory/settings.ts';
import type { Moment } from './moments.ts';

/** For her alone, small and in the corner: the sound to say now, and what comes next. */
export function Glimpse({
  moment,
  next,
}: {
  readonly moment: Moment;
  readonly next: Moment | undefined;
}) {
  return (
    <p class="glimpse" aria-hidden="true">
      {moment.part === 'auditory' ? `${soundOf(moment.sound.phonemes)}   ` : ''}
      {next ? `› ${shortly(next)}` : '› end'}
    </p>
  );
}

function shortly(moment: Moment): string {
  if (moment.part === 'blending') return moment.flip.word;
  if (moment.part === 'auditory') return soundOf(moment.sound.phonemes);
  return correspondenceById.get(moment.id)?.grapheme ?? '';
}

function soundOf(phonemes: Parameters<typeof soundLabel>[0]): string {
  return soundLabel(phonemes, settings.value.notation);
}
