import { useState } from 'preact/hooks';
import { type CardId, lettersShown } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { twinsIn } from '../../../core/language/twins.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { Card } from '../../controls/card.tsx';
import { Popover } from '../../controls/popover.tsx';
import { progress, taught } from '../../state/progress.ts';
import { cardName } from '../../wording/card-name.ts';
import { say } from './wording.ts';

interface CardChoiceProps {
  readonly name: string;
  /** The card that is chosen; empty for none. */
  readonly id: CardId | '';
  readonly onlyTaught: boolean;
  readonly onChoose: (id: CardId | '') => void;
}

/** A button that shows the chosen card and opens all there are to choose from. */
export function CardChoice({ name, id, onlyTaught, onChoose }: CardChoiceProps) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  return (
    <>
      <button
        type="button"
        class="card-choice"
        aria-haspopup="dialog"
        aria-label={`${name}: ${id === '' ? say.cardChoice.noneChosen : cardName(id)}`}
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {id === '' ? <span class="no-card">{say.cardChoice.choose}</span> : <Card id={id} />}
      </button>
      {anchor && (
        <Popover anchor={anchor} title={name} onClose={() => setAnchor(undefined)}>
          <Choices
            id={id}
            onlyTaught={onlyTaught}
            onChoose={(chosen) => {
              onChoose(chosen);
              setAnchor(undefined);
              anchor.focus();
            }}
          />
        </Popover>
      )}
    </>
  );
}

function Choices({ id, onlyTaught, onChoose }: Omit<CardChoiceProps, 'name'>) {
  const [typed, setTyped] = useState('');
  const letters = typed.trim().toLowerCase();
  const cards = singleCards(
    progress.value.sequence,
    onlyTaught ? taught.value.correspondences : null,
  );
  const fitting = cards.filter((id) => lettersShown(id).startsWith(letters));
  const alike = twinsIn(cards);
  return (
    <>
      <input
        type="text"
        class="find-card"
        aria-label={say.cardChoice.lettersOfTheCard}
        placeholder={say.cardChoice.letters}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={typed}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          const first = fitting.find((id) => lettersShown(id) === letters) ?? fitting[0];
          if (event.key !== 'Enter') return;
          event.preventDefault();
          if (letters !== '' && first) onChoose(first);
        }}
      />
      {id !== '' && (
        <button type="button" class="button" onClick={() => onChoose('')}>
          {say.cardChoice.anyCard}
        </button>
      )}
      {fitting.length === 0 && (
        <p class="quiet">
          {onlyTaught ? say.cardChoice.noTaughtCardHas : say.cardChoice.noCardHasThese}
        </p>
      )}
      <div class="choices">
        {fitting.map((card) => (
          <button
            key={card}
            type="button"
            class="choice"
            aria-label={cardName(card)}
            aria-pressed={card === id}
            title={cardName(card)}
            onClick={() => onChoose(card)}
          >
            <Card id={card} among={alike} />
          </button>
        ))}
      </div>
    </>
  );
}

/** The cards of an order that carry one correspondence, in the order they are taught; what was added, last. */
function singleCards(sequence: Sequence, only: ReadonlySet<CardId> | null): readonly CardId[] {
  const inOrder = sequence.steps.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'card' ? [item.id] : [])),
  );
  const all = [...new Set([...inOrder, ...(only ?? [])])];
  return all.filter((id) => {
    const single = correspondenceById.get(id)?.parts.length === 0;
    return single && (only === null || only.has(id));
  });
}
