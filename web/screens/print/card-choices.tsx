import { RING_COUNTS } from '../../../print/binder.ts';
import { TURNS } from '../../../print/duplex.ts';
import { type Choices, choices, choose, SOURCES } from '../../state/paper/print-choices.ts';
import { Check, Paper, Radios, Select, Whole } from './fields.tsx';

const sourceNames: Readonly<Record<Choices['source'], string>> = {
  taught: 'All cards taught',
  sight: 'Words known by sight',
  newest: 'New this week',
  steps: 'Some steps',
  today: 'Today’s board',
  table: 'The board on the table',
  own: 'Only my own',
};

interface StepsProps {
  /** How many steps the order has. */
  readonly steps: number;
}

/** Which cards, and what is on them. */
export function CardChoices({ steps }: StepsProps) {
  const { source, own, blank } = choices.value;
  return (
    <>
      <Select
        title="Which cards"
        options={SOURCES.map((each) => [each, sourceNames[each]])}
        now={source}
        set={(next) => choose({ source: next })}
      >
        {source === 'steps' && <Steps steps={steps} />}
      </Select>
      <fieldset>
        <legend>
          <h2>My own</h2>
        </legend>
        <label class="own-text">
          <span>Words or letters, one to a line</span>
          <textarea
            rows={3}
            value={own}
            onInput={(event) => choose({ own: event.currentTarget.value })}
          />
        </label>
        <Whole
          label="Blank cards to write on"
          value={blank}
          least={0}
          most={200}
          set={(count) => choose({ blank: count })}
        />
      </fieldset>
      <Paper />
      <OnCards />
    </>
  );
}

/** Which board, for which binder. */
export function StripChoices() {
  return (
    <>
      <WhichBoard />
      <Paper />
      <Radios
        title="The binder has"
        name="rings"
        inRow
        options={RING_COUNTS.map((count) => [count, `${count} rings`])}
      />
      <OnCards />
    </>
  );
}

/** Today's board or the one on the table. */
export function WhichBoard() {
  return (
    <Select
      title="Which board"
      options={(['today', 'table'] as const).map((each) => [each, sourceNames[each]])}
      now={choices.value.source === 'table' ? 'table' : 'today'}
      set={(source) => choose({ source })}
    />
  );
}

function Steps({ steps }: StepsProps) {
  const { from, to } = choices.value;
  return (
    <div class="span-of-steps">
      <Whole
        label="from step"
        value={from}
        least={1}
        most={steps}
        set={(step) => choose({ from: step, to: Math.max(step, to) })}
      />
      <Whole
        label="to step"
        value={to}
        least={1}
        most={steps}
        set={(step) => choose({ to: step, from: Math.min(step, from) })}
      />
    </div>
  );
}

function OnCards() {
  const { backs, turn } = choices.value;
  return (
    <fieldset>
      <legend>
        <h2>On the cards</h2>
      </legend>
      <Check name="pictures">Keyword with its picture</Check>
      <Check name="backs">
        On the back: sound, keyword, place, words, rule and step; of a word, what to learn by heart
      </Check>
      {backs && (
        <label class="turn-of-sheet">
          <span>My printer turns sheets along</span>
          <select
            value={turn}
            onChange={(event) => choose({ turn: event.currentTarget.value as Choices['turn'] })}
          >
            {TURNS.map((each) => (
              <option key={each} value={each}>
                the {each} edge
              </option>
            ))}
          </select>
        </label>
      )}
    </fieldset>
  );
}
