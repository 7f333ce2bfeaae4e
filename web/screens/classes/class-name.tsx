import { useState } from 'preact/hooks';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { childrenOf, smallGroups } from '../../../core/log/roster.ts';
import { classState } from '../../state/open-class.ts';
import { renameClass, takeOut } from './class-acts.ts';
import { NameForm } from './name-form.tsx';
import { say } from './wording.ts';

/** The head of the page: what the class is called, hers to change, and how many are in it. */
export function ClassName() {
  const [naming, setNaming] = useState(false);
  const { id, name, archived } = classState.value;
  return (
    <div class="class-head">
      {naming ? (
        <>
          <h1 class="for-ears">{name || say.className.yourClass}</h1>
          <NameForm
            label={say.className.whatDoYouCall}
            name={name}
            act={say.className.keepTheName}
            placeholder={say.className.room4}
            mayBeEmpty
            autofocus
            onName={(next) => {
              if (next !== name) renameClass(next);
              setNaming(false);
            }}
            onCancel={() => setNaming(false)}
          />
        </>
      ) : (
        <div class="class-title">
          <h1>{name || say.className.yourClass}</h1>
          <button type="button" class="button plain" onClick={() => setNaming(true)}>
            {name === '' ? say.className.giveItAName : say.className.rename}
          </button>
        </div>
      )}
      <p class="quiet">{inFew()}</p>
      {archived && (
        <p class="class-note">
          {say.className.thisClass}{' '}
          <button type="button" class="button" onClick={() => takeOut(id)}>
            {say.className.takeItOutAgain}
          </button>
        </p>
      )}
    </div>
  );
}

function inFew(): string {
  const state = classState.value;
  const children = childrenOf(state, WHOLE_CLASS).length;
  const groups = smallGroups(state).length;
  if (children === 0 && groups === 0) {
    return say.className.noChildrenYet;
  }
  return [
    counted(children, say.className.child, say.className.children),
    counted(groups, say.className.smallGroup, say.className.smallGroups),
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function counted(count: number, one: string, many: string): string {
  if (count === 0) return '';
  return `${count} ${count === 1 ? one : many}`;
}
