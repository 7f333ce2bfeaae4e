import { commonnessIn } from '../../../core/drills/commonness.ts';
import { type StandsOut, standsOut, standsOutSaid } from '../../../core/groups/stands-out.ts';
import type { ChildId } from '../../../core/ids.ts';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { Card } from '../../controls/card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { members, nameOf } from '../../state/class-now.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { chooseGroup, classState, group, nameOfGroup } from '../../state/open-class.ts';
import { progress } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { cardName } from '../../wording/card-name.ts';
import { namesSaid } from '../../wording/said.ts';
import { rowsOf } from './group-rows.ts';
import { only } from './map-shown.ts';
import { say } from './wording.ts';

/** So many cards stand before a sentence. */
const MOST_CARDS = 3;
/** So many children are named. */
const MOST_NAMES = 8;

/** What stands out in the group at work, each as a sentence with its cards and one thing to do: said first, shown below. */
export function Stands() {
  const engine = readyEngine();
  const weight = engine === null ? undefined : commonnessIn(engine.lexicon);
  const found = standsOut(rowsOf(members.value), newestCards(progress.value), weight);
  if (found.length === 0) return null;
  const isTrouble = found[0]?.code === 'way' || found[0]?.code === 'missed';
  return (
    <ul class="stands">
      {found.map((one, at) => (
        <li key={`${one.code} ${one.cards.join(' ')}`}>
          <span class="stands-cards">
            {one.cards.slice(0, MOST_CARDS).map((id) => (
              <span key={id}>
                <span class="for-ears">{cardName(id)}</span>
                <Card id={id} />
              </span>
            ))}
          </span>
          <Said one={one} />
          <span class="stands-acts not-printed">
            {one.children.length < one.size && <Show one={one} />}
            {at === 0 && isTrouble && <Plan children={one.children} />}
          </span>
        </li>
      ))}
    </ul>
  );
}

function Said({ one }: { readonly one: StandsOut }) {
  // Of all of them none is named.
  const named = one.children.length < one.size || one.code !== 'new' ? one.children : [];
  const names = named.map((id) => nameOf({ of: 'child', id }));
  const said = standsOutSaid(one, soundStyle.value);
  return (
    <span>
      <b>
        {said}
        {names.length > 0 ? ':' : '.'}
      </b>{' '}
      {names.length > 0 && `${namesSaid(names, MOST_NAMES)}.`}
    </span>
  );
}

/** Leaves only those in the map that the sentence is about. */
function Show({ one }: { readonly one: StandsOut }) {
  const { children, cards } = one;
  if (children.length === 0) return null;
  return (
    <button
      type="button"
      class="button plain"
      onClick={() => {
        only.value = { children, cards };
      }}
    >
      {one.code === 'new' ? say.stands.whoIsLeft : say.stands.showThem}
    </button>
  );
}

/** To the next warm-up of these children: of their small group where all are in one, else of the group at work. */
function Plan({ children }: { readonly children: readonly ChildId[] }) {
  const state = classState.value;
  const [first, ...others] = children.map((id) => {
    const child = state.children.get(id);
    return child === undefined ? null : groupOf(state, child);
  });
  const small = first && others.every((one) => one?.id === first.id) ? first : group.value;
  const name = small.id === WHOLE_CLASS ? say.stands.theWholeClass : nameOfGroup(small, state);
  return (
    <a class="button next" href={linkTo('today')} onClick={() => chooseGroup(small.id)}>
      {say.stands.plan(name)}
    </a>
  );
}
