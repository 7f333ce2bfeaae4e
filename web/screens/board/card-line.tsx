import type { ComponentChildren } from 'preact';
import type { CardId } from '../../../core/language/card-id.ts';
import { useRoving } from '../../controls/use-roving.ts';
import { BoardCard } from './board-card.tsx';
import { type BoardDesk, gainOf, isTwin } from './desk.ts';

interface CardLineProps {
  readonly desk: BoardDesk;
  readonly ids: readonly CardId[];
  /** Whether they lie in a pile, or in the tray of those that could; the title's id is this and the pile's number. */
  readonly lies: 'pile' | 'tray';
  readonly pile: number;
  readonly onOpen: (id: CardId, pile: number, anchor: HTMLElement) => void;
  /** What stands behind the cards. */
  readonly children?: ComponentChildren;
}

/** The cards of a pile, there or in the tray, walked along by the arrow keys; each with what it adds. */
export function CardLine({ desk, ids, lies, pile, onOpen, children }: CardLineProps) {
  const roving = useRoving<HTMLUListElement>({ inLine: true });
  const gains = lies === 'pile' ? desk.rows.lying : desk.rows.tray;
  const name = `${lies}-${pile}`;
  return (
    <ul class="board-cards" aria-labelledby={name} data-group={name} tabIndex={-1} {...roving}>
      {ids.map((id) => (
        <li key={id}>
          <BoardCard
            desk={desk}
            id={id}
            pile={lies === 'pile' ? pile : null}
            gain={gainOf(desk, gains, pile, id)}
            isTwin={isTwin(desk, pile, id)}
            onOpen={(anchor) => onOpen(id, pile, anchor)}
          />
        </li>
      ))}
      {children}
    </ul>
  );
}
