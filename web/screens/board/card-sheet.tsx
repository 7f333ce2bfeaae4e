import type { Tally } from '../../../core/boards/judge/card-gain.ts';
import { pileInWords, pileNames } from '../../../core/boards/shapes/pile-names.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { pinnedCards, setPinned } from '../../state/boards.ts';
import { cardName } from '../../wording/card-name.ts';
import { type BoardDesk, lettersOf, out, put, whyNot } from './desk.ts';
import type { Lying } from './moves.ts';
import { say } from './wording.ts';

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
              {pile === null ? say.cardSheet.putWith : say.cardSheet.moveTo}{' '}
              {pileInWords(desk.shape, at)}
              <kbd class="key">{at + 1}</kbd>
            </button>
          ),
        )}
        {pile !== null && (
          <button type="button" class="button" onClick={done(() => out(desk, id, pile))}>
            {say.cardSheet.takeOut(<kbd class="key">{say.cardSheet.del}</kbd>)}
          </button>
        )}
        <button type="button" class="button" onClick={done(() => onBest(id))}>
          {say.cardSheet.bestBoardWith(letters)}
        </button>
        {isPinned && (
          <button type="button" class="button" onClick={done(() => setPinned(id, false))}>
            {say.cardSheet.holdNoLonger(letters)}
          </button>
        )}
      </div>
      {against.size > 0 && (
        <>
          <h3>{say.cardSheet.whyCantStandThere(letters)}</h3>
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
  const words = say.cardSheet.realWordsAndNonsense(gain.real, gain.nonsense);
  const stopped = gain.stopped > 0 ? say.cardSheet.andToRegret(gain.stopped) : '';
  return lies
    ? say.cardSheet.withoutWouldGo(letters, words, stopped)
    : say.cardSheet.withWouldCome(letters, words, stopped);
}
