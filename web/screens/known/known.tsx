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

/** What the children know, by what was noted: the class, a group, groups for tomorrow, one child. */
export function KnownPage() {
  const view = parseView(asked.value);
  return (
    <div class="known-page">
      <SignShapes />
      <div class="known-head">
        <h1>What do they know?</h1>
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
      <NothingYet to="class" act="Add your children">
        First names, nicknames or initials are enough. Then you see here what each child knows, as
        you mark what breaks.
      </NothingYet>
    );
  }
  if (taughtCards.value.length === 0) {
    return (
      <NothingYet to="learned" act="What have they learned?">
        Say what this group has learned, and its sounds stand here.
      </NothingYet>
    );
  }
  if (observations.value.length === 0) {
    return (
      <NothingYet to="today" act="To today’s warm-up">
        Nothing was noted yet. Run a warm-up, call on children, and mark what breaks: a few seconds
        a day are enough to begin with.
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
      <NothingYet to="class" act="Add more children">
        With one child there is nothing to part. Groups are suggested from two children on.
      </NothingYet>
    );
  }
  if (members.value.length === 0) {
    return (
      <NothingYet to="class" act="Put children in this group">
        Nobody is in this group yet.
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
      <p>This child is not in the class any more. What was noted is kept.</p>
      <a class="button next" href={linkToView({ of: 'map', open: null })}>
        To the class map
      </a>
    </div>
  );
}

/** What these figures are and are not; quietly, on every screen that shows some. */
function Note() {
  return (
    <p class="quiet small known-note">
      These are practice notes, not a diagnosis, and they compare no child with others. Your local
      rules and licensed specialists decide. They stay on this device.
    </p>
  );
}

const ways = [
  [{ of: 'map', open: null }, 'Class map'],
  [{ of: 'group' }, 'This group'],
  [{ of: 'groups' }, 'Suggested groups'],
] as const;

/** The pages of what they know. */
function Ways({ current }: { readonly current: KnownView['of'] }) {
  return (
    <nav class="known-ways" aria-label="What they know">
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
