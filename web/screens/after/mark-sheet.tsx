import { childId } from '../../../core/ids.ts';
import { isCardId, soundsOf } from '../../../core/language/card-id.ts';
import { isVowelPhoneme, type Phoneme, soundLabel } from '../../../core/language/phonemes.ts';
import type { DrillRecord, Mark } from '../../../core/log/class-state.ts';
import { type Amendment, SLIPS, type Slip } from '../../../core/log/event.ts';
import { childrenOf } from '../../../core/log/roster.ts';
import { Card } from '../../controls/card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { classState, recordUndoable } from '../../state/open-class.ts';
import { soundsToAsk } from '../../state/sounds-to-ask.ts';
import { slipsFor } from '../../warm-up/marking.ts';
import { cardName } from '../../wording/card-name.ts';
import { slipSaid } from '../../wording/slip-said.ts';
import { slipKey } from '../../wording/slip-short.ts';
import { childName } from './child-name.ts';
import { say } from './wording.ts';

interface MarkSheetProps {
  readonly record: DrillRecord;
  readonly mark: Mark;
  readonly onDone: () => void;
}

/** Puts a mark right: which card, what was heard, who; or takes it back. Each change is kept at once. */
export function MarkSheet({ record, mark, onDone }: MarkSheetProps) {
  const amend = (change: Omit<Amendment, 'drillId' | 'mark'>, said: string) =>
    recordUndoable(said, {
      kind: 'amended',
      body: { drillId: record.id, mark: mark.id, ...change } as Amendment,
    });
  const notation = soundStyle.value;
  const likely = slipsFor(mark);
  const keys = new Set(likely.map(makeSlip));
  const others = (slips: readonly Slip[]) => slips.filter((slip) => !keys.has(makeSlip(slip)));
  const option = (slip: Slip) => (
    <option key={makeSlip(slip)} value={makeSlip(slip)}>
      {slip.kind === 'phoneme' ? soundLabel([slip.sound], notation) : slipSaid(slip, notation)}
    </option>
  );
  const children = childrenOf(classState.value, record.groupId).filter(
    ({ id }) => id !== mark.child,
  );
  return (
    <div class="mark-sheet">
      {mark.cards.length > 1 && (
        <fieldset>
          <legend>{say.markSheet.whichBroke}</legend>
          <p class="choices">
            {mark.cards.map((id, place) => (
              <button
                key={place}
                type="button"
                class="choice"
                aria-label={cardName(id)}
                aria-pressed={mark.broke === place + 1}
                onClick={() =>
                  amend({ field: 'broke', value: place + 1 }, say.markSheet.markedAnotherCard)
                }
              >
                <Card id={id} />
              </button>
            ))}
            <button
              type="button"
              class="choice text mark-choice"
              aria-pressed={mark.broke === null}
              onClick={() => amend({ field: 'broke', value: null }, say.markSheet.notSaidWhichCard)}
            >
              {say.markSheet.notSure}
            </button>
          </p>
        </fieldset>
      )}
      <label>
        <span>{say.markSheet.heardInstead}</span>
        <select
          value={makeSlip(mark.heard)}
          onChange={({ currentTarget }) =>
            amend(
              { field: 'heard', value: parseSlip(currentTarget.value) },
              say.markSheet.changedWhatWasHeard,
            )
          }
        >
          <option value="">{say.markSheet.notSaid}</option>
          <optgroup label={say.markSheet.likely}>{likely.map(option)}</optgroup>
          <optgroup label={say.markSheet.anotherSound}>
            {others(soundsToHear(mark)).map(option)}
          </optgroup>
          <optgroup label={say.markSheet.somethingElse}>
            {others(SLIPS.map((kind) => ({ kind }))).map(option)}
          </optgroup>
        </select>
      </label>
      <label>
        <span>{say.markSheet.who}</span>
        <select
          value={mark.child ?? ''}
          onChange={({ currentTarget: { value } }) =>
            amend(
              { field: 'child', value: value === '' ? null : childId(value) },
              say.markSheet.changedWhoseItWas,
            )
          }
        >
          <option value="">{say.markSheet.wholeClass}</option>
          {mark.child !== null && <option value={mark.child}>{childName(mark.child)}</option>}
          {children.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p class="popover-buttons">
        <button
          type="button"
          class="button"
          onClick={() => {
            onDone();
            recordUndoable(say.markSheet.tookBackAMark, {
              kind: 'undone',
              body: { event: mark.id },
            });
          }}
        >
          {say.markSheet.itDidNotBreak}
        </button>
        <button type="button" class="button plain" onClick={onDone}>
          {say.markSheet.close}
        </button>
      </p>
    </div>
  );
}

/** The sounds that may have been heard: those taught, vowels first where a vowel broke, and the one that is noted. */
function soundsToHear({ cards, broke, heard }: Mark): readonly Slip[] {
  const known = soundsToAsk.value.flatMap(({ phonemes }) =>
    phonemes.length === 1 ? phonemes : [],
  );
  const all = new Set(heard?.kind === 'phoneme' ? [heard.sound, ...known] : known);
  const card = cards[(broke ?? 1) - 1];
  const [sound] = card === undefined ? [] : soundsOf(card);
  const isVowel = sound !== undefined && isVowelPhoneme(sound);
  const alike = [...all].filter((other) => isVowelPhoneme(other) === isVowel);
  const rest = [...all].filter((other) => !alike.includes(other));
  return [...alike, ...rest].map((other) => ({ kind: 'phoneme', sound: other }));
}

/** A slip as one short text; none is empty. */
function makeSlip(slip: Slip | null): string {
  if (slip === null) return '';
  return slipKey(slip);
}

function parseSlip(text: string): Slip | null {
  const kind = SLIPS.find((one) => one === text);
  if (kind) return { kind };
  const card = text.slice('letter '.length);
  if (text.startsWith('letter ') && isCardId(card)) return { kind: 'letter', card };
  return text === '' ? null : { kind: 'phoneme', sound: text as Phoneme };
}
