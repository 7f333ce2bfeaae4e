import { type ChildId, childId, groupId } from '../../../core/ids.ts';
import { soundStyle } from '../../state/accent.ts';
import './suggested.css';
import { useMemo, useState } from 'preact/hooks';
import type { KeptGroups } from '../../../core/groups/keep-groups.ts';
import { togetherSaid, whyTogether } from '../../../core/groups/why-together.ts';
import type { Group } from '../../../core/log/class-state.ts';
import { regroup } from '../../../core/log/regroup.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { useDrag } from '../../controls/drag.ts';
import { Popover } from '../../controls/popover.tsx';
import { nameOf } from '../../state/class-now.ts';
import { everyone } from '../../state/everyone.ts';
import { observations } from '../../state/knowledge.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { counted } from '../../wording/counted.ts';
import { namesSaid } from '../../wording/said.ts';
import { Earlier } from './earlier.tsx';
import { needsFor, rowsOf } from './group-rows.ts';
import { Needs } from './needs.tsx';
import { Sizes } from './sizes.tsx';
import { makeGroups, moved, moveTo, suggestion } from './suggestion.ts';

/** Small groups for what each needs next: of sizes she sets, moved by hand, made with one act. */
export function Suggested() {
  const found = suggestion();
  return (
    <section class="suggested" aria-labelledby="suggested-title">
      <h2 id="suggested-title" class="for-ears">
        Suggested groups
      </h2>
      <Sizes />
      {'problem' in found ? (
        <p class="known-hint" role="status">
          {found.problem}
        </p>
      ) : (
        <Draft groups={found.groups} kept={found.kept} />
      )}
      <Earlier />
    </section>
  );
}

type Ids = readonly (readonly ChildId[])[];

function Draft({ groups, kept }: { readonly groups: Ids; readonly kept: KeptGroups | null }) {
  const state = classState.value;
  const root = useDrag((child, to) => {
    const moved = childId(child);
    if (!groups[Number(to)]?.includes(moved)) moveTo(moved, Number(to), groups);
  });
  const { homes, specs } = useMemo(
    () => regroup(state, groups, () => groupId('new')),
    [state, groups],
  );
  const unseen = groups
    .flat()
    .filter((id) => !observations.value.some(({ child }) => child === id))
    .map((id) => nameOf({ of: 'child', id }));
  return (
    <>
      <Changes kept={kept} />
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
            'One tap makes them, and one tap undoes it. Each child’s marks go along.'
          )}
        </span>
      </p>
    </>
  );
}

/** What changes, and why no more does. */
function Changes({ kept }: { readonly kept: KeptGroups | null }) {
  if (kept === null) {
    return <p class="suggested-lead">As you moved them.</p>;
  }
  const share = (part: number) => `${Math.round(part * 100)}%`;
  return (
    <>
      <p class="suggested-lead">
        {kept.from === 'nothing' ? (
          'New groups: children who need the same next are put together.'
        ) : kept.changes.length === 0 ? (
          <>
            <b>Keep the groups as they are.</b> No change is a clear gain by what was noted.
          </>
        ) : (
          <>
            <b>{changesSaid(kept.changes)}</b> Everyone else stays: no other change is a clear gain.
          </>
        )}
      </p>
      <p class="quiet small">
        {share(kept.covered)} of the differences between the children lie between these groups; a
        plain cut by level has {share(kept.coveredByLevel)}. Move anyone; you know more than these
        notes.
      </p>
    </>
  );
}

function changesSaid(changes: KeptGroups['changes']): string {
  return changes
    .map((change) => {
      if (change.kind === 'place') return `${said(change.child)} joins group ${change.group + 1}.`;
      const [one, other] = change.children;
      return `${said(one)} and ${said(other)} change places.`;
    })
    .join(' ');
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
  const { needs, why } = useMemo(() => {
    const rows = rowsOf(everyone.value.filter(({ id }) => members.includes(id)));
    return { needs: needsFor(rows), why: whyTogether(rows) };
  }, [members, state]);
  return (
    <section class="part" aria-label={`Group ${at + 1}: ${name}`} data-drop={at}>
      <h3>
        {at + 1}. {name}{' '}
        <span class="quiet small">{counted(members.length, 'child', 'children')}</span>
      </h3>
      {members.length > 0 && <p class="suggested-why">{togetherSaid(why, soundStyle.value)}</p>}
      <ul class="suggested-children" aria-label="Children">
        {members
          .toSorted((one, other) => said(one).localeCompare(said(other)))
          .map((id) => (
            <li key={id}>
              <Chip id={id} groups={groups} at={at} />
            </li>
          ))}
      </ul>
      <h4>Needs next</h4>
      {members.length === 0 ? <p class="quiet">Nobody is in it.</p> : <Needs needs={needs} />}
    </section>
  );
}

function Chip({
  id,
  groups,
  at,
}: {
  readonly id: ChildId;
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
        class="suggested-child"
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

function said(id: ChildId): string {
  return nameOf({ of: 'child', id });
}
