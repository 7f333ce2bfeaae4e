import { pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { dragged } from '../../controls/drag.ts';
import { setRoom } from '../../state/boards.ts';
import { CardLine } from './card-line.tsx';
import type { BoardDesk } from './desk.ts';
import { whyNot } from './desk.ts';
import { parseLying } from './moves.ts';
import { ROOMS } from './room.ts';
import { say } from './wording.ts';

interface PileProps {
  readonly desk: BoardDesk;
  readonly pile: number;
  readonly onOpen: (id: CardId, pile: number, anchor: HTMLElement) => void;
}

/** One pile of the board, and how many cards there is room for. */
export function Pile({ desk, pile, onOpen }: PileProps) {
  const { shape, piles, room } = desk;
  const ids = piles[pile] ?? [];
  const name = pileNames(shape)[pile] ?? '';
  const role = shape.piles[pile]?.role ?? 'beginning';
  const choices = [...new Set([...ROOMS, room[pile] ?? 1])].sort((one, other) => one - other);
  return (
    <section
      class={`board-pile ${role} ${lightOf(desk, pile)}`}
      data-drop={pile}
      aria-labelledby={`pile-${pile}`}
    >
      <header>
        <h2 id={`pile-${pile}`}>{name}</h2>
        <label class="room quiet">
          {say.pile.of(ids.length)}{' '}
          <select
            aria-label={say.pile.roomFor(name.toLowerCase())}
            value={room[pile]}
            onChange={(event) => {
              const wanted = Number(event.currentTarget.value);
              const next = room.map((own, at) => (at === pile ? wanted : own));
              setRoom(shape.id, next, say.pile.roomNow(wanted));
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
      <CardLine desk={desk} ids={ids} lies="pile" pile={pile} onOpen={onOpen}>
        {ids.length === 0 && <li class="quiet small">{say.pile.dragCardsHere}</li>}
      </CardLine>
    </section>
  );
}

/** How a pile looks while a card is dragged: it takes it, refuses it, or is under it. */
function lightOf(desk: BoardDesk, pile: number): string {
  const now = dragged.value;
  const card = now && parseLying(now.what);
  if (!card || card.pile === pile) return '';
  const isRefused = whyNot(desk, card.id, pile)?.forbids;
  return `${isRefused ? 'refuses' : 'takes'} ${now.over === `${pile}` ? 'under' : ''}`;
}
