import { pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { dragged } from '../../controls/drag.ts';
import { setRoom } from '../../state/boards.ts';
import { BoardCard } from './board-card.tsx';
import type { Desk } from './desk.ts';
import { gainOf, isTwin, whyNot } from './desk.ts';
import { parseLying } from './moves.ts';
import { ROOMS } from './room.ts';

/** What a group of cards needs to be moved about in by keys: which card the Tab key comes to. */
export interface Stops {
  readonly stopOf: (group: string, ids: readonly string[]) => string | undefined;
}

interface PileProps extends Stops {
  readonly desk: Desk;
  readonly pile: number;
  readonly onOpen: (id: CardId, pile: number, anchor: HTMLElement) => void;
}

/** One pile of the board, and how many cards there is room for. */
export function Pile({ desk, pile, stopOf, onOpen }: PileProps) {
  const { shape, piles, room, rows } = desk;
  const ids = piles[pile] ?? [];
  const name = pileNames(shape)[pile] ?? '';
  const role = shape.piles[pile]?.role ?? 'beginning';
  const choices = [...new Set([...ROOMS, room[pile] ?? 1])].sort((one, other) => one - other);
  const stop = stopOf(`pile-${pile}`, ids);
  return (
    <section class={`board-pile ${role} ${lightOf(desk, pile)}`} data-drop={pile}>
      <header>
        <h2 id={`pile-${pile}`}>{name}</h2>
        <label class="room quiet">
          {ids.length} of{' '}
          <select
            aria-label={`Room for ${name.toLowerCase()}`}
            value={room[pile]}
            onChange={(event) => {
              const wanted = Number(event.currentTarget.value);
              const next = room.map((own, at) => (at === pile ? wanted : own));
              setRoom(shape.id, next, `Room for ${wanted}.`);
            }}
          >
            {choices.map((count) => (
              <option key={count} value={count}>
                {count}
              </option>
            ))}
          </select>
        </label>
      </header>
      <ul
        class="board-cards"
        aria-labelledby={`pile-${pile}`}
        data-group={`pile-${pile}`}
        tabIndex={-1}
      >
        {ids.map((id) => (
          <li key={id}>
            <BoardCard
              desk={desk}
              id={id}
              pile={pile}
              gain={gainOf(desk, rows.lying, pile, id)}
              isTwin={isTwin(desk, pile, id)}
              isStop={id === stop}
              onOpen={(anchor) => onOpen(id, pile, anchor)}
            />
          </li>
        ))}
        {ids.length === 0 && <li class="quiet small">Drag cards here.</li>}
      </ul>
    </section>
  );
}

/** How a pile looks while a card is dragged: it takes it, refuses it, or is under it. */
function lightOf(desk: Desk, pile: number): string {
  const now = dragged.value;
  const card = now && parseLying(now.what);
  if (!card || card.pile === pile) return '';
  const isRefused = whyNot(desk, card.id, pile)?.forbids;
  return `${isRefused ? 'refuses' : 'takes'} ${now.over === `${pile}` ? 'under' : ''}`;
}
