import './year.css';
import { useState } from 'preact/hooks';
import { openStandards } from '../../../core/ahead/open-standards.ts';
import { paceOf, type StandAhead, standAhead } from '../../../core/ahead/year.ts';
import { daySaid } from '../../../core/facts/day-said.ts';
import { type Day, makeDay, parseDay } from '../../../core/learners/day.ts';
import type { DaysOff } from '../../../core/log/class-calendar.ts';
import { standingHistory } from '../../../core/log/standing-history.ts';
import { today as dayAt } from '../../state/day.ts';
import { modelDay } from '../../state/knowledge.ts';
import { lookAheadTo } from '../../state/look-ahead.ts';
import { classState, group } from '../../state/open-class.ts';
import { progress, progressAt } from '../../state/progress.ts';
import { isSchool, setDaysOff } from '../../state/school-days.ts';
import { say } from './wording.ts';

/** Where the group at work will stand at this pace, with its range, and what of the grade's standards is open then. */
export function Year() {
  const { sequence, upTo } = progress.value;
  const today = modelDay();
  const stood = standingHistory(classState.value, group.value.id).map(({ at, standing }) => ({
    day: parseDay(dayAt(new Date(at))) ?? today,
    step: progressAt(standing).upTo,
  }));
  const pace = paceOf(stood, today, isSchool.value);
  const until = Math.max(today + 1, parseDay(lookAheadTo.value.until) ?? nextJune(today));
  return (
    <section class="part year" aria-labelledby="group-year">
      <h3 id="group-year">{say.year.theYear}</h3>
      {pace === null ? (
        <p class="quiet">{say.year.thePaceShowsAfter}</p>
      ) : (
        <Ahead
          all={standAhead(
            pace,
            { day: today, step: upTo },
            daysUpTo(today, until),
            sequence.steps.length,
            isSchool.value,
          )}
          from={upTo}
          said={say.year.stepsInSchoolDays(pace.steps, pace.days)}
        />
      )}
      <Calendar until={until} />
    </section>
  );
}

function Ahead({
  all,
  from,
  said,
}: {
  readonly all: readonly StandAhead[];
  readonly from: number;
  readonly said: string;
}) {
  const { sequence } = progress.value;
  const end = all.at(-1);
  if (end === undefined) return null;
  const grade = sequence.steps[Math.max(0, from - 1)]?.grade ?? 'K';
  const open = openStandards(sequence, grade, end.step);
  return (
    <>
      <p>
        {say.year.atThisPace(
          said,
          <b>{say.year.step(end.step)}</b>,
          end.low,
          end.high,
          daySaid(end.day),
        )}
      </p>
      <Picture all={all} from={from} />
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{say.year.by}</th>
            <th scope="col">{say.year.stepAlone}</th>
            <th scope="col">{say.year.likelyRange}</th>
          </tr>
        </thead>
        <tbody>
          {all.map(({ day, step, low, high }) => (
            <tr key={day}>
              <th scope="row">{daySaid(day)}</th>
              <td>{step}</td>
              <td>
                {low}–{high}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {open.length === 0
          ? say.year.atStepNothing(end.step, grade)
          : say.year.atStepStandards(
              end.step,
              open.length,
              grade,
              open.map(({ code, steps }) => `${code} (${say.year.steps(steps.length)})`).join(', '),
            )}
      </p>
    </>
  );
}

const WIDE = 320;
const HIGH = 90;

/** The way ahead as a line in its range; the table beside it has the numbers. */
function Picture({ all, from }: { readonly all: readonly StandAhead[]; readonly from: number }) {
  const top = Math.max(from + 1, ...all.map(({ high }) => high));
  const x = (at: number) => (WIDE * at) / all.length;
  const y = (step: number) => HIGH - (HIGH * (step - from)) / (top - from);
  const line = (of: (one: StandAhead) => number) =>
    all.map((one, at) => `${x(at + 1)} ${y(of(one))}`);
  const low = line((one) => one.low);
  const high = line((one) => one.high);
  return (
    <svg class="year-picture" viewBox={`-3 -3 ${WIDE + 6} ${HIGH + 6}`} aria-hidden="true">
      <path class="year-range" d={`M0 ${HIGH}L${high.join('L')}L${low.toReversed().join('L')}Z`} />
      <path class="year-line" d={`M0 ${HIGH}L${line((one) => one.step).join('L')}`} />
    </svg>
  );
}

/** Days without school, and the day that is looked ahead to. */
function Calendar({ until }: { readonly until: Day }) {
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const { off } = classState.value.calendar;
  const first = parseDay(from);
  const last = parseDay(to === '' ? from : to);
  return (
    <details>
      <summary>{say.year.schoolDaysNoWeekends(off.length)}</summary>
      <p class="quiet small">{say.year.whenACard}</p>
      <p class="year-fields">
        <label>
          {say.year.lookAheadTo}{' '}
          <input
            type="date"
            value={makeDay(until)}
            onChange={(event) => {
              lookAheadTo.value = { ...lookAheadTo.peek(), until: event.currentTarget.value };
            }}
          />
        </label>
      </p>
      <ul>
        {off.map((days) => (
          <li key={`${days.first} ${days.last}`}>
            {offSaid(days)}{' '}
            <button type="button" class="button plain" onClick={() => setDaysOff(days, false)}>
              {say.year.takeOut}
            </button>
          </li>
        ))}
      </ul>
      <p class="year-fields">
        <label>
          {say.year.noSchoolFrom}{' '}
          <input type="date" value={from} onInput={(event) => setFrom(event.currentTarget.value)} />
        </label>
        <label>
          {say.year.to}{' '}
          <input type="date" value={to} onInput={(event) => setTo(event.currentTarget.value)} />
        </label>
        <button
          type="button"
          class="button"
          disabled={first === null || last === null || last < first}
          onClick={() => {
            if (first === null || last === null) return;
            setDaysOff({ first: makeDay(first), last: makeDay(last) }, true);
            setFrom('');
            setTo('');
          }}
        >
          {say.year.add}
        </button>
      </p>
    </details>
  );
}

/** `December 21 to January 1`; a single day alone. */
function offSaid({ first, last }: DaysOff): string {
  const said = [first, ...(last > first ? [last] : [])].map((day) => daySaid(parseDay(day) ?? 0));
  return said.join(say.year.until);
}

/** Up to six days at even distances, the last one the day itself. */
function daysUpTo(today: Day, until: Day): readonly Day[] {
  const count = Math.min(6, until - today);
  return Array.from({ length: count }, (_, at) =>
    Math.round(today + ((until - today) * (at + 1)) / count),
  );
}

/** A school year often ends about then (common practice, no source). */
function nextJune(today: Day): Day {
  const year = Number(makeDay(today).slice(0, 4));
  const june = parseDay(`${year}-06-12`) as Day;
  return june > today ? june : (parseDay(`${year + 1}-06-12`) as Day);
}
