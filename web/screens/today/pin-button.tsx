import { isPinned, type Pins, setPinned } from '../../state/pins.ts';
import { say } from './wording.ts';

/** Pins a thing to every day's warm-up of the group, or takes its pin off. */
export function PinButton<Part extends keyof Pins>({
  part,
  what,
}: {
  readonly part: Part;
  readonly what: Pins[Part][number];
}) {
  const isOn = isPinned(part, what);
  return (
    <button
      type="button"
      class="button"
      aria-pressed={isOn}
      onClick={() => setPinned(part, what, !isOn)}
    >
      {say.pinButton.everyDay}
    </button>
  );
}
