import type { SoundStyle } from '../../../core/language/phonemes.ts';
import type { CardLook } from '../../../print/cards/front.ts';
import { inks } from '../../../print/ink.ts';
import type { SheetLook } from '../../../print/sheets/sheet-look.ts';
import type { Kit } from './kit.ts';
import type { Choices } from './print-choices.ts';

/** What cards and sheets are drawn with. */
export interface Look extends CardLook, SheetLook {}

/** The look that her choices ask for; `style` is how sounds are written. */
export function lookOf({ paper, grey, pictures }: Choices, kit: Kit, style: SoundStyle): Look {
  const { typeface } = kit;
  return {
    paper,
    grey,
    style,
    typeface,
    inks: inks(grey),
    pictures: pictures ? kit.pictures : null,
  };
}
