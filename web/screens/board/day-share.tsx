import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { BuiltRun } from '../../../core/boards/runs/run.ts';
import { runOnBoard } from '../../../core/drills/run-on-board.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { cardsOnCard } from '../../../core/language/syllable-card.ts';
import { Card } from '../../controls/card.tsx';
import { boardAim, boardContrast } from '../../state/boards.ts';
import { dayCards } from '../../state/day-cards.ts';
import { reasonToRead } from '../../state/review.ts';
import { cardShort } from '../../wording/card-short.ts';
import { contrastName } from '../../wording/contrast-name.ts';
import type { BoardDesk } from './desk.ts';
import { runAskedOn } from './for-today.ts';
import { say } from './wording.ts';

/** So many cards are told of: the new ones, then those that need it most. */
const MOST = 4;
/** A board rests so long before a run over it is made, in milliseconds. */
const REST = 250;

/** A run over this board: the cards of each flip, and how often look-alikes are turned one into the other. */
interface Shown {
  readonly flips: readonly (readonly CardId[])[];
  readonly turned: BuiltRun['turned'];
}

/** What the day is about, and in how many flips of a run over this board it is shown. */
export function DayShare({ desk }: { readonly desk: BoardDesk }) {
  const { table } = desk.rows;
  const [shown, setShown] = useState<Shown>();
  const { newest, broken } = dayCards.value;
  const about = [...new Set([...newest, ...broken])].slice(0, MOST);
  const aim = boardAim.value;
  const contrast = boardContrast.value;
  const isAsked = contrast !== null && desk.shape.form !== 'beats';
  const isEmpty = about.length === 0 && !isAsked;
  useEffect(() => {
    setShown(undefined);
    if (!table || isEmpty) return;
    const resting = setTimeout(() => {
      const board = { shape: desk.shape.id, piles: desk.piles };
      const { flips, turned } = runOnBoard(table, runAskedOn(board), desk.ready.lexicon);
      setShown({ flips: flips.map(({ cards }) => cards), turned });
    }, REST);
    return () => clearTimeout(resting);
  }, [table, aim, contrast]);
  if (!table || isEmpty) return null;
  const lying = desk.piles.flat().flatMap(cardsOnCard);
  return (
    <section class="day-share" aria-labelledby="day-share">
      <h3 id="day-share">{say.dayShare.forToday}</h3>
      <ul>
        {about.map((id) => (
          <li key={id}>
            <Card id={id} />
            <span>
              {lying.includes(id) ? inFlips(id, shown) : say.dayShare.doesNotLieHere(cardShort(id))}
              <span class="quiet">{because(id, newest)}</span>
            </span>
          </li>
        ))}
        {isAsked && contrast && (
          <li class="day-pair">
            {contrast.map((id) => (
              <Card key={id} id={id} />
            ))}
            <span>{inTurns(contrast, desk.piles, shown)}</span>
          </li>
        )}
      </ul>
    </section>
  );
}

/** How often look-alikes are turned one into the other, and what no run over this board exceeds. */
function inTurns(
  cards: readonly CardId[],
  piles: BoardDesk['piles'],
  shown: Shown | undefined,
): ComponentChildren {
  const lies = piles.some((pile) => cards.filter((id) => pile.includes(id)).length > 1);
  if (!lies) return say.dayShare.doNotLie(contrastName(cards));
  if (!shown) return say.dayShare.flipsTurnOneInto;
  const { flips, atMost } = shown.turned;
  return (
    <>
      {say.dayShare.ofFlipsTurnOne(flips, shown.flips.length)}
      <span class="quiet">
        : {flips < atMost ? say.dayShare.noneCouldHaveMore(atMost) : say.dayShare.noneCould}
      </span>
    </>
  );
}

function inFlips(id: CardId, shown: Shown | undefined): string {
  if (!shown) return say.dayShare.flipsShow(cardShort(id));
  const count = shown.flips.filter((cards) => cards.includes(id)).length;
  return say.dayShare.ofFlipsShow(count, shown.flips.length, cardShort(id));
}

function because(id: CardId, newest: readonly CardId[]): string {
  const reason =
    reasonToRead(id) ?? (newest.includes(id) ? say.dayShare.new : say.dayShare.brokeLately);
  return `: ${reason}`;
}
