import { useState } from 'preact/hooks';
import type { AssumedHabit } from '../../../core/sequence/plain/assumed-habits.ts';
import type { LinePiece } from '../../../core/sequence/plain/read-line.ts';
import type { OrderDraft, OrderLine } from '../../../core/sequence/plain/read-order.ts';
import { ItemsShown } from './item-shown.tsx';
import { say } from './wording.ts';

interface ReadBackProps {
  readonly draft: OrderDraft;
  /** Takes an answer to what a line asks: what is to stand there instead. */
  readonly onAnswer: (line: number, written: string, instead: string) => void;
  readonly onNotYet: (habit: AssumedHabit['habit']) => void;
}

/** Her lines beside what we read, before anything changes. Only what asks or cannot be read is tinted. */
export function ReadBack({ draft, onAnswer, onNotYet }: ReadBackProps) {
  const [count, setCount] = useState(FIRST);
  const { lines } = draft;
  return (
    <>
      <ol class="order-read" aria-label={say.readBack.yourLinesReadBack}>
        {lines.slice(0, count).map((line) => (
          <Line
            key={line.line}
            line={line}
            assumed={draft.assumed.filter(({ step }) => step === line.step)}
            onAnswer={onAnswer}
            onNotYet={onNotYet}
          />
        ))}
      </ol>
      {lines.length > count && (
        <p>
          <button type="button" class="button" onClick={() => setCount(count + MORE)}>
            {say.readBack.showMoreLines}
          </button>{' '}
          <span class="quiet">
            {say.readBack.theFirst(
              count.toLocaleString('en-US'),
              lines.length.toLocaleString('en-US'),
            )}
          </span>
        </p>
      )}
    </>
  );
}

/** Lines shown at first, and more at each wish: more at once would slow the page. */
const FIRST = 400;
const MORE = 400;

function Line({
  line,
  assumed,
  onAnswer,
  onNotYet,
}: Omit<ReadBackProps, 'draft'> & {
  readonly line: OrderLine;
  readonly assumed: readonly AssumedHabit[];
}) {
  if (line.heading) {
    return (
      <li class="read-heading">
        <b>{line.stage}</b>
      </li>
    );
  }
  const waits = line.pieces.some(({ kind }) => kind !== 'items');
  const isEmpty = line.pieces.length === 0;
  return (
    <li class={waits || isEmpty ? 'line-waits' : ''}>
      <span class="quiet">{line.line}</span>
      <span class="you-wrote">{shortened(line.text.trim())}</span>
      <span class="read-as">
        {line.pieces.map((piece, place) => (
          <Read
            key={`${place} ${piece.written}`}
            piece={piece}
            onAnswer={(instead) => onAnswer(line.line, piece.written, instead)}
          />
        ))}
        {isEmpty && <p>{say.readBack.thisLineTeachesNothing}</p>}
        {assumed.map(({ habit, example }) => (
          <p key={habit} class="quiet">
            {say.readBack.yourClassReads(<i>{example}</i>)}{' '}
            <button type="button" class="link" onClick={() => onNotYet(habit)}>
              {say.readBack.notYet}
            </button>
          </p>
        ))}
      </span>
    </li>
  );
}

function Read({
  piece,
  onAnswer,
}: {
  readonly piece: LinePiece;
  readonly onAnswer: (instead: string) => void;
}) {
  if (piece.kind === 'items') {
    return (
      <span class="read-piece">
        {piece.items.length > 0 ? <ItemsShown items={piece.items} /> : <i>{piece.written}</i>}
        {piece.note && <span class="quiet small">{piece.note}</span>}
      </span>
    );
  }
  if (piece.kind === 'asks') {
    return (
      <fieldset class="asks">
        <legend>{piece.question.asks}</legend>
        {piece.question.answers.map(({ says, writes }) => (
          <button key={says} type="button" class="button" onClick={() => onAnswer(writes)}>
            {says}
          </button>
        ))}
      </fieldset>
    );
  }
  return (
    <fieldset class="asks">
      <legend>
        {say.readBack.weKnowNoCard(
          shortened(piece.written),
          piece.nearMisses.length > 0 ? say.readBack.didYouMean : say.readBack.writeACardSh,
        )}
      </legend>
      {piece.nearMisses.map((near) => (
        <button key={near} type="button" class="button" onClick={() => onAnswer(near)}>
          {near.replace('word:', 'the word ').replace('habit:', '')}
        </button>
      ))}
    </fieldset>
  );
}

function shortened(text: string): string {
  return text.length > 120 ? `${text.slice(0, 120)} …` : text;
}
