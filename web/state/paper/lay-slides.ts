import { readLetters } from '../../../print/glyphs.ts';
import { runSlides } from '../../../print/slides.ts';
import type { LaidPaper } from './laid.ts';
import type { Look } from './look.ts';
import type { Choices } from './print-choices.ts';
import type { Stock } from './stock.ts';

/** The run of today's plan as slides, the way rows are blended on the stage. */
export function laySlides(
  { blending, clicks, format }: Pick<Choices, 'blending' | 'clicks' | 'format'>,
  { drill, meaningOf }: Pick<Stock, 'drill' | 'meaningOf'>,
  { typeface, style }: Look,
): LaidPaper {
  const run = drill?.run ?? [];
  const piles = drill?.board.piles.length ?? 0;
  const spec = { run, piles, blending, clicks, format, style, meaningOf };
  const deck = runSlides(spec, readLetters(typeface.files.regular));
  return { pages: [], deck, count: run.length, notes: [] };
}
