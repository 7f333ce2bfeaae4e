import { childId } from '../../../core/ids.ts';
import './pages.css';
import { useEffect, useState } from 'preact/hooks';
import { NoChildren } from '../../controls/no-children.tsx';
import { SignShapes } from '../../controls/sign.tsx';
import { everyone } from '../../state/everyone.ts';
import { asked } from '../../state/route.ts';
import {
  child,
  forEach,
  LANGUAGES,
  language,
  speak,
  takeChild,
  turnTo,
  turnToChild,
  turnToEach,
  WAYS,
  type Way,
  way,
} from './choice.ts';
import { FamilyNote } from './family-note.tsx';
import { FamilyNotes } from './family-notes.tsx';
import { Handover } from './handover.tsx';
import { MeetingPage } from './meeting-page.tsx';
import { Tables } from './tables.tsx';
import { WhoLacks } from './who-lacks.tsx';
import { say } from './wording.ts';

/** Pages to hand on: for a meeting, for a family, for the next teacher, who needs what, and everything as tables. */
export function PagesPage() {
  useEffect(takeChild, [asked.value]);
  const [areAllMade, setAllMade] = useState(false);
  const about = child.value;
  if (!about) return <Nobody />;
  const now = way.value;
  const isEach = forEach.value;
  return (
    <>
      <SignShapes />
      <div class="pages-head not-printed">
        <h1>{say.pages.pagesToHandOn}</h1>
        <nav aria-label={say.pages.pages} class="pages-ways">
          {WAYS.map((each) => (
            <button
              key={each}
              type="button"
              class="pages-way"
              aria-current={each === now ? 'page' : undefined}
              onClick={() => turnTo(each)}
            >
              <span class="swept">{names[each]}</span>
            </button>
          ))}
        </nav>
        <div class="pages-tools">
          {(now === 'meeting' || now === 'family') && (
            <label>
              <span>{say.pages.about}</span>
              <select
                value={isEach ? EACH : about.id}
                onChange={(event) => {
                  const { value } = event.currentTarget;
                  setAllMade(false);
                  if (value === EACH) turnToEach();
                  else turnToChild(childId(value));
                }}
              >
                {everyone.value.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
                {now === 'family' && everyone.value.length > 1 && (
                  <option value={EACH}>{say.pages.eachChildAPage}</option>
                )}
              </select>
            </label>
          )}
          {now === 'family' && (
            <label>
              <span>{say.pages.language}</span>
              <select
                value={language.value}
                onChange={(event) => {
                  const next = LANGUAGES.find((each) => each === event.currentTarget.value);
                  if (next) speak(next);
                }}
              >
                <option value="english">{say.pages.english}</option>
                <option value="spanish">{say.pages.spanish}</option>
              </select>
            </label>
          )}
          {now !== 'tables' && (
            <button
              type="button"
              class="button next"
              disabled={isEach && !areAllMade}
              onClick={() => print()}
            >
              {isEach ? say.pages.printThesePages(everyone.value.length) : say.pages.printThisPage}
            </button>
          )}
        </div>
        {now === 'family' && language.value === 'spanish' && (
          <p class="pages-hint">{say.pages.aMachineMade}</p>
        )}
        <p class="quiet small">{say.pages.youDecideWhatGoes}</p>
      </div>
      {now === 'meeting' && <MeetingPage key={about.id} child={about} />}
      {now === 'family' && !isEach && <FamilyNote key={about.id} child={about} />}
      {isEach && <FamilyNotes children={everyone.value} onAll={() => setAllMade(true)} />}
      {now === 'handover' && <Handover />}
      {now === 'lacking' && <WhoLacks />}
      {now === 'tables' && <Tables />}
    </>
  );
}

/** What stands for all children in the list of them; no child has such an id. */
const EACH = ' each';

const names: Readonly<Record<Way, string>> = {
  meeting: say.pages.forAMeeting,
  family: say.pages.forTheFamily,
  handover: say.pages.forTheNextTeacher,
  lacking: say.pages.whoNeedsWhat,
  tables: say.pages.asTables,
};

function Nobody() {
  return <NoChildren title={say.pages.pagesToHandOn}>{say.pages.onePage}</NoChildren>;
}
