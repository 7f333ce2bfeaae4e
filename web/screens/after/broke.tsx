import type { EventId } from '../../../core/ids.ts';
import { soundStyle } from '../../state/accent.ts';
import '../../controls/little-row.css';
import { useState } from 'preact/hooks';
import { piecesOf } from '../../../core/boards/shapes/pieces.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import type { BrokenCard, MarkInPlace } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { planAt } from '../../../core/log/drill-record.ts';
import { Card } from '../../controls/card.tsx';
import { PieceCard } from '../../controls/piece-card.tsx';
import { Popover } from '../../controls/popover.tsx';
import { markedOn } from '../../state/marked-on.ts';
import { cardName } from '../../wording/card-name.ts';
import { cardShort } from '../../wording/card-short.ts';
import { slipSaid, slipsSaid } from '../../wording/slip-said.ts';
import { childName } from './child-name.ts';
import { MarkSheet } from './mark-sheet.tsx';
import { say } from './wording.ts';

interface BrokeProps {
  readonly record: DrillRecord;
  readonly broken: readonly BrokenCard[];
}

/** What broke, card by card, with every mark as a button that puts it right. */
export function Broke({ record, broken }: BrokeProps) {
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly mark: EventId }>();
  const mark = open && record.marks.find(({ id }) => id === open.mark);
  const unsure = broken.filter(({ cards }) => cards.length > 1).flatMap(({ marks }) => marks);
  const list = (marks: readonly MarkInPlace[]) => (
    <ul class="marks">
      {marks.map((each) => (
        <li key={each.mark.id}>
          <button
            type="button"
            class="mark"
            aria-haspopup="dialog"
            aria-label={say.broke.putRight(nameOf(each, record))}
            onClick={(event) => setOpen({ anchor: event.currentTarget, mark: each.mark.id })}
          >
            <Where {...each} record={record} />
            <span class="mark-told">{toldOf(each)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <ul class="broken-cards">
        {broken.map(({ cards: [id, ...others], marks }) =>
          id === undefined || others.length > 0 ? null : (
            <li key={id}>
              <span class="which-card" role="img" aria-label={cardName(id)} title={cardName(id)}>
                <Card id={id} />
              </span>
              <div>
                <p>{heardOf(marks) || <span class="quiet">{say.broke.notSaidWhat}</span>}</p>
                {list(marks)}
              </div>
            </li>
          ),
        )}
        {unsure.length > 0 && (
          <li>
            <span class="which-card quiet">{say.broke.notSaidWhichCard}</span>
            <div>
              <p>{heardOf(unsure)}</p>
              {list(unsure)}
            </div>
          </li>
        )}
      </ul>
      {open && mark && (
        <Popover
          anchor={open.anchor}
          title={say.broke.putThisRight}
          onClose={() => setOpen(undefined)}
        >
          <MarkSheet record={record} mark={mark} onDone={() => setOpen(undefined)} />
        </Popover>
      )}
    </>
  );
}

function heardOf(marks: readonly MarkInPlace[]): string {
  const heard = marks.map(({ mark }) => mark.heard);
  return slipsSaid(heard, soundStyle.value);
}

/** Where it was: the row of cards with the broken one marked, the card alone, or the sound. */
function Where({ mark, record }: MarkInPlace & { readonly record: DrillRecord }) {
  if (mark.part === 'visual') return <span class="alone">{say.broke.shownAlone}</span>;
  if (mark.part === 'auditory') {
    const sound = planAt(record, mark.at).auditory[mark.place];
    return (
      <span class="alone">
        {say.broke.written(sound ? soundLabel(sound.phonemes, soundStyle.value) : say.broke.aSound)}
      </span>
    );
  }
  return (
    <span class="little-row">
      {piecesOf(mark.cards).map((piece, place) => (
        <span key={place} class={mark.broke === place + 1 ? 'hurt' : undefined}>
          <PieceCard piece={piece} />
        </span>
      ))}
    </span>
  );
}

/** Whose it was and what became of it, as short as can be; nothing for the whole class, unmended. */
function toldOf({ mark, mended, corrected }: MarkInPlace): string {
  const became = mended ? say.broke.thenWell : corrected ? say.broke.corrected : '';
  const device = markedOn(mark.id);
  const said = [
    mark.child === null ? '' : childName(mark.child),
    became,
    device && say.broke.on(device),
  ];
  return said.filter(Boolean).join(' · ');
}

/** A mark in words, for ears. */
function nameOf({ mark, mended, corrected }: MarkInPlace, record: DrillRecord): string {
  const drill = planAt(record, mark.at);
  const letters = cardShort;
  const broken = mark.broke === null ? undefined : mark.cards[mark.broke - 1];
  const sound = drill.auditory[mark.place];
  const where = {
    visual: say.broke.shownAlone,
    auditory: say.broke.inWriting(sound ? soundLabel(sound.phonemes, soundStyle.value) : ''),
    blending: say.broke.in(drill.run[mark.place]?.word ?? mark.cards.map(letters).join(' ')),
  }[mark.part];
  return [
    `${broken === undefined ? say.broke.someCard : letters(broken)} ${where}`,
    ...(mark.heard ? [slipSaid(mark.heard, soundStyle.value)] : []),
    mark.child === null ? say.broke.wholeClass : childName(mark.child),
    ...(corrected ? [say.broke.corrected] : []),
    ...(mended ? [say.broke.thenWell] : []),
  ].join(', ');
}
