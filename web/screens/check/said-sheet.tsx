import type { CheckForm } from '../../../core/checks/check-form.ts';
import { isSaidHere } from '../../../core/language/accent/is-said-here.ts';
import { soundsOf } from '../../../core/language/card-id.ts';
import { type LikelySlip, likelySlips } from '../../../core/language/likely-slips.ts';
import type { ItemReading, Slip } from '../../../core/log/event.ts';
import { accent, soundStyle } from '../../state/accent.ts';
import { slipKey, slipShort } from '../../wording/slip-short.ts';
import { type WholeMark, withHeard, withoutBroken } from './marking.ts';
import { say } from './wording.ts';

interface SaidSheetProps {
  readonly form: CheckForm;
  readonly item: number;
  /** Counted from 1. */
  readonly card: number;
  readonly reading: ItemReading | undefined;
  readonly onSay: (next: ItemReading, said: string) => void;
  readonly onWhole: (mark: WholeMark) => void;
}

/** What was said instead of a card, the likely first; or that it was otherwise after all. */
export function SaidSheet({ form, item, card, reading, onSay, onWhole }: SaidSheetProps) {
  const notation = soundStyle.value;
  const id = form.items[item]?.cards[card - 1];
  const slips =
    id === undefined ? [] : likelySlips(id, form.kind === 'letter-sounds' ? 'visual' : 'blending');
  const sounds = (form.items[item]?.cards ?? []).map(soundsOf);
  const isHere = (slip: LikelySlip) =>
    slip.kind === 'phoneme' && isSaidHere(sounds, card - 1, [slip.sound], accent.value);
  const hear = (heard: Slip) =>
    onSay(withHeard(reading, card, heard), say.saidSheet.heard(slipShort(heard, notation)));
  return (
    <>
      <p class="quiet small">{say.saidSheet.whatWasSaidInstead}</p>
      <div class="choices">
        {slips.map((slip) => (
          <button
            key={slipKey(slip)}
            type="button"
            class="choice text said-choice"
            onClick={() =>
              isHere(slip)
                ? onSay(withoutBroken(reading, card), say.saidSheet.rightAsWeSay)
                : hear(slip)
            }
          >
            {slipShort(slip, notation)}
            {isHere(slip) && say.saidSheet.asWeSay}
          </button>
        ))}
      </div>
      <p class="quiet small">{say.saidSheet.orItWasOtherwise}</p>
      <div class="choices">
        <button
          type="button"
          class="choice text said-choice"
          onClick={() => onSay(withoutBroken(reading, card), say.saidSheet.rightAfterAll)}
        >
          {say.saidSheet.rightAfterAll}
        </button>
        <button
          type="button"
          class="choice text said-choice"
          onClick={() => onWhole('self-corrected')}
        >
          {say.saidSheet.fixedAlone}
        </button>
        <button type="button" class="choice text said-choice" onClick={() => onWhole('hesitated')}>
          {say.saidSheet.helpedAfter3S}
        </button>
        <button type="button" class="choice text said-choice" onClick={() => onWhole('left-out')}>
          {say.saidSheet.leftOut}
        </button>
      </div>
    </>
  );
}
