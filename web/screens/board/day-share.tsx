import { useEffect, useState } from 'preact/hooks';
import { makeRun } from '../../../core/boards/runs/run.ts';
import { runWishesOf, runWishesOn } from '../../../core/drills/drill-spec.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { cardsOnCard } from '../../../core/language/syllable-card.ts';
import { Card } from '../../controls/card.tsx';
import { boardAim } from '../../state/boards.ts';
import { dayCards } from '../../state/day-cards.ts';
import { runOf, wishes } from '../../state/plan.ts';
import { reasonToRead } from '../../state/review.ts';
import { cardShort } from '../../wording/card-short.ts';
import type { Desk } from './desk.ts';

/** So many cards are told of: the new ones, then those that need it most. */
const MOST = 4;
/** A board rests so long before a run over it is made, in milliseconds. */
const REST = 250;

/** What the day is about, and in how many flips of a run over this board it is shown. */
export function DayShare({ desk }: { readonly desk: Desk }) {
  const { table } = desk.rows;
  const [shown, setShown] = useState<readonly (readonly CardId[])[]>();
  const { newest, broken } = dayCards.value;
  const about = [...new Set([...newest, ...broken])].slice(0, MOST);
  const aim = boardAim.value;
  useEffect(() => {
    setShown(undefined);
    if (!table || about.length === 0) return;
    const resting = setTimeout(() => {
      const spec = { ...runOf(wishes.peek()), aim };
      const { flips } = makeRun(
        table,
        runWishesOn(desk.shape.id, runWishesOf(spec, 1)),
        desk.ready.lexicon,
      );
      setShown(flips.map(({ cards }) => cards));
    }, REST);
    return () => clearTimeout(resting);
  }, [table, aim]);
  if (!table || about.length === 0) return null;
  const lying = desk.piles.flat().flatMap(cardsOnCard);
  return (
    <section class="day-share" aria-labelledby="day-share">
      <h3 id="day-share">For today</h3>
      <ul>
        {about.map((id) => (
          <li key={id}>
            <Card id={id} />
            <span>
              {lying.includes(id) ? inFlips(id, shown) : `${cardShort(id)} does not lie here`}
              <span class="quiet">{because(id, newest)}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function inFlips(id: CardId, shown: readonly (readonly CardId[])[] | undefined): string {
  if (!shown) return `… flips show ${cardShort(id)}`;
  const count = shown.filter((cards) => cards.includes(id)).length;
  return `${count} of ${shown.length} flips show ${cardShort(id)}`;
}

function because(id: CardId, newest: readonly CardId[]): string {
  const reason = reasonToRead(id) ?? (newest.includes(id) ? 'new' : 'broke lately');
  return `: ${reason}`;
}
