import { useState } from 'preact/hooks';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { childrenOf, smallGroups } from '../../../core/log/roster.ts';
import { classState } from '../../state/open-class.ts';
import { renameClass, takeOut } from './class-acts.ts';
import { NameForm } from './name-form.tsx';

/** The head of the page: what the class is called, hers to change, and how many are in it. */
export function ClassName() {
  const [naming, setNaming] = useState(false);
  const { id, name, archived } = classState.value;
  return (
    <div class="class-head">
      {naming ? (
        <>
          <h1 class="for-ears">{name || 'Your class'}</h1>
          <NameForm
            label="What do you call this class?"
            name={name}
            act="Keep the name"
            placeholder="Room 4"
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
          <h1>{name || 'Your class'}</h1>
          <button type="button" class="button plain" onClick={() => setNaming(true)}>
            {name === '' ? 'Give it a name' : 'Rename'}
          </button>
        </div>
      )}
      <p class="quiet">{inFew()}</p>
      {archived && (
        <p class="class-note">
          This class is in the archive.{' '}
          <button type="button" class="button" onClick={() => takeOut(id)}>
            Take it out again
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
    return 'No children yet, and none are needed to run a warm-up. With names, Sweepline helps you call on everyone in turn and remember who needs what.';
  }
  return [counted(children, 'child', 'children'), counted(groups, 'small group', 'small groups')]
    .filter((part) => part !== '')
    .join(', ');
}

function counted(count: number, one: string, many: string): string {
  if (count === 0) return '';
  return `${count} ${count === 1 ? one : many}`;
}
