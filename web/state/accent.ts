import { computed } from '@preact/signals';
import {
  type Accent,
  type AccentHabit,
  AMERICAN,
  makeAccent,
  parseAccent,
  withHabit,
} from '../../core/language/accent/accent.ts';
import { soundStyleFor } from '../../core/language/accent/sound-style.ts';
import type { SoundStyle } from '../../core/language/phonemes.ts';
import { classState, recordUndoable } from './open-class.ts';
import { settings } from './settings.ts';

/** The habits of the open class by name: equal while it speaks the same. */
const names = computed(() => makeAccent(classState.value.accent).join(' '));

/** How the open class speaks; the same value while it speaks the same. */
export const accent = computed<Accent>(() => parseAccent(names.value) ?? AMERICAN);

/** How sounds are written in the open class: her setting, in the words of its accent. */
export const soundStyle = computed<SoundStyle>(() =>
  soundStyleFor(accent.value, settings.value.notation),
);

/** The class has a habit of speech from now on, or has it no more; can be undone. */
export function setHabit(habit: AccentHabit, isOn: boolean, said: string): void {
  const { id } = classState.peek();
  const value = withHabit(accent.peek(), habit, isOn);
  recordUndoable(said, { kind: 'set', body: { of: 'class', id, field: 'accent', value } });
}
