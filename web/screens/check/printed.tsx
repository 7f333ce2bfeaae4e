import { soundStyle } from '../../state/accent.ts';
import './printed.css';
import { type CheckForm, rowsOf } from '../../../core/checks/check-form.ts';
import { PracticeNote } from '../../controls/check-note.tsx';
import { today } from '../../state/day.ts';
import { acceptedSaid, formName, itemText, kindNames } from '../../wording/check-names.ts';
import { dayName } from '../../wording/day-name.ts';

interface PrintedProps {
  readonly form: CheckForm;
  readonly name: string;
  readonly timed: boolean;
}

/** For paper only: the child's page, and the teacher's to score on. */
export function PrintedForm({ form, name, timed }: PrintedProps) {
  const rows = rowsOf(form);
  const foot = `${kindNames[form.kind]} · form ${formName(form)}`;
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
            form {formName(form)} · {dayName(today(), today())} ·{' '}
            {timed ? 'one minute' : 'no clock'}
          </p>
        </header>
        <p>
          Cross out each letter that was wrong and write what you heard above it. A plus <b>+</b>{' '}
          above what the child fixed alone (it counts as right), an <b>h</b> for helped above what
          you said after three seconds (it counts as wrong). Draw a line after the last one read.
        </p>
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
          <span>Right</span>
          <span class="blank" />
          <span>of</span>
          <span class="blank" />
          <span>Sounds right</span>
          <span class="blank" />
          <span>Seconds</span>
          <span class="blank" />
        </p>
        <PracticeNote />
      </div>
    </div>
  );
}
