import { soundStyle } from '../../state/accent.ts';
import { settings } from '../settings.ts';
import { fileOf } from './file-of.ts';
import { fetchKit, kit } from './kit.ts';
import { laySheet, type SheetStock } from './lay-sheets.ts';
import { laySlides } from './lay-slides.ts';
import { type Look, lookOf } from './look.ts';
import type { MadeFile } from './made-file.ts';
import { type Choices, choices } from './print-choices.ts';
import type { SheetKind } from './print-things.ts';
import type { Stock } from './stock.ts';

/**
 * A sheet that a screen offers by a button of its own, made of what is on that screen; the paper and the
 * colors are those chosen for printing. Fetched when a file is first asked for.
 */
export async function sheetFile<Kind extends SheetKind>(
  kind: Kind,
  stock: SheetStock<Kind>,
  some: Partial<Choices> = {},
): Promise<MadeFile> {
  const chosen = { ...choices.peek(), ...some, kind };
  const look = await lookNow(chosen);
  return fileOf(laySheet(kind, chosen, stock, look), chosen, look.typeface);
}

/** The run of a plan as slides, blended as on the stage. */
export async function slidesFile(stock: Pick<Stock, 'drill' | 'meaningOf'>): Promise<MadeFile> {
  const blending = settings.peek().blending === 'whole' ? 'whole' : 'by-sound';
  const chosen: Choices = { ...choices.peek(), kind: 'slides', blending };
  const look = await lookNow(chosen);
  return fileOf(laySlides(chosen, stock, look), chosen, look.typeface);
}

async function lookNow(chosen: Choices): Promise<Look> {
  await fetchKit();
  const tools = kit.peek();
  if (tools === null || tools === 'failed') throw new Error('The letters did not arrive.');
  return lookOf(chosen, tools, soundStyle.peek());
}
