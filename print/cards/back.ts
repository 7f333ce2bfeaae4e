import { asParagraph } from '../as-part.ts';
import type { Box } from '../box.ts';
import type { PageMark } from '../page.ts';
import { pictureMarks } from '../picture.ts';
import { wrap } from '../wrap.ts';
import { uprightMark } from './frame.ts';
import type { CardLook } from './front.ts';
import type { CardBack } from './paper-card.ts';

/** How much of a back's foot the mark that says which way is up has, in mm. */
const FOOT = 5;

/**
 * The teacher's side of a card: letters, sound, keyword, where it stands, words that show it, the rule she
 * says with it and the step that teaches it; at its foot, where the card lies loose, which way is up.
 */
export function backMarks(
  back: CardBack,
  box: Box,
  look: CardLook,
  loose: boolean,
): readonly PageMark[] {
  const bottom = box.y + box.height - (loose ? FOOT : 0);
  let size = Math.min(box.width * 0.075, box.height * 0.1, 7);
  let laid = layBack(back, box, look, size);
  while (laid.bottom > bottom) {
    size *= 0.94;
    laid = layBack(back, box, look, size);
  }
  return loose ? [...laid.marks, uprightMark('tile', box, size, look.inks)] : laid.marks;
}

/** The back with its text at one size, and where that ends: labels in a column, the text beside them. */
function layBack(
  back: CardBack,
  box: Box,
  { inks, typeface, grey, pictures }: CardLook,
  size: number,
): { readonly marks: readonly PageMark[]; readonly bottom: number } {
  const left = box.x + size * 0.5;
  const right = box.x + box.width - size * 0.5;
  const head = Math.min(size * 3.4, (box.width * 0.6) / typeface.lay(back.letters, 1).width);
  const picture = back.keyword ? pictures?.get(back.keyword) : undefined;
  const rows = rowsOf(back);
  const label = size * 0.72;
  const column = Math.max(0, ...rows.map(([name]) => typeface.lay(name, label).width)) + size * 0.7;
  const y = box.y + size * 3.1;
  const marks: PageMark[] = [
    ...asParagraph([{ kind: 'text', text: back.letters, x: left, y, size: head, ink: inks.ink }]),
  ];
  const side = size * 3.6;
  if (picture) {
    const place = { x: right - side, y: box.y + size * 0.3, size: side, alt: back.keyword ?? '' };
    marks.push(...pictureMarks(picture, place, grey));
  }
  let base = box.y + size * 5.7;
  for (const [name, text] of rows) {
    const row: PageMark[] = [
      { kind: 'text', text: name, x: left, y: base, size: label, ink: inks.soft },
    ];
    for (const line of wrap(text, right - left - column, size, typeface)) {
      row.push({ kind: 'text', text: line, x: left + column, y: base, size, ink: inks.ink });
      base += size * 1.25;
    }
    marks.push(...asParagraph(row));
    base += size * 0.25;
  }
  return { marks, bottom: base - size * 1.2 };
}

function rowsOf(back: CardBack): readonly (readonly [string, string])[] {
  const { sound, keyword, place, rule, byHeart, words = [], step = null } = back;
  if (byHeart !== undefined) {
    return [['Read', sound], ...(byHeart ? ([['By heart', byHeart]] as const) : [])];
  }
  return [
    ['Sound', sound],
    ...(keyword ? ([['Keyword', keyword]] as const) : []),
    ...(place ? ([['Place', place]] as const) : []),
    ...(words.length > 0 ? ([['Words', words.join(', ')]] as const) : []),
    ...(rule ? ([['Rule', rule]] as const) : []),
    ...(step === null ? [] : ([['Step', `${step}`]] as const)),
  ];
}
