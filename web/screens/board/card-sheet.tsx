import type { Tally } from '../../../core/boards/judge/card-gain.ts';
import { pileInWords, pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { pinnedCards, setPinned } from '../../state/boards.ts';
import { cardName } from '../../wording/card-name.ts';
import { counted } from '../../wording/counted.ts';
import { type BoardDesk, lettersOf, out, put, whyNot } from './desk.ts';
import type { Lying } from './moves.ts';

interface CardSheetProps {
  readonly desk: BoardDesk;
  readonly card: Lying;
  readonly gain: Tally | undefined;
  readonly onDone: () => void;
  /** Asks for the best board with this card. */
  readonly onBest: (id: CardId) => void;
}

/** All about one card: what it adds, where it can go, and why not elsewhere. */
export function CardSheet({ desk, card, gain, onDone, onBest }: CardSheetProps) {
  const { id, pile } = card;
  const letters = lettersOf(id);
  const names = pileNames(desk.shape);
  const reasons = names.map((_, at) => (at === pile ? null : whyNot(desk, id, at)));
  const isPinned = pinnedCards.value.includes(id);
  const against = new Map<string, string[]>();
  reasons.forEach((reason, at) => {
    if (!reason || reason.code === 'lies-here') return;
    against.set(reason.message, [...(against.get(reason.message) ?? []), names[at] ?? '']);
  });
  const done = (act: () => void) => () => {
    act();
    onDone();
  };
  return (
    <>
      <p>
        <b>{cardName(id)}</b>
        {gain && <span class="sheet-gain quiet">{gainInWords(letters, gain, pile !== null)}</span>}
      </p>
      <div class="sheet-acts">
        {names.map((_, at) =>
          at === pile || (reasons[at]?.forbids && reasons[at]?.code !== 'full') ? null : (
            <button
              key={at}
              type="button"
              class="button choice-act"
              onClick={done(() => put(desk, card, at))}
            >
              {pile === null ? 'Put with' : 'Move to'} {pileInWords(desk.shape, at)}
              <kbd class="key">{at + 1}</kbd>
            </button>
          ),
        )}
        {pile !== null && (
          <button type="button" class="button" onClick={done(() => out(desk, id, pile))}>
            Take out <kbd class="key">Del</kbd>
          </button>
        )}
        <button type="button" class="button" onClick={done(() => onBest(id))}>
          Best board with {letters}
        </button>
        {isPinned && (
          <button type="button" class="button" onClick={done(() => setPinned(id, false))}>
            Hold {letters} no longer
          </button>
        )}
      </div>
      {against.size > 0 && (
        <>
          <h3>Why can’t {letters} stand there?</h3>
          <dl class="why-not">
            {[...against].map(([message, where]) => (
              <div key={message}>
                <dt>{where.join(', ')}</dt>
                <dd>{message}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </>
  );
}

function gainInWords(letters: string, gain: Tally, lies: boolean): string {
  const words = `${counted(gain.real, 'real word')} and ${gain.nonsense} nonsense`;
  const stopped = gain.stopped > 0 ? `, and ${gain.stopped} to regret` : '';
  return lies
    ? `Without ${letters}, ${words} would go${stopped}.`
    : `With ${letters}, ${words} would come${stopped}.`;
}
