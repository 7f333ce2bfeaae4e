import type { Typeface } from '../../../print/typeface.ts';
import type { LaidPaper } from './laid.ts';
import type { MadeFile } from './made-file.ts';
import type { Choices } from './print-choices.ts';
import { isOfCards, isSheet, thingNames } from './print-things.ts';

/** What was laid out as a file; what writes it is fetched then. */
export async function fileOf(
  { pages, deck }: LaidPaper,
  { kind, paper, backs, turn, program }: Choices,
  typeface: Typeface,
): Promise<MadeFile> {
  if (deck !== null && program === 'odp') {
    const { odpFile } = await import('../../../print/odp-file.ts');
    const type = 'application/vnd.oasis.opendocument.presentation';
    return { name: 'slides.odp', type, bytes: odpFile(deck) };
  }
  if (deck !== null) {
    const { slideFile } = await import('../../../print/slide-file.ts');
    const type = 'application/vnd.openxmlformats-officedocument.presentationml.presentation';
    return { name: 'slides.pptx', type, bytes: await slideFile(deck) };
  }
  const { makePdf } = await import('../../../print/document.ts');
  const name = isSheet(kind) ? kind : `cards-${kind}`;
  const spec = { title: thingNames[kind], pages, ...(backs && isOfCards(kind) ? { turn } : {}) };
  const bytes = await makePdf(spec, typeface);
  return { name: `${name}-${paper}.pdf`, type: 'application/pdf', bytes };
}
