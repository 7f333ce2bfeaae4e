import { soundStyle } from '../../state/accent.ts';
import './score.css';
import '../../controls/little-row.css';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { type CheckKind, PER_ROW } from '../../../core/checks/check-form.ts';
import { compareScores, comparisonSaid } from '../../../core/checks/difference.ts';
import type { CheckScore } from '../../../core/checks/score-check.ts';
import { checksOf, readingOf } from '../../../core/log/check-record.ts';
import type { CheckRecord } from '../../../core/log/class-state.ts';
import { PracticeNote } from '../../controls/check-note.tsx';
import { PieceCard } from '../../controls/piece-card.tsx';
import { openCheck } from '../../state/check-choice.ts';
import { today } from '../../state/day.ts';
import { classState } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { checkBefore, scoreOf } from '../../state/scored.ts';
import { setSettings, settings } from '../../state/settings.ts';
import {
  formName,
  itemText,
  kindNames,
  outcomeNames,
  readerOf,
  shownPieces,
} from '../../wording/check-names.ts';
import { ratesOf } from '../../wording/check-rates.ts';
import { dayName, whenSaid } from '../../wording/day-name.ts';
import { slipSaid } from '../../wording/slip-said.ts';
import { takeOut } from './check-acts.ts';
import { EarlierChecks } from './earlier.tsx';
import { UnderWay } from './under-way.tsx';
import { say } from './wording.ts';

/** What a check has come to, what was not right, and the child's other checks beside it. */
export function ScorePage({ record }: { readonly record: CheckRecord }) {
  const [mends, setMends] = useState(false);
  useLayoutEffect(() => scrollTo(0, 0), [mends]);
  if (mends) return <UnderWay record={record} onMended={() => setMends(false)} />;
  const score = scoreOf(record);
  const name = readerOf(record);
  return (
    <div class="check-score">
      <div class="check-head">
        <div>
          <h1>{name}</h1>
          <p class="quiet">
            {say.score.form(
              kindNames[record.form.kind],
              dayName(record.day, today()),
              formName(record.form),
            )}
          </p>
        </div>
        <button type="button" class="button next not-printed" onClick={() => openCheck(null)}>
          {say.score.checkAnotherChild}
        </button>
      </div>
      <Figures record={record} score={score} />
      <Compared record={record} score={score} />
      <SkippedRows record={record} />
      <PracticeNote />
      <div class="check-columns">
        <section class="part" aria-labelledby="check-missed">
          <h2 id="check-missed">
            {score.missed.length === 0 ? say.score.allOfItRight : say.score.notRightYet}
          </h2>
          <Missed record={record} score={score} />
          <p class="check-acts not-printed">
            <button type="button" class="button" onClick={() => setMends(true)}>
              {say.score.fixAMark}
            </button>
            <a class="button plain" href={linkTo('pages', `child=${record.child}`)}>
              {say.score.aPage}
            </a>
            <button type="button" class="button plain" onClick={() => takeOut(record, name)}>
              {say.score.takeThisCheckOut}
            </button>
          </p>
        </section>
        <section class="part" aria-labelledby="check-earlier">
          <h2 id="check-earlier">{say.score.sChecks(name)}</h2>
          <EarlierChecks checks={checksOf(classState.value, record.child)} current={record.id} />
        </section>
      </div>
    </div>
  );
}

function Figures({ record, score }: { readonly record: CheckRecord; readonly score: CheckScore }) {
  const { form, ended } = record;
  const isWords = form.kind === 'nonsense-words';
  const [whole, rate] = figureNames[form.kind];
  const { asked, right, accuracy, soundsAsked, soundsRight } = score;
  const rates = ratesOf(record, score);
  return (
    <dl class="check-figures">
      <Figure name={whole}>
        {right} <small>{say.score.of(asked)}</small>
      </Figure>
      {isWords && (
        <Figure name={say.score.soundsReadRight}>
          {soundsRight} <small>{say.score.ofSounds(soundsAsked)}</small>
        </Figure>
      )}
      <Figure name={say.score.accuracy}>
        {accuracy === null ? '–' : `${Math.round(accuracy * 100)}%`}
      </Figure>
      {rates && (
        <>
          <Figure name={rate}>{rates.right}</Figure>
          {isWords && <Figure name={say.score.soundsAMinute}>{rates.sounds}</Figure>}
        </>
      )}
      <Figure name={say.score.fixedAlone}>{score.selfCorrected}</Figure>
      <Figure name={say.score.time}>
        {ended?.seconds == null ? say.score.noClock : `${Math.round(ended.seconds)} s`}
      </Figure>
    </dl>
  );
}

/** What is right as a whole, and how often in a minute, by the kind of check. */
const figureNames: Readonly<Record<CheckKind, readonly [whole: string, rate: string]>> = {
  'letter-sounds': [say.score.lettersReadRight, say.score.soundsAMinute],
  'nonsense-words': [say.score.wordsReadRight, say.score.wordsAMinute],
  'sight-words': [say.score.wordsReadRight, say.score.wordsAMinute],
};

/** The check beside the child's one before it of this kind, and what such a difference means. */
function Compared({ record, score }: { readonly record: CheckRecord; readonly score: CheckScore }) {
  const before = checkBefore(record);
  const compared = before && compareScores(record.form.kind, score, scoreOf(before));
  if (!before || !compared) return null;
  return (
    <p class="check-compared">
      <b>{say.score.beside(whenSaid(before.day, today()).replace(/^on /, ''))}</b>{' '}
      {comparisonSaid(compared)}
    </p>
  );
}

/** Which rows were skipped and how they count, where any was: handbooks disagree. */
function SkippedRows({ record }: { readonly record: CheckRecord }) {
  const { skippedRows = [], reached } = readingOf(record);
  const length = PER_ROW[record.form.kind];
  const rows = skippedRows
    .filter(({ from }) => from < reached)
    .map(({ from }) => from / length + 1);
  if (rows.length === 0) return null;
  const isOne = settings.value.skippedRow === 'one';
  const which =
    rows.length === 1 ? say.score.rowWas(rows[0] ?? 1) : say.score.rowsWere(rows.join(', '));
  return (
    <p class="check-skipped">
      {say.score.skipped(which, isOne ? say.score.aSkippedRowCounts : say.score.everyItem)}{' '}
      <button
        type="button"
        class="button plain not-printed"
        onClick={() => setSettings({ skippedRow: isOne ? 'each' : 'one' })}
      >
        {isOne ? say.score.countEveryItem : say.score.countASkippedRow}
      </button>
    </p>
  );
}

function Figure({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function Missed({ record, score }: { readonly record: CheckRecord; readonly score: CheckScore }) {
  if (score.asked === 0) return <p class="quiet">{say.score.nothingWasReadSo}</p>;
  if (score.missed.length === 0) return <p>{say.score.nothingWasMarkedTell}</p>;
  return (
    <ul class="check-missed" aria-label={say.score.whatWasMissed}>
      {score.missed.map(({ item, at }) => {
        const reading = record.marks.get(at);
        const broke = new Set(reading?.broke.map(({ card }) => item.cards[card - 1]));
        return (
          <li key={at}>
            <span class="little-row" role="img" aria-label={itemText(item)}>
              {shownPieces(item).map((piece, place) => (
                <span key={place} class={broke.has(piece.id) ? 'hurt' : undefined}>
                  <PieceCard piece={piece} />
                </span>
              ))}
            </span>
            <span class="quiet">{saidOf(reading)}</span>
          </li>
        );
      })}
    </ul>
  );
}

function saidOf(reading: ReturnType<CheckRecord['marks']['get']>): string {
  if (!reading || reading.outcome === 'right') return '';
  if (reading.outcome !== 'wrong') return outcomeNames[reading.outcome];
  const heard = reading.broke.flatMap((one) =>
    one.heard ? slipSaid(one.heard, soundStyle.value) : [],
  );
  return heard.length === 0 ? say.score.notSaidWhat : heard.join(', ');
}
