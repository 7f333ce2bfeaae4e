import './suggested.css';
import { useMemo, useState } from 'preact/hooks';
import type { Group } from '../../../core/log/class-state.ts';
import { regroup } from '../../../core/log/regroup.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { useDrag } from '../../controls/drag.ts';
import { Popover } from '../../controls/popover.tsx';
import { nameOf } from '../../state/class-now.ts';
import { observations } from '../../state/knowledge.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { counted } from '../../wording/counted.ts';
import { namesSaid } from '../../wording/said.ts';
import { Earlier } from './earlier.tsx';
import { Needs } from './needs.tsx';
import { Sizes } from './sizes.tsx';
import { makeGroups, moved, moveTo, needsFor, suggestion } from './suggestion.ts';

/** Small groups for what each needs next: of sizes she sets, moved by hand, made with one act. */
export function Suggested() {
  const found = suggestion();
  return (
    <section class="suggested" aria-labelledby="suggested-title">
      <h2 id="suggested-title" class="for-ears">
        Suggested groups
      </h2>
      <p class="suggested-why">
        Children who need the same next are put together: as alike as can be in what still goes
        wrong. Move anyone; you know more than these few notes.
      </p>
      <Sizes />
      {'problem' in found ? (
        <p class="known-hint" role="status">
          {found.problem}
        </p>
      ) : (
        <Draft groups={found.groups} />
      )}
      <Earlier />
    </section>
  );
}

type Ids = readonly (readonly string[])[];

function Draft({ groups }: { readonly groups: Ids }) {
  const state = classState.value;
  const root = useDrag((child, to) => {
    if (!groups[Number(to)]?.includes(child)) moveTo(child, Number(to), groups);
  });
  const { homes, specs } = useMemo(() => regroup(state, groups, () => 'new'), [state, groups]);
  const unseen = groups
    .flat()
    .filter((id) => !observations.value.some(({ child }) => child === id))
    .map((id) => nameOf({ of: 'child', id }));
  return (
    <>
      {unseen.length > 0 && (
        <p class="quiet">
          Nothing was noted of {namesSaid(unseen)} alone yet: placed as the class goes, for you to
          move.
        </p>
      )}
      <div ref={root} class="suggested-groups">
        {groups.map((_, at) => (
          <Panel key={at} groups={groups} at={at} home={homes[at] ?? null} />
        ))}
      </div>
      <p class="suggested-acts">
        <button
          type="button"
          class="button next"
          disabled={specs.length === 0}
          onClick={() => makeGroups(groups)}
        >
          Make these groups
        </button>
        {moved.value && (
          <button
            type="button"
            class="button"
            onClick={() => {
              moved.value = null;
            }}
          >
            As suggested again
          </button>
        )}
        <span class="quiet small">
          {specs.length === 0 ? (
            <>
              These are your groups now. <a href={linkTo('class')}>See them</a>
            </>
          ) : (
            'One tap, and one tap back. What was noted goes along with each child.'
          )}
        </span>
      </p>
    </>
  );
}

function Panel({
  groups,
  at,
  home,
}: {
  readonly groups: Ids;
  readonly at: number;
  readonly home: Group | null;
}) {
  const state = classState.value;
  const members = groups[at] ?? [];
  const name = home ? nameOfGroup(home, state) : 'A new group';
  const needs = useMemo(() => needsFor(members), [members, state]);
  return (
    <section class="part" aria-label={`Group ${at + 1}: ${name}`} data-drop={at}>
      <h3>
        {at + 1}. {name}{' '}
        <span class="quiet small">{counted(members.length, 'child', 'children')}</span>
      </h3>
      <ul class="suggested-children">
        {members
          .toSorted((one, other) => said(one).localeCompare(said(other)))
          .map((id) => (
            <li key={id}>
              <Chip id={id} groups={groups} at={at} />
            </li>
          ))}
      </ul>
      <h4>Needs next</h4>
      {members.length === 0 ? (
        <p class="quiet">Nobody is in it.</p>
      ) : (
        <Needs needs={needs} size={members.length} />
      )}
    </section>
  );
}

function Chip({
  id,
  groups,
  at,
}: {
  readonly id: string;
  readonly groups: Ids;
  readonly at: number;
}) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  const child = classState.value.children.get(id);
  const now = child ? groupOf(classState.value, child) : null;
  const close = () => setAnchor(undefined);
  return (
    <>
      <button
        type="button"
        class="child-chip"
        data-drag={id}
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {said(id)}
      </button>
      {anchor && (
        <Popover anchor={anchor} title={`Move ${said(id)}`} onClose={close}>
          <p class="popover-head">
            {said(id)} is in {now ? nameOfGroup(now, classState.value) : 'no group'} now. Move to
          </p>
          <p class="choices">
            {groups.map((_, to) =>
              to === at ? null : (
                <button
                  key={to}
                  type="button"
                  class="choice text"
                  onClick={() => {
                    close();
                    moveTo(id, to, groups);
                  }}
                >
                  group {to + 1}
                </button>
              ),
            )}
          </p>
        </Popover>
      )}
    </>
  );
}

function said(id: string): string {
  return nameOf({ of: 'child', id });
}
