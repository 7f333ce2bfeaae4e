import { pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { dragged } from '../../controls/drag.ts';
import { CardLine } from './card-line.tsx';
import type { BoardDesk } from './desk.ts';
import { parseLying, TRAY } from './moves.ts';
import { say } from './wording.ts';

interface TrayProps {
  readonly desk: BoardDesk;
  readonly onOpen: (id: CardId, pile: number, anchor: HTMLElement) => void;
}

/** The taught cards that fit a pile and do not lie there, and what each would add. */
export function Tray({ desk, onOpen }: TrayProps) {
  const { shape, tray } = desk;
  const names = pileNames(shape);
  const now = dragged.value;
  const isUnder = now?.over === TRAY && parseLying(now.what).pile !== null;
  return (
    <section
      class={`board-tray ${isUnder ? 'under' : ''}`}
      data-drop={TRAY}
      aria-label={say.tray.cardsThatCouldLie}
    >
      <h2>{say.tray.couldLieHereToo}</h2>
      {tray.map((ids, pile) => {
        if (ids.length === 0) return null;
        return (
          <div key={pile} class="tray-group">
            <h3 id={`tray-${pile}`} class="quiet">
              {say.tray.more((names[pile] ?? '').toLowerCase())}
            </h3>
            <CardLine desk={desk} ids={ids} lies="tray" pile={pile} onOpen={onOpen} />
          </div>
        );
      })}
    </section>
  );
}
