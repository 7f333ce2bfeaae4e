import type { ComponentChildren } from 'preact';
import { type Choices, choices, choose, KINDS, SOURCES } from './choices.ts';
import { PAPERS, RING_COUNTS, TURNS } from './engine.ts';

const kindNames: Readonly<Record<Choices['kind'], string>> = {
  index: 'Index cards, 3 × 5 in',
  half: 'Half sheets, for the whole group',
  desk: 'Small, for a desk',
  strips: 'Binder strips for a board',
};

const sourceNames: Readonly<Record<Choices['source'], string>> = {
  taught: 'All that was taught',
  newest: 'New this week',
  steps: 'Some steps',
  today: 'Today’s board',
  table: 'The board on the table',
  own: 'Only my own',
};

const stripSources: readonly Choices['source'][] = ['today', 'table'];

interface ChooseProps {
  /** How many steps the order has. */
  readonly steps: number;
}

/** All that she can choose; each choice shows at once in the preview. */
export function Choose({ steps }: ChooseProps) {
  const now = choices.value;
  const isStrips = now.kind === 'strips';
  const sources = isStrips ? stripSources : SOURCES;
  const source = sources.includes(now.source) ? now.source : 'today';
  return (
    <form class="print-choices" onSubmit={(event) => event.preventDefault()}>
      <Radios title="What" name="kind" options={KINDS} names={kindNames} now={now.kind} />
      <fieldset>
        <legend>
          <h2>Which cards</h2>
        </legend>
        <select
          aria-label="Which cards"
          value={source}
          onChange={(event) => choose({ source: event.currentTarget.value as Choices['source'] })}
        >
          {sources.map((each) => (
            <option key={each} value={each}>
              {sourceNames[each]}
            </option>
          ))}
        </select>
        {source === 'steps' && <Steps now={now} most={steps} />}
      </fieldset>
      {!isStrips && (
        <fieldset>
          <legend>
            <h2>My own</h2>
          </legend>
          <label class="own-text">
            <span>Words or letters, one to a line</span>
            <textarea
              rows={3}
              value={now.own}
              onInput={(event) => choose({ own: event.currentTarget.value })}
            />
          </label>
          <label class="own-blank">
            <span>Blank cards to write on</span>
            <input
              type="number"
              min={0}
              max={200}
              value={now.blank}
              onInput={(event) => choose({ blank: wholeIn(event.currentTarget.value, 0, 200) })}
            />
          </label>
        </fieldset>
      )}
      <Radios
        title="Paper"
        name="paper"
        inRow
        options={PAPERS}
        names={{ letter: 'US Letter', a4: 'A4' }}
        now={now.paper}
      >
        <Check name="grey" now={now.grey}>
          For a grey printer
        </Check>
      </Radios>
      {isStrips && (
        <Radios
          title="The binder has"
          name="rings"
          inRow
          options={RING_COUNTS}
          names={{ 2: '2 rings', 3: '3 rings', 4: '4 rings' }}
          now={now.rings}
        />
      )}
      <fieldset>
        <legend>
          <h2>On the cards</h2>
        </legend>
        <Check name="pictures" now={now.pictures}>
          Keyword with its picture
        </Check>
        <Check name="backs" now={now.backs}>
          On the back: sound, keyword, place, rule
        </Check>
        {now.backs && (
          <label class="turn">
            <span>My printer turns sheets along</span>
            <select
              value={now.turn}
              onChange={(event) => choose({ turn: event.currentTarget.value as Choices['turn'] })}
            >
              {TURNS.map((turn) => (
                <option key={turn} value={turn}>
                  the {turn} edge
                </option>
              ))}
            </select>
          </label>
        )}
      </fieldset>
    </form>
  );
}

function Steps({ now: { from, to }, most }: { readonly now: Choices; readonly most: number }) {
  return (
    <div class="span-of-steps">
      <StepField
        label="from step"
        value={from}
        most={most}
        set={(step) => choose({ from: step, to: Math.max(step, to) })}
      />
      <StepField
        label="to step"
        value={to}
        most={most}
        set={(step) => choose({ to: step, from: Math.min(step, from) })}
      />
    </div>
  );
}

interface RadiosProps<Option extends string | number> {
  readonly title: string;
  readonly name: keyof Choices;
  readonly options: readonly Option[];
  readonly names: Readonly<Record<Option, string>>;
  readonly now: Option;
  /** Short options stand beside each other. */
  readonly inRow?: boolean;
  readonly children?: ComponentChildren;
}

function Radios<Option extends string | number>(props: RadiosProps<Option>) {
  const { title, name, options, names, now, inRow, children } = props;
  return (
    <fieldset>
      <legend>
        <h2>{title}</h2>
      </legend>
      <div class={inRow ? 'in-row' : undefined}>
        {options.map((option) => (
          <label key={option} class="option">
            <input
              type="radio"
              name={`print-${name}`}
              checked={option === now}
              onChange={() => choose({ [name]: option })}
            />
            <span>{names[option]}</span>
          </label>
        ))}
      </div>
      {children}
    </fieldset>
  );
}

interface CheckProps {
  readonly name: 'pictures' | 'grey' | 'backs';
  readonly now: boolean;
  readonly children: string;
}

function Check({ name, now, children }: CheckProps) {
  return (
    <label class="option">
      <input
        type="checkbox"
        checked={now}
        onChange={(event) => choose({ [name]: event.currentTarget.checked })}
      />
      <span>{children}</span>
    </label>
  );
}

interface StepFieldProps {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  readonly set: (step: number) => void;
}

function StepField({ label, value, most, set }: StepFieldProps) {
  return (
    <label>
      <span>{label}</span>
      <input
        type="number"
        min={1}
        max={most}
        value={value}
        onChange={(event) => set(wholeIn(event.currentTarget.value, 1, most))}
      />
    </label>
  );
}

/** What was typed as a whole number from `least` to `most`; `least` when it is none. */
function wholeIn(text: string, least: number, most: number): number {
  const number = Math.round(Number(text));
  return Number.isFinite(number) ? Math.min(most, Math.max(least, number)) : least;
}
