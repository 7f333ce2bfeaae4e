import { type CardId, lettersShown } from '../../../core/language/card-id.ts';
import type { PaperAnswer, PapersWord } from '../../../core/log/event.ts';
import { readAnswer } from '../../../core/papers/attempts.ts';
import { isSpelled } from '../../../core/papers/spelling-shown.ts';
import { canBeMeant } from '../../../core/spelling/as-meant.ts';
import type { AttemptReading } from '../../../core/spelling/attempt.ts';
import { Card, CardFace } from '../../controls/card.tsx';
import { accent } from '../../state/accent.ts';
import { cardName } from '../../wording/card-name.ts';
import { cardSaid, glanceOf, sentenceOf, soundOf } from './answer-said.ts';
import { say } from './wording.ts';

interface ReadBackProps {
  readonly title: string;
  readonly said: PapersWord;
  readonly answer: PaperAnswer;
  /** A card (from 1) broke, or did not after all. */
  readonly onBreak: (card: number) => void;
  /** The letters of a card (from 1) were meant for its sound, or were not after all. */
  readonly onMeant: (card: number) => void;
  readonly onRight: () => void;
  readonly onClear: () => void;
  readonly onNext: () => void;
}

/** What was written, read back in cards and in one plain sentence; or the cards to tap. */
export function ReadBack(props: ReadBackProps) {
  const { title, said, answer, onBreak, onMeant, onRight, onClear, onNext } = props;
  const read = readAnswer(answer, said, accent.value)?.read ?? null;
  const broken = answer.kind === 'broke' ? answer.cards : [];
  const slips = (read?.answer === 'attempt' ? read.cards : []).filter(
    ({ verdict }) => verdict !== 'same',
  );
  return (
    <section class="read-back" aria-label={say.readBack.readBack}>
      <h2>
        {title} <span class="quiet">{said.word}</span>
      </h2>
      <p class="read-back-said" role="status">
        {sentenceOf(answer, said)}
      </p>
      <ul class="read-back-cards">
        {said.cards.map((id, at) => {
          const card = read?.cards[at];
          const unread = broken.includes(at + 1) ? 'missed' : 'none';
          const glance = card ? glanceOf(card) : unread;
          return (
            <li key={at} class={`glance-${glance}`}>
              {card ? (
                <Card id={id} />
              ) : (
                <button
                  type="button"
                  class="read-back-break"
                  aria-pressed={broken.includes(at + 1)}
                  aria-label={say.readBack.broke(cardName(id))}
                  onClick={() => onBreak(at + 1)}
                >
                  <Card id={id} />
                </button>
              )}
              {card && <Written letters={card.letters} id={id} same={card.verdict === 'same'} />}
              <span class="read-back-note">{card ? cardSaid(card) : ''}</span>
            </li>
          );
        })}
      </ul>
      {!read && answer.kind !== 'absent' && (
        <p class="quiet small">{say.readBack.typeWhatWasWritten}</p>
      )}
      {slips.length > 0 && (
        <dl class="read-back-skills">
          {slips.map((card) => {
            const at = read?.cards.indexOf(card) ?? 0;
            return (
              <div key={at}>
                <dt>{say.readBack.hears(soundOf(said, at))}</dt>
                <dd>{card.heard ? say.readBack.yes : say.readBack.notInThisWord}</dd>
                <dt>{say.readBack.knowsTheSpelling(lettersShown(card.id))}</dt>
                <dd>
                  {card.heard
                    ? isSpelled(card)
                      ? say.readBack.yes
                      : say.readBack.notYet
                    : say.readBack.cannotBeToldHere}
                </dd>
              </div>
            );
          })}
        </dl>
      )}
      {read && <Meant said={said} read={read} onMeant={onMeant} />}
      <p class="buttons read-back-ways">
        <button type="button" class="button read-back-way" onClick={onClear}>
          {say.readBack.clear(<kbd class="key">{say.readBack.esc}</kbd>)}
        </button>
        <button type="button" class="button read-back-way" onClick={onRight}>
          {say.readBack.right(<kbd class="key">=</kbd>)}
        </button>
        <button type="button" class="button next read-back-way" onClick={onNext}>
          {say.readBack.next(<kbd class="key">{say.readBack.enter}</kbd>)}
        </button>
      </p>
    </section>
  );
}

/** Another way to read what was written: she knows this child's hand, and says what was heard. */
function Meant({
  said,
  read,
  onMeant,
}: Pick<ReadBackProps, 'said' | 'onMeant'> & { readonly read: AttemptReading }) {
  const ways = read.cards.flatMap((card, at) => {
    const isMeant = card.fact === 'meant';
    return isMeant || canBeMeant(card) ? [{ card, at, isMeant }] : [];
  });
  return (
    <>
      {ways.map(({ card, at, isMeant }) => (
        <p key={at} class="read-back-meant">
          <button type="button" class="button plain" onClick={() => onMeant(at + 1)}>
            {isMeant ? say.readBack.readIt : say.readBack.readItAnotherWay}
          </button>{' '}
          <span class="quiet small">
            {isMeant
              ? say.readBack.youSaid(card.letters, lettersShown(card.id), soundOf(said, at))
              : say.readBack.ifWasMeantAs(card.letters, lettersShown(card.id))}
          </span>
        </p>
      ))}
    </>
  );
}

/** The letters written for a card, on a card of the same shape where they are the same. */
function Written({
  letters,
  id,
  same,
}: {
  readonly letters: string;
  readonly id: CardId;
  readonly same: boolean;
}) {
  if (same) return <CardFace id={id} />;
  return <span class="card tile written">{letters === '' ? '–' : letters}</span>;
}
