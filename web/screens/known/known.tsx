import './known.css';
import type { ComponentChildren } from 'preact';
import { markingSaid } from '../../../core/learners/marking-said.ts';
import { FirstTime } from '../../controls/first-time.tsx';
import { LookAround } from '../../controls/look-around.tsx';
import { SignShapes } from '../../controls/sign.tsx';
import { members, task, taughtCards } from '../../state/class-now.ts';
import { everyone } from '../../state/everyone.ts';
import { knowledge, observations } from '../../state/knowledge.ts';
import { type KnownView, linkToView, parseView } from '../../state/known-view.ts';
import { asked, linkTo } from '../../state/route.ts';
import type { Screen } from '../../state/screens.ts';
import { ChildView } from './child.tsx';
import { ClassMap } from './class-map.tsx';
import { GroupView } from './group.tsx';
import { Suggested } from './suggested.tsx';
import { say } from './wording.ts';

/** What the children know, by what was noted: the class, a group, groups for tomorrow, one child. */
export function KnownPage() {
  const view = parseView(asked.value);
  return (
    <div class="known-page">
      <SignShapes />
      <div class="known-head">
        <h1>{say.known.whatDoTheyKnow}</h1>
        <Ways current={view.of} />
      </div>
      <Marking />
      <Shown view={view} />
      <Note />
    </div>
  );
}

/** What she must know of the figures where she marks only mistakes. */
function Marking() {
  const said = markingSaid(knowledge.value[task.value].marking);
  return said === null ? null : <p class="quiet">{said}</p>;
}

function Shown({ view }: { readonly view: KnownView }) {
  if (everyone.value.length === 0) {
    return (
      <NothingYet to="class" act={say.known.addYourChildren}>
        {say.known.firstNamesNicknames}
      </NothingYet>
    );
  }
  if (taughtCards.value.length === 0) {
    return (
      <NothingYet to="learned" act={say.known.whatHaveTheyLearned}>
        {say.known.sayWhatThisGroup}
      </NothingYet>
    );
  }
  if (observations.value.length === 0) {
    return (
      <NothingYet to="today" act={say.known.toTodaysWarmUp}>
        {say.known.nothingWasNotedYet}
      </NothingYet>
    );
  }
  if (view.of === 'child') {
    const child = everyone.value.find(({ id }) => id === view.id);
    return child ? <ChildView child={child} card={view.card} /> : <Gone />;
  }
  if (view.of === 'groups') {
    if (everyone.value.length > 1) return <Suggested />;
    return (
      <NothingYet to="class" act={say.known.addMoreChildren}>
        {say.known.withOneChildThere}
      </NothingYet>
    );
  }
  if (members.value.length === 0) {
    return (
      <NothingYet to="class" act={say.known.putChildren}>
        {say.known.nobodyIs}
      </NothingYet>
    );
  }
  if (view.of !== 'map') return <GroupView />;
  return (
    <>
      <FirstTime of="map" />
      <ClassMap open={view.open} />
    </>
  );
}

function Gone() {
  return (
    <div class="known-empty">
      <p>{say.known.thisChildIsNot}</p>
      <a class="button next" href={linkToView({ of: 'map', open: null })}>
        {say.known.toTheClassMap}
      </a>
    </div>
  );
}

/** What these figures are and are not; quietly, on every screen that shows some. */
function Note() {
  return <p class="quiet small known-note">{say.known.theseArePracticeNotes}</p>;
}

const ways = [
  [{ of: 'map', open: null }, say.known.classMap],
  [{ of: 'group' }, say.known.thisGroup],
  [{ of: 'groups' }, say.known.suggestedGroups],
] as const;

/** The pages of what they know. */
function Ways({ current }: { readonly current: KnownView['of'] }) {
  return (
    <nav class="known-ways" aria-label={say.known.whatTheyKnow}>
      {ways.map(([view, name]) => (
        <a
          key={view.of}
          href={linkToView(view)}
          aria-current={view.of === current ? 'page' : undefined}
        >
          {name}
        </a>
      ))}
    </nav>
  );
}

/** There is nothing to show yet: why, in a kind word, and the one next step. */
function NothingYet({
  to,
  act,
  children,
}: {
  readonly to: Screen;
  readonly act: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="known-empty">
      <p>{children}</p>
      <a class="button next" href={linkTo(to)}>
        {act}
      </a>
      <LookAround />
    </div>
  );
}
