import { pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { dragged } from '../../controls/drag.ts';
import { BoardCard } from './board-card.tsx';
import { type Desk, gainOf, isTwin } from './desk.ts';
import { parseLying, TRAY } from './moves.ts';
import type { Stops } from './pile.tsx';

interface TrayProps extends Stops {
  readonly desk: Desk;
  readonly onOpen: (id: CardId, pile: number, anchor: HTMLElement) => void;
}

/** The taught cards that fit a pile and do not lie there, and what each would add. */
export function Tray({ desk, stopOf, onOpen }: TrayProps) {
  const { shape, tray, rows } = desk;
  const names = pileNames(shape);
  const now = dragged.value;
  const isUnder = now?.over === TRAY && parseLying(now.what).pile !== null;
  return (
    <section
      class={`board-tray ${isUnder ? 'under' : ''}`}
      data-drop={TRAY}
      aria-label="Cards that could lie here too"
    >
      <h2>Could lie here too</h2>
      {tray.map((ids, pile) => {
        if (ids.length === 0) return null;
        const stop = stopOf(`tray-${pile}`, ids);
        return (
          <div key={pile} class="tray-group">
            <h3 id={`tray-${pile}`} class="quiet">
              {names[pile]}
            </h3>
            <ul
              class="board-cards"
              aria-labelledby={`tray-${pile}`}
              data-group={`tray-${pile}`}
              tabIndex={-1}
            >
              {ids.map((id) => (
                <li key={id}>
                  <BoardCard
                    desk={desk}
                    id={id}
                    pile={null}
                    gain={gainOf(desk, rows.tray, pile, id)}
                    isTwin={isTwin(desk, pile, id)}
                    isStop={id === stop}
                    onOpen={(anchor) => onOpen(id, pile, anchor)}
                  />
                </li>
              ))}
            </ul>
          </div>
        );
      })}
    </section>
  );
}
