import { needSaid } from '../../../core/groups/needs.ts';
import { type SharedWay, sharedWays } from '../../../core/groups/shared-ways.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { cardsSaid } from '../../../core/story/card-said.ts';
import { waySaid } from '../../../core/story/way-said.ts';
import { Card } from '../../controls/card.tsx';
import { members, nameOf } from '../../state/class-now.ts';
import { group, groupName } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { settings } from '../../state/settings.ts';
import { cardName } from '../../wording/card-name.ts';
import { namesSaid } from '../../wording/said.ts';
import { needsFor, rowsOf } from './group-rows.ts';

/** So many sentences stand above the map, of so many cards each. */
const MOST_SENTENCES = 3;
const MOST_CARDS = 3;

interface Sentence {
  readonly cards: readonly CardId[];
  readonly says: string;
  readonly who: readonly string[];
}

/** What stands out in the group at work, each as a sentence with its cards: said first, shown below. */
export function Stands() {
  const rows = rowsOf(members.value);
  const { notation } = settings.value;
  const shared = sharedWays(rows).filter(({ children }) => children.length > 1);
  const told = new Set(shared.flatMap(({ cards }) => cards));
  const sayWay = ({ pattern, children, cards }: SharedWay): Sentence => ({
    cards,
    says: `${children.length} of ${rows.length} ${waySaid(pattern, cardsSaid(cards, notation, 'or'), 'many', notation)}:`,
    who: children,
  });
  const missed = needsFor(rows).filter(
    ({ card, missedBy }) => missedBy.length > 0 && !told.has(card),
  );
  const sentences = [
    ...shared.map(sayWay),
    ...missed.map(
      (need): Sentence => ({
        cards: [need.card],
        says: `${capital(needSaid(need))}:`,
        who: need.missedBy,
      }),
    ),
  ].slice(0, MOST_SENTENCES);
  if (sentences.length === 0) return null;
  const name = group.value.id === WHOLE_CLASS ? 'the whole class' : groupName.value;
  return (
    <ul class="stands">
      {sentences.map(({ cards, says, who }, at) => (
        <li key={cards.join(' ')}>
          <span class="stands-cards">
            {cards.slice(0, MOST_CARDS).map((id) => (
              <span key={id}>
                <span class="for-ears">{cardName(id)}</span>
                <Card id={id} />
              </span>
            ))}
          </span>
          <span>
            <b>{says}</b>{' '}
            {namesSaid(
              who.map((id) => nameOf({ of: 'child', id })),
              6,
            )}
            .
          </span>
          {at === 0 && (
            <a class="button next not-printed" href={linkTo('today')}>
              Plan {name}
            </a>
          )}
        </li>
      ))}
    </ul>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
