import { useState } from 'preact/hooks';
import { type Child, type Group, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { smallGroups } from '../../../core/log/roster.ts';
import { dragged } from '../../controls/drag.ts';
import { Popover } from '../../controls/popover.tsx';
import {
  chooseGroup,
  classState,
  group as groupAtWork,
  nameOfGroup,
} from '../../state/open-class.ts';
import { placeOf } from '../../state/place-of.ts';
import { linkTo } from '../../state/route.ts';
import { ChildChip } from './child-chip.tsx';
import { NameForm } from './name-form.tsx';
import { comeBefore, removeGroup, renameGroup } from './roster-acts.ts';
import { say } from './wording.ts';

/** What the panel of those in no group says of itself as a place to let a name go; others say their group. */
export const NO_GROUP = '';

interface GroupPanelProps {
  /** Null for those in no group. */
  readonly group: Group | null;
  readonly members: readonly Child[];
  readonly isWhole?: boolean;
}

/** One group: its name, its place, its children. A child can be dropped here. */
export function GroupPanel({ group, members, isWhole = false }: GroupPanelProps) {
  const state = classState.value;
  const name = group ? nameOfGroup(group, state) : say.groupPanel.noGroup;
  const atWork = group !== null && groupAtWork.value.id === group.id;
  const place = isWhole ? undefined : (group?.id ?? NO_GROUP);
  const now = dragged.value;
  const over = now !== null && now.over === place && !members.some(({ id }) => id === now.what);
  return (
    <section
      class={['group-panel', isWhole && 'whole', group === null && 'none', over && 'over']
        .filter(Boolean)
        .join(' ')}
      aria-label={name}
      aria-current={atWork ? 'true' : undefined}
      data-drop={place}
    >
      <header>
        <h3>
          <span class="swept">{name}</span>
        </h3>
        {group && (
          <a
            class="group-place"
            href={linkTo('learned')}
            aria-label={say.groupPanel.turnToThisGroup(name, placeOf(group))}
            onClick={() => chooseGroup(group.id)}
          >
            {placeOf(group)}
          </a>
        )}
        {group && <Turn group={group} name={name} atWork={atWork} />}
      </header>
      {members.length > 0 && (
        <ul class="child-chips" aria-label={say.groupPanel.children}>
          {members.map((each) => (
            <li key={each.id}>
              <ChildChip child={each} />
            </li>
          ))}
        </ul>
      )}
      {members.length === 0 && !isWhole && (
        <p class="quiet small">
          {group ? say.groupPanel.nobodyYetDrag : say.groupPanel.everyoneIs}
        </p>
      )}
      {group && (members.length > 0 || isWhole) && (
        <a
          class="group-known small"
          href={linkTo('known')}
          aria-label={say.groupPanel.whatKnows(isWhole ? say.groupPanel.theWholeClass : name)}
          onClick={() => chooseGroup(group.id)}
        >
          {say.groupPanel.whatTheyKnow}
        </a>
      )}
      {group && group.id !== WHOLE_CLASS && (
        <Change group={group} name={name} count={members.length} />
      )}
    </section>
  );
}

function Turn({
  group,
  name,
  atWork,
}: {
  readonly group: Group;
  readonly name: string;
  readonly atWork: boolean;
}) {
  if (atWork) return <p class="group-turn small">{say.groupPanel.atWorkNow}</p>;
  return (
    <button
      type="button"
      class="button plain group-turn"
      aria-label={say.groupPanel.workWith(name)}
      onClick={() => chooseGroup(group.id)}
    >
      {say.groupPanel.workWithThem}
    </button>
  );
}

function Change({
  group,
  name,
  count,
}: {
  readonly group: Group;
  readonly name: string;
  readonly count: number;
}) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  const groups = smallGroups(classState.value);
  const at = groups.findIndex(({ id }) => id === group.id);
  const [earlier, later] = [groups[at - 1], groups[at + 1]];
  const close = () => setAnchor(undefined);
  return (
    <>
      <button
        type="button"
        class="button plain group-change"
        aria-label={say.groupPanel.renameOrRemove(name)}
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {say.groupPanel.renameOrRemoveAlone}
      </button>
      {anchor && (
        <Popover anchor={anchor} title={name} onClose={close}>
          <NameForm
            label={say.groupPanel.theGroupsName}
            name={group.name}
            act={say.groupPanel.rename}
            mayBeEmpty
            autofocus
            onName={(next) => {
              renameGroup(group, next);
              close();
              anchor.focus();
            }}
          />
          <p class="choices move-to">
            {earlier && (
              <button
                type="button"
                class="choice text"
                onClick={() => comeBefore(group, earlier.id)}
              >
                {say.groupPanel.earlierInTheDay}
              </button>
            )}
            {later && (
              <button type="button" class="choice text" onClick={() => comeBefore(later, group.id)}>
                {say.groupPanel.laterInTheDay}
              </button>
            )}
          </p>
          <p class="sheet-remove">
            <button
              type="button"
              class="button"
              onClick={() => {
                removeGroup(group);
                close();
              }}
            >
              {say.groupPanel.removeTheGroup}
            </button>
            <span class="quiet small">{say.groupPanel.whatWasNoted(removing(count))}</span>
          </p>
        </Popover>
      )}
    </>
  );
}

function removing(count: number): string {
  if (count === 0) return say.groupPanel.nobodyIsInIt;
  return count === 1 ? say.groupPanel.itsOneChildWill : say.groupPanel.itsChildrenWill(count);
}
