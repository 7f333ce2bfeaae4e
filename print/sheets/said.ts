import { type Phoneme, soundLabel } from '../../core/language/phonemes.ts';
import type { SheetLook } from './sheet-look.ts';

/** Sounds as they are written, and as classrooms write them where the typeface lacks a sign of IPA. */
export function said(
  sounds: readonly Phoneme[],
  { style, typeface }: Pick<SheetLook, 'style' | 'typeface'>,
  grapheme?: string,
): string {
  return printable(
    soundLabel(sounds, style, grapheme),
    () => soundLabel(sounds, 'classroom'),
    typeface,
  );
}

/** A text, or another in its place where the typeface lacks a character of it. */
export function printable(
  text: string,
  otherwise: () => string,
  typeface: SheetLook['typeface'],
): string {
  return typeface.missing(text).length === 0 ? text : otherwise();
}
