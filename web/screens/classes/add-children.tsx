import { useId, useState } from 'preact/hooks';
import { groupId } from '../../../core/ids.ts';
import { smallGroups } from '../../../core/log/roster.ts';
import { parseNames } from '../../../core/words/name-sounds.ts';
import { namesTyped } from '../../state/leftovers.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { addChildren } from './roster-acts.ts';
import { say } from './wording.ts';

const MOST_AT_ONCE = 200;
/** So many letters are no list of that many names. */
const LONGEST = 20_000;

/** A place to write a child's name, or to paste a whole column of them. */
export function AddChildren() {
  const text = namesTyped.value;
  const [chosen, setChosen] = useState('');
  const hint = useId();
  const state = classState.value;
  const groups = smallGroups(state);
  const group = groups.some(({ id }) => id === chosen) ? chosen : '';
  const names = text.length > LONGEST ? [] : parseNames(text);
  const isMany = text.length > LONGEST || names.length > MOST_AT_ONCE;
  const lines = Math.min(8, text.slice(0, 2000).split('\n').length);
  const add = () => {
    if (names.length === 0 || isMany) return;
    addChildren(names, group === '' ? null : groupId(group));
    namesTyped.value = '';
  };
  return (
    <form
      class="add-children"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <label class="add-names">
        {say.addChildren.addChildren}
        <textarea
          rows={lines}
          value={text}
          autocomplete="off"
          autocapitalize="words"
          spellcheck={false}
          aria-describedby={hint}
          onInput={(event) => {
            namesTyped.value = event.currentTarget.value;
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
            event.preventDefault();
            add();
          }}
        />
      </label>
      {groups.length > 0 && (
        <label class="add-to">
          {say.addChildren.to}
          <select value={group} onChange={(event) => setChosen(event.currentTarget.value)}>
            <option value="">{say.addChildren.noGroupYet}</option>
            {groups.map((each) => (
              <option key={each.id} value={each.id}>
                {nameOfGroup(each, state)}
              </option>
            ))}
          </select>
        </label>
      )}
      <button
        type="submit"
        class={nextIf(names.length > 0)}
        disabled={names.length === 0 || isMany}
      >
        {names.length > 1 ? say.addChildren.addSoMany(names.length) : say.addChildren.add}
      </button>
      {isMany && (
        <p class="class-problem" role="alert">
          {say.addChildren.theseAreMoreNames(MOST_AT_ONCE)}
        </p>
      )}
      <p class="quiet small" id={hint}>
        {say.addChildren.firstNameNickname}
      </p>
    </form>
  );
}

function nextIf(ready: boolean): string {
  return ready ? 'button next' : 'button';
}
