import { addItem, dropItem } from '../../../core/sequence/progress.ts';
import type { Item } from '../../../core/sequence/sequence.ts';
import { progress, setProgress } from '../../state/progress.ts';

const FLEX: Item = { kind: 'habit', habit: 'flex' };

/** The switch for words of two beats with one faded vowel, with what it means. */
export function Flex() {
  const now = progress.value;
  const isOn = !now.dropped.some((item) => item.kind === 'habit' && item.habit === 'flex');
  return (
    <label class="flex-vowel">
      <input
        type="checkbox"
        checked={isOn}
        onChange={() =>
          setProgress(
            isOn ? dropItem(now, FLEX) : { ...addItem(now, FLEX), added: now.added },
            isOn
              ? 'Words such as basket wait for the vowel that fades.'
              : 'Words such as basket come with words of two beats.',
          )
        }
      />
      <span>
        <b>We flex the vowel.</b>{' '}
        <span class="quiet">
          In basket, problem or seven the last vowel fades. Children who flex try its short sound,
          then let it fade until they hear the word. On: such words come with words of two beats.
          Off: they wait for the step of the vowel that fades.
        </span>
      </span>
    </label>
  );
}
