import { addItem, dropItem } from '../../../core/sequence/progress.ts';
import type { Item } from '../../../core/sequence/sequence.ts';
import { progress, setProgress } from '../../state/progress.ts';
import { say } from './wording.ts';

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
            isOn ? say.flex.wordsSuchAsBasket : say.flex.wordsSuchAsBasketCome,
          )
        }
      />
      <span>
        <b>{say.flex.weFlexTheVowel}</b> <span class="quiet">{say.flex.inBasketProblem}</span>
      </span>
    </label>
  );
}
