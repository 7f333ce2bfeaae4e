import type { GroupId } from '../../../core/ids.ts';
import { type Group, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import type { NameOrder } from '../../../core/log/event.ts';
import { smallGroups } from '../../../core/log/roster.ts';
import { groupOf, sharedNames } from '../../../core/log/roster-changes.ts';
import { useDrag } from '../../controls/drag.ts';
import { everyone } from '../../state/everyone.ts';
import { classState } from '../../state/open-class.ts';
import { seatOf } from './child-chip.tsx';
import { GroupPanel, NO_GROUP } from './group-panel.tsx';
import { NameForm } from './name-form.tsx';
import { addGroup, moveChild, orderNamesBy, seatBefore } from './roster-acts.ts';
import { say } from './wording.ts';

/** The whole class and its small groups, each with its place and its children. */
export function Groups() {
  const state = classState.value;
  const groups = smallGroups(state);
  const all = everyone.value;
  const inGroup = (id: GroupId | null) =>
    all.filter((child) => (groupOf(state, child)?.id ?? null) === id);
  const whole = state.groups.get(WHOLE_CLASS) as Group;
  const root = useDrag<HTMLElement>((what, at) => {
    const child = all.find(({ id }) => id === what);
    const neighbor = seatOf(at);
    if (child && neighbor !== null) {
      seatBefore(child, neighbor);
      return;
    }
    const group = groups.find(({ id }) => id === at);
    if (child && (group || at === NO_GROUP)) moveChild(child, group ?? null);
  });
  return (
    <section ref={root} class="groups" aria-labelledby="groups-title">
      <h2 id="groups-title" class="for-ears">
        {say.groups.groups}
      </h2>
      {all.length > 1 && <Order />}
      <SharedNames names={sharedNames(all)} />
      <GroupPanel group={whole} members={groups.length === 0 ? all : []} isWhole />
      {groups.length > 0 && (
        <div class="group-panels">
          {groups.map((group) => (
            <GroupPanel key={group.id} group={group} members={inGroup(group.id)} />
          ))}
          <GroupPanel key="none" group={null} members={inGroup(null)} />
        </div>
      )}
      <div class="add-group">
        <NameForm
          label={say.groups.addASmallGroup}
          name=""
          act={say.groups.addTheGroup}
          placeholder={say.groups.willow}
          mayBeEmpty
          onName={addGroup}
        />
        <p class="quiet small">{say.groups.itBeginsWhere}</p>
      </div>
    </section>
  );
}

/** In which order the names stand, on every screen. */
function Order() {
  const { namesBy } = classState.value;
  return (
    <p class="name-order">
      <label>
        {say.groups.namesInOrder}{' '}
        <select
          value={namesBy}
          onChange={({ currentTarget }) => orderNamesBy(currentTarget.value as NameOrder)}
        >
          <option value="name">{say.groups.byTheAlphabet}</option>
          <option value="seat">{say.groups.bySeat}</option>
          <option value="typed">{say.groups.asYouTypedThem}</option>
        </select>
      </label>
      {namesBy === 'seat' && <span class="quiet small"> {say.groups.dragANameOnto}</span>}
    </p>
  );
}

function SharedNames({ names }: { readonly names: readonly string[] }) {
  return (
    <div role="status">
      {names.map((name) => (
        <p key={name} class="class-note">
          {say.groups.twoChildrenHere(name)}
        </p>
      ))}
    </div>
  );
}
