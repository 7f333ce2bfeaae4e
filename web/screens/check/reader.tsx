import './reader.css';
import { type CheckForm, rowsOf } from '../../../core/checks/check-form.ts';
import { useLook } from '../../controls/use-look.ts';
import { today } from '../../state/day.ts';
import { classState } from '../../state/open-class.ts';
import { itemText } from '../../wording/check-names.ts';
import { say } from './wording.ts';

/** The child's side: what is to be read and nothing else, from when the check begins until it ends. */
export function ReaderPage() {
  useLook();
  const now = [...classState.value.checks.values()].findLast(
    ({ ended, day }) => ended === null && day === today(),
  );
  return (
    <main class="reader-page">
      <h1 class="for-ears">{say.reader.whatToRead}</h1>
      {now ? <Rows form={now.form} /> : <Waiting />}
    </main>
  );
}

function Rows({ form }: { readonly form: CheckForm }) {
  return (
    <div class={`reader-rows of-${form.kind}`}>
      {rowsOf(form).map((row) => (
        <p key={row[0]?.at}>
          {row.map(({ item, at }) => (
            <span key={at}>{itemText(item)}</span>
          ))}
        </p>
      ))}
    </div>
  );
}

function Waiting() {
  return (
    <>
      <span class="reader-line" />
      <span class="for-ears" role="status">
        {say.reader.itBeginsSoon}
      </span>
    </>
  );
}
