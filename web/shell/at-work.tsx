import { useState } from 'preact/hooks';
import { type Group, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { smallGroups } from '../../core/log/roster.ts';
import { Popover } from '../controls/popover.tsx';
import { classesInUse, nameOfClass } from '../state/class-list.ts';
import {
  chooseGroup,
  classState,
  group,
  groupName,
  nameOfGroup,
  openClass,
} from '../state/open-class.ts';
import { placeOf } from '../state/place-of.ts';
import { linkTo } from '../state/route.ts';
import { say } from './wording.ts';

/** The group at work and its place; where there are several, or several classes, a way to turn to another. */
export function AtWork() {
  const [anchor, setAnchor] = useState<HTMLElement>();
  const state = classState.value;
  const groups = [state.groups.get(WHOLE_CLASS) as Group, ...smallGroups(state)];
  const others = classesInUse.value.filter(({ classId }) => classId !== state.id);
  const place = placeOf(group.value);
  if (groups.length === 1 && others.length === 0) return <p class="quiet where">{place}</p>;
  const who = [
    ...(others.length > 0 ? [nameOfClass(state)] : []),
    ...(groups.length > 1 ? [groupName.value] : []),
  ].join(', ');
  const close = () => setAnchor(undefined);
  return (
    <div class="where">
      <button
        type="button"
        class="button plain at-work-button"
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        <span class="for-ears">{say.atWork.atWork} </span>
        <span class="who">{who}</span>
        <span class="group-stands">· {place}</span>
      </button>
      {anchor && (
        <Popover anchor={anchor} title={say.atWork.whoIsAtWork} onClose={close}>
          {groups.length > 1 && (
            <>
              <h2>{others.length > 0 ? nameOfClass(state) : say.atWork.turnTo}</h2>
              <ul class="turn-to">
                {groups.map((each) => (
                  <li key={each.id}>
                    <button
                      type="button"
                      aria-current={each.id === group.value.id ? 'true' : undefined}
                      onClick={() => {
                        chooseGroup(each.id);
                        close();
                        anchor.focus();
                      }}
                    >
                      <span class="who">
                        <span class="swept">{nameOfGroup(each, state)}</span>
                      </span>
                      <span class="quiet small">{placeOf(each)}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </>
          )}
          {others.length > 0 && (
            <>
              <h2>{groups.length > 1 ? say.atWork.otherClasses : say.atWork.turnTo}</h2>
              <ul class="turn-to">
                {others.map(({ classId, name }) => (
                  <li key={classId}>
                    <button
                      type="button"
                      onClick={async () => {
                        close();
                        await openClass(classId);
                        anchor.focus();
                      }}
                    >
                      <span class="who">{nameOfClass({ name })}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </>
          )}
          <p>
            <a href={linkTo('class')} onClick={close}>
              {say.atWork.groupsAndChildren}
            </a>
          </p>
        </Popover>
      )}
    </div>
  );
}
