import { useMemo, useRef, useState } from 'preact/hooks';
import { array, object, optional, string } from 'valibot';
import { isHabit } from '../../../core/language/taught.ts';
import {
  type OrderDraft,
  readOrderPaced,
  writeInstead,
} from '../../../core/sequence/plain/read-order.ts';
import { makeVocabulary } from '../../../core/sequence/plain/vocabulary.ts';
import { type CsvProblem, parseSequenceCsv } from '../../../core/sequence/sequence-csv.ts';
import { PacedProgress, usePacedOutcome } from '../../controls/paced-outcome.tsx';
import { remembered } from '../../device/remembered.ts';
import { engine, readyEngine } from '../../state/engine-ready.ts';
import { ReadBack } from './read-back.tsx';
import { replaceOrder } from './replace.ts';
import { say } from './wording.ts';

const OWN = say.bring.ourOwnOrder;

/** Far longer than any order, in signs; a longer text is kept as it is and not read. */
const LONGEST = 200_000;
/** A longer one is read piece by piece. */
const LONG = 10_000;
/** No order has so many steps; more would be pages that nobody can look over. */
const MOST_STEPS = 1000;

/** What she typed or chose; remembered, since an order may take an hour to type. */
const typed = remembered(
  'order-typed',
  object({ text: string(), name: string(), notYet: optional(array(string()), []) }),
  { text: '', name: OWN, notYet: [] },
);

/** Bring her own order: paste it or choose a file; see at once what was understood. */
export function Bring() {
  const { text, name, notYet } = typed.value;
  const [isBegun] = useState(text !== '');
  const [unreadable, setUnreadable] = useState<string>();
  const file = useRef<HTMLInputElement>(null);
  const lexicon = readyEngine()?.lexicon;
  const isLong = text.length > LONGEST;
  const isEmpty = text.trim() === '';
  const reading = usePacedOutcome(
    text.length > LONG,
    () =>
      isEmpty || isLong || !lexicon
        ? null
        : readOrderPaced(text, {
            name,
            vocabulary: makeVocabulary(lexicon),
            notYet: new Set(notYet),
          }),
    [text, name, notYet, isEmpty, isLong, lexicon],
  );
  const draft = reading.outcome;
  const problems = useMemo(() => (draft ? structureProblems(text) : []), [draft, text]);
  const count = draft?.sequence.steps.length ?? 0;

  const onFile = async () => {
    const chosen = file.current?.files?.[0];
    if (!chosen) return;
    try {
      typed.value = {
        text: await chosen.text(),
        name: chosen.name.replace(/\.[a-z]+$/i, '') || OWN,
        notYet: [],
      };
      setUnreadable(undefined);
    } catch {
      setUnreadable(say.bring.couldNotBeRead(chosen.name));
    }
  };

  return (
    <details class="bring" open={isBegun}>
      <summary>{say.bring.bringYourOwnOrder}</summary>
      <p class="quiet">{say.bring.oneStepALine}</p>
      <label>
        <span class="for-ears">{say.bring.yourOrderOneStep}</span>
        <textarea
          rows={7}
          spellcheck={false}
          placeholder={'m\na\ns – is\nt – the\nblends'}
          value={text}
          onInput={(event) => {
            typed.value = { name, notYet, text: event.currentTarget.value };
          }}
        />
      </label>
      <p class="bring-tools">
        <label class="button">
          {say.bring.chooseAFile}
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
          disabled={count === 0 || count > MOST_STEPS}
          onClick={() => {
            if (draft) replaceOrder(draft.sequence, say.bring.nowInTheOrder(name));
          }}
        >
          {count > 0 && count <= MOST_STEPS
            ? say.bring.useTheseSteps(count)
            : say.bring.useThisOrder}
        </button>
      </p>
      <div role="status">
        {unreadable && <p class="problem">{unreadable}</p>}
        {isLong && <p class="problem">{say.bring.thisIsFarLonger}</p>}
        {!isEmpty && !isLong && !lexicon && (
          <p class="quiet">
            {engine.value === 'failed' ? say.bring.theWordListDid : say.bring.readingYourLines}
          </p>
        )}
        {count > MOST_STEPS && (
          <p class="problem">{say.bring.theseAreStepsMore(count.toLocaleString('en-US'))}</p>
        )}
        {draft && <Counted draft={draft} />}
      </div>
      <PacedProgress
        of={reading}
        says={say.bring.readingYourLines}
        stopped={say.bring.stoppedYourLines}
      />
      <Problems problems={problems} />
      {draft && (
        <ReadBack
          draft={draft}
          onAnswer={(line, written, instead) => {
            typed.value = { name, notYet, text: writeInstead(text, line, written, instead) };
          }}
          onNotYet={(habit) => {
            typed.value = { name, text, notYet: [...notYet.filter(isHabit), habit] };
          }}
        />
      )}
    </details>
  );
}

/** How much is clear, in one sentence. */
function Counted({ draft }: { readonly draft: OrderDraft }) {
  const lines = draft.lines.filter(({ heading }) => !heading);
  const waiting = lines.filter(
    ({ pieces }) => pieces.length === 0 || pieces.some(({ kind }) => kind !== 'items'),
  );
  const count = draft.sequence.steps.length;
  return (
    <p class={waiting.length > 0 ? 'order-asks' : ''}>
      <b>
        {say.bring.ofClearUnderstood(
          lines.length - waiting.length,
          lines.length,
          lines.length === 1 ? say.bring.line : say.bring.lines,
          count === 1 ? say.bring.n1Step : say.bring.steps(count),
        )}
      </b>{' '}
      {waiting.length > 0 &&
        say.bring.forYouUntilThen(
          waiting.length === 1
            ? say.bring.lineWaits(waiting[0]?.line ?? 0)
            : say.bring.linesWait(waiting.length),
        )}
    </p>
  );
}

/** What is wrong with a table as a whole; what is wrong with its items is told line by line. */
function structureProblems(text: string): readonly CsvProblem[] {
  return parseSequenceCsv(text).problems.filter(({ code }) =>
    ['unknown-grade', 'steps-out-of-order', 'open-quote', 'no-items-column'].includes(code),
  );
}

function Problems({ problems }: { readonly problems: readonly CsvProblem[] }) {
  if (problems.length === 0) return null;
  return (
    <ol class="problems" aria-label={say.bring.toLookAt}>
      {problems.slice(0, MOST_SHOWN).map(({ line, code, message, mend }) => (
        <li key={`${line} ${code}`}>
          <b>{say.bring.lineNumber(line)}</b>
          <p>{message}</p>
          <p class="quiet">{mend}</p>
        </li>
      ))}
    </ol>
  );
}

/** Problems shown; nobody mends more at a time. */
const MOST_SHOWN = 40;
