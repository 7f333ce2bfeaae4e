import type { CheckForm } from '../../../core/checks/check-form.ts';
import { isSaidHere } from '../../../core/language/accent/is-said-here.ts';
import { soundsOf } from '../../../core/language/card-id.ts';
import { type LikelySlip, likelySlips } from '../../../core/language/likely-slips.ts';
import type { ItemReading, Slip } from '../../../core/log/event.ts';
import { accent, soundStyle } from '../../state/accent.ts';
import { slipKey, slipShort } from '../../wording/slip-short.ts';
import { type WholeMark, withHeard, withoutBroken } from './marking.ts';

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
  const say = (heard: Slip) =>
    onSay(withHeard(reading, card, heard), `heard ${slipShort(heard, notation)}`);
  return (
    <>
      <p class="quiet small">What was said instead?</p>
      <div class="choices">
        {slips.map((slip) => (
          <button
            key={slipKey(slip)}
            type="button"
            class="choice text said-choice"
            onClick={() =>
              isHere(slip)
                ? onSay(withoutBroken(reading, card), 'right, as we say it here')
                : say(slip)
            }
          >
            {slipShort(slip, notation)}
            {isHere(slip) && ', as we say it: right'}
          </button>
        ))}
      </div>
      <p class="quiet small">Or it was otherwise:</p>
      <div class="choices">
        <button
          type="button"
          class="choice text said-choice"
          onClick={() => onSay(withoutBroken(reading, card), 'right after all')}
        >
          right after all
        </button>
        <button
          type="button"
          class="choice text said-choice"
          onClick={() => onWhole('self-corrected')}
        >
          fixed alone
        </button>
        <button type="button" class="choice text said-choice" onClick={() => onWhole('hesitated')}>
          helped after 3 s
        </button>
        <button type="button" class="choice text said-choice" onClick={() => onWhole('left-out')}>
          left out
        </button>
      </div>
    </>
  );
}
