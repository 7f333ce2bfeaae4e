import { type Child, type Group, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { childrenOf, smallGroups } from '../../../core/log/roster.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { linkToView } from '../../state/known-view.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { NameForm } from './name-form.tsx';
import { moveChild, removeChild, renameChild, seatBefore, toFocus } from './roster-acts.ts';
import { say } from './wording.ts';

interface ChildSheetProps {
  readonly child: Child;
  readonly onDone: () => void;
}

/** What can be done with a child's name: move it to another group, write it otherwise, take it out. */
export function ChildSheet({ child, onDone }: ChildSheetProps) {
  const state = classState.value;
  const here = groupOf(state, child);
  const others: readonly (Group | null)[] = [
    ...smallGroups(state).filter(({ id }) => id !== here?.id),
    ...(here ? [null] : []),
  ];
  const neighbor = childrenOf(state, WHOLE_CLASS).find(
    (other) => other.id !== child.id && groupOf(state, other) === here,
  );
  const seats = childrenOf(state, WHOLE_CLASS);
  const seat = seats.findIndex(({ id }) => id === child.id);
  const [earlier, later] = [seats[seat - 1], seats[seat + 1]];
  const then = (what: () => void) => {
    toFocus.value = child.id;
    onDone();
    what();
  };
  return (
    <>
      <p class="sheet-known">
        <a href={linkToView({ of: 'child', id: child.id, card: null })}>
          {say.childSheet.whatKnows(child.name)}
        </a>
      </p>
      {others.length > 0 && (
        <>
          <h3>{say.childSheet.moveTo(child.name)}</h3>
          <p class="choices move-to">
            {others.map((group) => (
              <button
                key={group?.id ?? ''}
                type="button"
                class="choice text"
                onClick={() => then(() => moveChild(child, group))}
              >
                {group ? nameOfGroup(group, state) : say.childSheet.noGroup}
              </button>
            ))}
          </p>
        </>
      )}
      {state.namesBy === 'seat' && (
        <p class="choices move-to">
          {earlier && (
            <button
              type="button"
              class="choice text"
              onClick={() => then(() => seatBefore(child, earlier.id))}
            >
              {say.childSheet.oneSeatForward}
            </button>
          )}
          {later && (
            <button
              type="button"
              class="choice text"
              onClick={() => then(() => seatBefore(later, child.id))}
            >
              {say.childSheet.oneSeatBack}
            </button>
          )}
        </p>
      )}
      <NameForm
        label={say.childSheet.firstNameNickname}
        name={child.name}
        act={say.childSheet.rename}
        longest={40}
        onName={(name) => then(() => renameChild(child, name))}
      />
      <p class="sheet-remove">
        <button
          type="button"
          class="button"
          onClick={() => {
            toFocus.value = neighbor?.id ?? null;
            onDone();
            removeChild(child);
          }}
        >
          {say.childSheet.takeOut}
        </button>
      </p>
    </>
  );
}
