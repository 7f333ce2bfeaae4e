import type { Box } from '../box.ts';
import type { PageMark } from '../page.ts';
import { pictureMarks } from '../picture.ts';
import { wrap } from '../wrap.ts';
import type { CardLook } from './front.ts';
import type { CardBack } from './paper-card.ts';

/** The teacher's side of a card: letters, sound, keyword, where it stands, and the rule she says with it. */
export function backMarks(back: CardBack, box: Box, look: CardLook): readonly PageMark[] {
  let size = Math.min(box.width * 0.075, 7);
  let laid = layBack(back, box, look, size);
  while (laid.bottom > box.y + box.height) {
    size *= 0.94;
    laid = layBack(back, box, look, size);
  }
  return laid.marks;
}

/** The back with its text at one size, and where that ends. */
function layBack(
  back: CardBack,
  box: Box,
  { inks, typeface, grey, pictures }: CardLook,
  size: number,
): { readonly marks: readonly PageMark[]; readonly bottom: number } {
  const head = Math.min(size * 4, (box.width * 0.6) / typeface.lay(back.letters, 1).width);
  const left = box.x + size * 0.5;
  const width = box.width - size;
  const picture = back.keyword ? pictures?.get(back.keyword) : undefined;
  const marks: PageMark[] = [
    { kind: 'text', text: back.letters, x: left, y: box.y + size * 4, size: head, ink: inks.ink },
  ];
  if (picture) {
    const side = box.width * 0.3;
    const corner = { x: box.x + box.width - side, y: box.y + size * 0.5, size: side };
    marks.push(...pictureMarks(picture, corner, grey));
  }
  let y = box.y + size * 6.4;
  for (const [label, text] of rowsOf(back)) {
    marks.push({ kind: 'text', text: label, x: left, y, size: size * 0.72, ink: inks.soft });
    y += size * 1.25;
    for (const line of wrap(text, width, size, typeface)) {
      marks.push({ kind: 'text', text: line, x: left, y, size, ink: inks.ink });
      y += size * 1.25;
    }
    y += size * 0.35;
  }
  return { marks, bottom: y - size };
}

function rowsOf(back: CardBack): readonly (readonly [string, string])[] {
  const { sound, keyword, place, rule, byHeart } = back;
  if (byHeart !== undefined) {
    return [['Read', sound], ...(byHeart ? ([['Learn by heart', byHeart]] as const) : [])];
  }
  return [
    ['Sound', sound],
    ...(keyword ? ([['Keyword', keyword]] as const) : []),
    ['Place', place],
    ...(rule ? ([['Rule', rule]] as const) : []),
  ];
}
