import { useState } from 'preact/hooks';
import { classList, type ListedClass, nameOfClass } from '../../state/class-list.ts';
import { classState, openClass } from '../../state/open-class.ts';
import { addClass, putAway, takeOut } from './class-acts.ts';
import { DeleteClass } from './delete-class.tsx';
import { NameForm } from './name-form.tsx';
import { say } from './wording.ts';

/** The classes on this device: to open, to put away and to take out again, and a place to begin another. */
export function Classes() {
  const all = classList.value;
  const inUse = all.filter(({ archived }) => !archived);
  const away = all.filter(({ archived }) => archived);
  return (
    <section class="class-section" aria-labelledby="classes-title">
      <h2 id="classes-title">{say.classesHere.classesOnThisDevice}</h2>
      <ul class="class-list">
        {inUse.map((each) => (
          <ClassRow key={each.classId} listed={each} />
        ))}
      </ul>
      {away.length > 0 && (
        <details class="put-away">
          <summary>{say.classesHere.archive(away.length)}</summary>
          <ul class="class-list">
            {away.map((each) => (
              <AwayRow key={each.classId} listed={each} />
            ))}
          </ul>
        </details>
      )}
      <NameForm
        label={say.classesHere.addAnotherClass}
        name=""
        act={say.classesHere.addTheClass}
        placeholder={say.classesHere.room5}
        onName={async (name) => {
          await addClass(name);
          scrollTo(0, 0);
        }}
      />
    </section>
  );
}

function ClassRow({ listed }: { readonly listed: ListedClass }) {
  const isOpen = listed.classId === classState.value.id;
  const name = nameOfClass(listed);
  return (
    <li aria-current={isOpen ? 'true' : undefined}>
      <span class="class-row-name">
        <b>{name}</b>
      </span>
      <span class="class-row-acts">
        {isOpen ? (
          <span class="quiet small">{say.classesHere.openNow}</span>
        ) : (
          <button
            type="button"
            class="button"
            aria-label={say.classesHere.open(name)}
            onClick={async () => {
              await openClass(listed.classId);
              scrollTo(0, 0);
            }}
          >
            {say.classesHere.openAlone}
          </button>
        )}
        <button
          type="button"
          class="button plain"
          aria-label={say.classesHere.archiveNamed(name)}
          onClick={() => putAway(listed)}
        >
          {say.classesHere.archiveAlone}
        </button>
      </span>
    </li>
  );
}

function AwayRow({ listed }: { readonly listed: ListedClass }) {
  const [deleting, setDeleting] = useState(false);
  const name = nameOfClass(listed);
  return (
    <li>
      <span class="class-row-name">{name}</span>
      <span class="class-row-acts">
        <button
          type="button"
          class="button"
          aria-label={say.classesHere.takeOutAgain(name)}
          onClick={() => takeOut(listed.classId)}
        >
          {say.classesHere.takeOutAgainAlone}
        </button>
        <button
          type="button"
          class="button plain"
          aria-label={say.classesHere.deleteForGood(name)}
          aria-expanded={deleting}
          onClick={() => setDeleting(!deleting)}
        >
          {say.classesHere.deleteForGoodAlone}
        </button>
      </span>
      {deleting && <DeleteClass listed={listed} onCancel={() => setDeleting(false)} />}
    </li>
  );
}
