import { RING_COUNTS } from '../../../print/binder.ts';
import { TURNS } from '../../../print/duplex.ts';
import { type Choices, choices, choose, SOURCES } from '../../state/paper/print-choices.ts';
import { Check, Paper, Radios, Select, Whole } from './fields.tsx';
import { say } from './wording.ts';

const sourceNames: Readonly<Record<Choices['source'], string>> = {
  taught: say.cardChoices.allCardsTaught,
  sight: say.cardChoices.wordsKnownBySight,
  newest: say.cardChoices.newThisWeek,
  steps: say.cardChoices.someSteps,
  today: say.cardChoices.todaysBoard,
  table: say.cardChoices.theBoard,
  own: say.cardChoices.onlyMyOwn,
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
        title={say.cardChoices.whichCards}
        options={SOURCES.map((each) => [each, sourceNames[each]])}
        now={source}
        set={(next) => choose({ source: next })}
      >
        {source === 'steps' && <Steps steps={steps} />}
      </Select>
      <fieldset>
        <legend>
          <h2>{say.cardChoices.myOwn}</h2>
        </legend>
        <label class="own-text">
          <span>{say.cardChoices.wordsOrLettersOne}</span>
          <textarea
            rows={3}
            value={own}
            onInput={(event) => choose({ own: event.currentTarget.value })}
          />
        </label>
        <Whole
          label={say.cardChoices.blankCardsToWrite}
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
        title={say.cardChoices.theBinderHas}
        name="rings"
        inRow
        options={RING_COUNTS.map((count) => [count, say.cardChoices.rings(count)])}
      />
      <OnCards />
    </>
  );
}

/** Today's board or the one on the table. */
export function WhichBoard() {
  return (
    <Select
      title={say.cardChoices.whichBoard}
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
        label={say.cardChoices.fromStep}
        value={from}
        least={1}
        most={steps}
        set={(step) => choose({ from: step, to: Math.max(step, to) })}
      />
      <Whole
        label={say.cardChoices.toStep}
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
        <h2>{say.cardChoices.onTheCards}</h2>
      </legend>
      <Check name="pictures">{say.cardChoices.keywordWithItsPicture}</Check>
      <Check name="backs">{say.cardChoices.onTheBackSound}</Check>
      {backs && (
        <label class="turn-of-sheet">
          <span>{say.cardChoices.myPrinterTurnsSheets}</span>
          <select
            value={turn}
            onChange={(event) => choose({ turn: event.currentTarget.value as Choices['turn'] })}
          >
            {TURNS.map((each) => (
              <option key={each} value={each}>
                {say.cardChoices.theEdge(each)}
              </option>
            ))}
          </select>
        </label>
      )}
    </fieldset>
  );
}
