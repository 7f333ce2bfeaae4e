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
import { namesSaid } from '../../wording/said.ts';
import { Earlier } from './earlier.tsx';
import { needsFor, rowsOf } from './group-rows.ts';
import { Needs } from './needs.tsx';
import { Sizes } from './sizes.tsx';
import { makeGroups, moved, moveTo, suggestion } from './suggestion.ts';
import { say } from './wording.ts';

/** Small groups for what each needs next: of sizes she sets, moved by hand, made with one act. */
export function Suggested() {
  const found = suggestion();
  return (
    <section class="suggested" aria-labelledby="suggested-title">
      <h2 id="suggested-title" class="for-ears">
        {say.suggested.suggestedGroups}
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
      {unseen.length > 0 && <p class="quiet">{say.suggested.nothingWasNoted(namesSaid(unseen))}</p>}
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
          {say.suggested.makeTheseGroups}
        </button>
        {moved.value && (
          <button
            type="button"
            class="button"
            onClick={() => {
              moved.value = null;
            }}
          >
            {say.suggested.asSuggestedAgain}
          </button>
        )}
        <span class="quiet small">
          {specs.length === 0
            ? say.suggested.theseAreYourGroups(
                <a href={linkTo('class')}>{say.suggested.seeThem}</a>,
              )
            : say.suggested.oneTapMakesThem}
        </span>
      </p>
    </>
  );
}

/** What changes, and why no more does. */
function Changes({ kept }: { readonly kept: KeptGroups | null }) {
  if (kept === null) {
    return <p class="suggested-lead">{say.suggested.asYouMovedThem}</p>;
  }
  const share = (part: number) => `${Math.round(part * 100)}%`;
  return (
    <>
      <p class="suggested-lead">
        {kept.from === 'nothing'
          ? say.suggested.newGroupsChildrenWho
          : kept.changes.length === 0
            ? say.suggested.noChange(<b>{say.suggested.keepTheGroups}</b>)
            : say.suggested.everyoneElseStaysNo(<b>{changesSaid(kept.changes)}</b>)}
      </p>
      <p class="quiet small">
        {say.suggested.ofTheDifferencesBetween(share(kept.covered), share(kept.coveredByLevel))}
      </p>
    </>
  );
}

function changesSaid(changes: KeptGroups['changes']): string {
  return changes
    .map((change) => {
      if (change.kind === 'place')
        return say.suggested.joinsGroup(said(change.child), change.group + 1);
      const [one, other] = change.children;
      return say.suggested.andChangePlaces(said(one), said(other));
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
  const name = home ? nameOfGroup(home, state) : say.suggested.aNewGroup;
  const { needs, why } = useMemo(() => {
    const rows = rowsOf(everyone.value.filter(({ id }) => members.includes(id)));
    return { needs: needsFor(rows), why: whyTogether(rows) };
  }, [members, state]);
  return (
    <section class="part" aria-label={say.suggested.group(at + 1, name)} data-drop={at}>
      <h3>
        {at + 1}. {name} <span class="quiet small">{say.suggested.children(members.length)}</span>
      </h3>
      {members.length > 0 && <p class="suggested-why">{togetherSaid(why, soundStyle.value)}</p>}
      <ul class="suggested-children" aria-label={say.suggested.childrenAlone}>
        {members
          .toSorted((one, other) => said(one).localeCompare(said(other)))
          .map((id) => (
            <li key={id}>
              <Chip id={id} groups={groups} at={at} />
            </li>
          ))}
      </ul>
      <h4>{say.suggested.needsNext}</h4>
      {members.length === 0 ? (
        <p class="quiet">{say.suggested.nobodyIsInIt}</p>
      ) : (
        <Needs needs={needs} />
      )}
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
        <Popover anchor={anchor} title={say.suggested.move(said(id))} onClose={close}>
          <p class="popover-head">
            {say.suggested.isInNowMove(
              said(id),
              now ? nameOfGroup(now, classState.value) : say.suggested.noGroup,
            )}
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
                  {say.suggested.groupNumber(to + 1)}
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
