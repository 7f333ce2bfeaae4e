import { useMemo, useRef, useState } from 'preact/hooks';
import { object, string } from 'valibot';
import { type CsvProblem, parseSequenceCsv } from '../../../core/sequence/sequence-csv.ts';
import { remembered } from '../../device/remembered.ts';
import { replaceOrder } from './replace.ts';

const OWN = 'Our own order';

/** Far longer than any order, in signs; a longer text is kept as it is and not read. */
const LONGEST = 200_000;
/** Problems shown; nobody mends more at a time. */
const MOST_SHOWN = 40;

/** What she typed or chose; remembered, since an order may take an hour to type. */
const typed = remembered('order-typed', object({ text: string(), name: string() }), {
  text: '',
  name: OWN,
});

/** Bring her own order: paste it or choose a file; see at once what was understood. */
export function Bring() {
  const { text, name } = typed.value;
  const [isBegun] = useState(text !== '');
  const [unreadable, setUnreadable] = useState<string>();
  const file = useRef<HTMLInputElement>(null);
  const isLong = text.length > LONGEST;
  const read = useMemo(
    () => (text.trim() === '' || isLong ? null : parseSequenceCsv(text, name)),
    [text, name, isLong],
  );

  const onFile = async () => {
    const chosen = file.current?.files?.[0];
    if (!chosen) return;
    try {
      typed.value = {
        text: await chosen.text(),
        name: chosen.name.replace(/\.[a-z]+$/i, '') || OWN,
      };
      setUnreadable(undefined);
    } catch {
      setUnreadable(
        `“${chosen.name}” could not be read. Open it, copy its lines and paste them here.`,
      );
    }
  };

  return (
    <details class="bring" open={isBegun}>
      <summary>Bring your own order</summary>
      <p class="quiet">
        One step a line: what it teaches, with spaces between (m a s, sh, ea=EH, word:said). From a
        spreadsheet, name the columns step, stage, grade, title and items; items alone will do.
      </p>
      <label>
        <span class="for-ears">Your order, one step a line</span>
        <textarea
          rows={7}
          spellcheck={false}
          placeholder={'m\na\ns word:I\nt word:the'}
          value={text}
          onInput={(event) => {
            typed.value = { name, text: event.currentTarget.value };
          }}
        />
      </label>
      <p class="bring-tools">
        <label class="button">
          Choose a file
          <input
            ref={file}
            class="for-ears"
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={onFile}
          />
        </label>
        <button
          type="button"
          class="button next"
          disabled={!read || read.sequence.steps.length === 0}
          onClick={() => {
            if (read) replaceOrder(read.sequence, `Now in the order of ${name}.`);
          }}
        >
          {read ? `Use these ${read.sequence.steps.length} steps` : 'Use this order'}
        </button>
      </p>
      <div role="status">
        {unreadable && <p class="problem">{unreadable}</p>}
        {isLong && (
          <p class="problem">
            This is far longer than an order, so it was not read. Take out what is no part of it.
          </p>
        )}
        {read && <Understood steps={read.sequence.steps.length} problems={read.problems} />}
      </div>
    </details>
  );
}

function Understood({
  steps,
  problems,
}: {
  readonly steps: number;
  readonly problems: readonly CsvProblem[];
}) {
  return (
    <>
      <p>
        {steps === 1 ? '1 step' : `${steps} steps`} understood
        {problems.length === 0
          ? '.'
          : `; ${problems.length === 1 ? 'one thing' : `${problems.length} things`} to look at. Mend it above, or go on with the good lines.`}
      </p>
      <ol class="problems" aria-label="To look at">
        {problems.slice(0, MOST_SHOWN).map(({ line, text, code, message, mend }, place) => (
          <li key={`${line} ${code} ${place}`}>
            <b>Line {line}</b> <q>{shortened(text.trim())}</q>
            <p>{message}</p>
            <p class="quiet">{mend}</p>
          </li>
        ))}
      </ol>
      {problems.length > MOST_SHOWN && (
        <p class="quiet">and {(problems.length - MOST_SHOWN).toLocaleString('en-US')} more</p>
      )}
    </>
  );
}

function shortened(text: string): string {
  return text.length > 160 ? `${text.slice(0, 160)} …` : text;
}
