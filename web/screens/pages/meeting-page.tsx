import { useMemo } from 'preact/hooks';
import { compareScores, comparisonSaid } from '../../../core/checks/difference.ts';
import { countWords, type MapCell } from '../../../core/facts/class-map.ts';
import { isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { checksOf } from '../../../core/log/check-record.ts';
import type { CheckRecord, Child } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { PracticeNote } from '../../controls/check-note.tsx';
import { SeenTable } from '../../controls/seen-table.tsx';
import { Sign } from '../../controls/sign.tsx';
import { WideTable } from '../../controls/wide-table.tsx';
import { today } from '../../state/day.ts';
import { knowledge } from '../../state/knowledge.ts';
import { cellsOf, neediestFirst, placeOfChild, sentenceOn } from '../../state/of-child.ts';
import { classState } from '../../state/open-class.ts';
import { checkBefore, scoreOf } from '../../state/scored.ts';
import { settings } from '../../state/settings.ts';
import { thresholds } from '../../state/thresholds.ts';
import { cardName } from '../../wording/card-name.ts';
import { kindNames } from '../../wording/check-names.ts';
import { ratesOf } from '../../wording/check-rates.ts';
import { dayName, whenSaid } from '../../wording/day-name.ts';
import { shareSaid } from '../../wording/said.ts';
import { HerLine } from './her-line.tsx';
import { Spelling } from './spelling.tsx';
import { say } from './wording.ts';

/** One page on a child: what is secure, growing and shaky, with how sure that is, in plain words. */
export function MeetingPage({ child }: { readonly child: Child }) {
  const known = knowledge.value;
  const { cells, beyond, sentence } = useMemo(() => {
    const own = cellsOf(child, 'read');
    return { cells: own.taught, beyond: own.beyond, sentence: sentenceOn(child) };
  }, [child, known, classState.value, settings.value]);
  const of = (word: MapCell['word']) => cells.filter((cell) => cell.word === word);
  const counts = countWords(cells);
  const isHeard = counts['not yet seen'] < cells.length;
  const { nothingIsShaky, nothingInBetweenJust, nothingIsSureEnough, nothingRead } =
    say.meetingPage;
  const { name: group, progress } = placeOfChild(child);
  const checks = checksOf(classState.value, child.id).filter(({ ended }) => ended !== null);
  return (
    <article class="paper-page">
      <header>
        <h2>{child.name}</h2>
        <p class="quiet">
          {say.meetingPage.readingSoundsAndSpellings(
            dayName(today(), today()),
            group,
            progress.upTo,
            progress.sequence.steps.length,
          )}
        </p>
      </header>
      <p class="page-lead">
        <b>{sentence}</b>
      </p>
      <p>
        {say.meetingPage.ofTaughtSoFar(
          taughtSaid(cells),
          <b>{counts.secure}</b>,
          <b>{counts.growing}</b>,
          <b>{counts.shaky}</b>,
          <b>{counts['not yet seen']}</b>,
          child.name,
        )}
      </p>
      <section>
        <h3>
          <Sign word="shaky" /> {say.meetingPage.shaky}
        </h3>
        <Shaky cells={neediestFirst(of('shaky'))} none={isHeard ? nothingIsShaky : nothingRead} />
      </section>
      <section>
        <h3>
          <Sign word="growing" /> {say.meetingPage.growing}
        </h3>
        <Growing
          cells={neediestFirst(of('growing'))}
          none={isHeard ? nothingInBetweenJust : nothingRead}
        />
      </section>
      {beyond.length > 0 && (
        <section>
          <h3>{say.meetingPage.beyondTheGroupsStep}</h3>
          <Growing cells={beyond} none="" />
        </section>
      )}
      <div class="page-columns">
        <section>
          <h3>
            <Sign word="secure" /> {say.meetingPage.secure}
          </h3>
          <Cards cells={of('secure')} none={isHeard ? nothingIsSureEnough : nothingRead} />
        </section>
        <section>
          <h3>
            <Sign word="not yet seen" /> {say.meetingPage.notYetSeen}
          </h3>
          <Cards cells={of('not yet seen')} none={say.meetingPage.everythingTaughtWasSeen} />
        </section>
      </div>
      <Spelling child={child.id} />
      <section>
        <h3>{say.meetingPage.shortChecks}</h3>
        {checks.length === 0 ? (
          <p class="quiet">{say.meetingPage.noneYet}</p>
        ) : (
          <ul>
            {checks
              .toReversed()
              .slice(0, MOST_CHECKS)
              .map((check) => (
                <li key={check.id}>{checkSaid(check)}</li>
              ))}
          </ul>
        )}
      </section>
      <HerLine page="meeting" about={child.id} placeholder={say.meetingPage.whatYouWant} />
      <p class="small">{say.meetingPage.countsAre(shareSaid(thresholds.value.shaky))}</p>
      <PracticeNote />
    </article>
  );
}

/** How many spellings and words known by sight: `40 spellings and 12 words by sight`. */
function taughtSaid(cells: readonly MapCell[]): string {
  const words = cells.filter(({ card }) => isSightId(card)).length;
  const spellings = say.meetingPage.spellings(cells.length - words);
  return words === 0 ? spellings : say.meetingPage.andWordsBySight(spellings, words);
}

/** Words in a row, so many by name: `was, said and 20 more`. */
function wordsSaid(words: readonly string[]): string {
  const named = words.slice(0, MOST_WORDS).join(', ');
  const more = words.length - MOST_WORDS;
  return more > 0 ? say.meetingPage.andMore(named, more) : named;
}

/** So many are said on the page: the shakiest, the latest. */
const MOST_SHAKY = 10;
const MOST_WORDS = 10;
const MOST_CHECKS = 5;

function checkSaid(check: CheckRecord): string {
  const { form, day } = check;
  const score = scoreOf(check);
  const { right, asked, soundsRight, soundsAsked } = score;
  const isWords = form.kind === 'nonsense-words';
  const sounds = isWords ? say.meetingPage.ofSounds(soundsRight, soundsAsked) : '';
  const rates = ratesOf(check, score);
  const rate = rates ? say.meetingPage.rightAMinute(rates.right) : '';
  const before = checkBefore(check);
  const compared = before && compareScores(form.kind, score, scoreOf(before));
  const beside = compared ? ` ${comparisonSaid(compared)}` : '';
  return say.meetingPage.ofRight(
    kindNames[form.kind],
    whenSaid(day, today()),
    right,
    asked,
    sounds,
    rate,
    beside,
  );
}

/** Cards of one word, and what is said where there are none. */
interface Listed {
  readonly cells: readonly MapCell[];
  readonly none: string;
}

/** What was seen of each shaky card, and how sure that is. */
function Shaky({ cells, none }: Listed) {
  if (cells.length === 0) return <p class="quiet">{none}</p>;
  const more = cells.slice(MOST_SHAKY);
  return (
    <>
      <WideTable name={say.meetingPage.whatIsShaky}>
        <SeenTable cells={cells.slice(0, MOST_SHAKY)} />
      </WideTable>
      {more.length > 0 && (
        <>
          <p class="small">{say.meetingPage.shakyAsWell}</p>
          <Growing cells={more} none="" />
        </>
      )}
    </>
  );
}

/** Cards on their way, each with what was seen of it. */
function Growing({ cells, none }: Listed) {
  if (cells.length === 0) return <p class="quiet">{none}</p>;
  return (
    <ul class="growing-cards">
      {cells.map(({ card, seen }) => (
        <li key={card}>
          <span class="for-ears">{cardName(card)}</span>
          <Card id={card} />
          <span>
            {seen.right + seen.missed === 0
              ? say.meetingPage.unclear
              : say.meetingPage.of(seen.right, seen.right + seen.missed)}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Cards alone, in a row; words known by sight, of which there are soon many, in one line. */
function Cards({ cells, none }: Listed) {
  if (cells.length === 0) return <p class="quiet">{none}</p>;
  const words = cells.filter(({ card }) => isSightId(card));
  return (
    <>
      <ul class="page-cards">
        {cells
          .filter(({ card }) => !isSightId(card))
          .map(({ card }) => (
            <li key={card}>
              <span class="for-ears">{cardName(card)}</span>
              <Card id={card} />
            </li>
          ))}
      </ul>
      {words.length > 0 && (
        <p class="small">
          {say.meetingPage.bySight(wordsSaid(words.map(({ card }) => lettersShown(card))))}
        </p>
      )}
    </>
  );
}
