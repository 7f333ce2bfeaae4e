import { type CardId, lettersShown } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { frameMarks } from '../cards/frame.ts';
import { paperCard } from '../cards/paper-card.ts';
import type { Cell } from './blocks.ts';
import { type SheetLook, SMALL } from './sheet-look.ts';

/** A card as it looks on the board, `height` mm high and as wide as its letters ask. */
export function smallCard(id: CardId, height: number, { inks, typeface }: SheetLook): Cell {
  const { shape, parts } = paperCard(id);
  const em = height / 1.62;
  const ink = parts.reduce((sum, part) => {
    const { left, right } = typeface.ink(part, 1);
    return sum + right - left;
  }, 0);
  const bends = shape === 'cle' || shape === 'ending' ? 0.2 : 0;
  const between = shape === 'split' ? 1.4 : (parts.length - 1) * 0.26;
  const width = Math.max(0.9, ink + 0.42 + bends + between) * em;
  return {
    width,
    height,
    says: lettersShown(id),
    marks: (x, y) => {
      const box = { x, y, width, height };
      const baseline = y + height * 0.745;
      return frameMarks({ shape, parts, box, room: box, em, baseline }, inks, typeface);
    },
  };
}

/** The same with its keyword beneath, where it is one of the `twins` that share their letters. */
export function notedCard(
  id: CardId,
  height: number,
  look: SheetLook,
  twins: ReadonlySet<string>,
): Cell {
  const card = smallCard(id, height, look);
  const note = twins.has(id) ? (correspondenceById.get(id)?.keyword ?? '') : '';
  if (note === '') return card;
  const size = SMALL * 0.8;
  const width = Math.max(card.width, look.typeface.lay(note, size).width);
  return {
    width,
    height: card.height + size * 1.2,
    says: `${lettersShown(id)}, ${note}`,
    marks: (x, y) => [
      ...card.marks(x + (width - card.width) / 2, y),
      {
        kind: 'text',
        text: note,
        x: x + width / 2,
        y: y + card.height + size,
        size,
        ink: look.inks.soft,
        align: 'center',
      },
    ],
  };
}
