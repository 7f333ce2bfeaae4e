import { soundStyle } from '../../state/accent.ts';
import './printed.css';
import { type CheckForm, rowsOf } from '../../../core/checks/check-form.ts';
import { PracticeNote } from '../../controls/check-note.tsx';
import { today } from '../../state/day.ts';
import { acceptedSaid, formName, itemText, kindNames } from '../../wording/check-names.ts';
import { dayName } from '../../wording/day-name.ts';
import { say } from './wording.ts';

interface PrintedProps {
  readonly form: CheckForm;
  readonly name: string;
  readonly timed: boolean;
}

/** For paper only: the child's page, and the teacher's to score on. */
export function PrintedForm({ form, name, timed }: PrintedProps) {
  const rows = rowsOf(form);
  const foot = say.printed.form(kindNames[form.kind], formName(form));
  return (
    <div class={`printed-form of-${form.kind} only-printed`}>
      <div class="child-page">
        {rows.map((row) => (
          <p key={row[0]?.at} class="child-row">
            {row.map(({ item, at }) => (
              <span key={at}>{itemText(item)}</span>
            ))}
          </p>
        ))}
        <p class="printed-foot">{foot}</p>
      </div>
      <div class="scoring-page">
        <header>
          <h2>
            {kindNames[form.kind]}: {name}
          </h2>
          <p>
            {say.printed.onForm(
              formName(form),
              dayName(today(), today()),
              timed ? say.printed.oneMinute : say.printed.noClock,
            )}
          </p>
        </header>
        <p>{say.printed.crossOutEachLetter(<b>+</b>, <b>h</b>)}</p>
        <table>
          <tbody>
            {rows.map((row, number) => (
              <tr key={row[0]?.at}>
                <th scope="row">{number + 1}</th>
                {row.map(({ item, at }) => (
                  <td key={at}>
                    {itemText(item)}
                    <small>{acceptedSaid(item, soundStyle.value)}</small>
                  </td>
                ))}
                <td class="sum">/{row.length}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="totals">
          <span>{say.printed.right}</span>
          <span class="blank" />
          <span>{say.printed.of}</span>
          <span class="blank" />
          <span>{say.printed.soundsRight}</span>
          <span class="blank" />
          <span>{say.printed.seconds}</span>
          <span class="blank" />
        </p>
        <PracticeNote />
      </div>
    </div>
  );
}
