import type { ComponentChildren } from 'preact';
import { PAPERS } from '../../../print/paper.ts';
import { type Choices, choices, choose } from '../../state/paper/print-choices.ts';
import { say } from './wording.ts';

interface RadiosProps<Option extends string | number | boolean> {
  readonly title: string;
  readonly name: keyof Choices;
  readonly options: readonly (readonly [Option, string])[];
  /** Short options stand beside each other. */
  readonly inRow?: boolean;
  readonly children?: ComponentChildren;
}

/** One of a few, all of them seen. */
export function Radios<Option extends string | number | boolean>(props: RadiosProps<Option>) {
  const { title, name, options, inRow, children } = props;
  const now = choices.value[name];
  return (
    <fieldset>
      <legend>
        <h2>{title}</h2>
      </legend>
      <div class={inRow ? 'in-row' : undefined}>
        {options.map(([option, said]) => (
          <label key={said} class="option">
            <input
              type="radio"
              name={`print-${name}`}
              checked={option === now}
              onChange={() => choose({ [name]: option })}
            />
            <span>{said}</span>
          </label>
        ))}
      </div>
      {children}
    </fieldset>
  );
}

/** Which paper, and whether without colors. */
export function Paper() {
  return (
    <Radios
      title={say.fields.paper}
      name="paper"
      inRow
      options={PAPERS.map((paper) => [paper, paperNames[paper]])}
    >
      <Check name="grey">{say.fields.forAGrayPrinter}</Check>
    </Radios>
  );
}

const paperNames = { letter: say.fields.usLetter, a4: 'A4' } as const;

interface SelectProps<Option extends string> {
  readonly title: string;
  readonly options: readonly (readonly [Option, string])[];
  readonly now: Option;
  readonly set: (option: Option) => void;
  readonly children?: ComponentChildren;
}

/** One of many. */
export function Select<Option extends string>(props: SelectProps<Option>) {
  const { title, options, now, set, children } = props;
  return (
    <fieldset>
      <legend>
        <h2>{title}</h2>
      </legend>
      <select
        aria-label={title}
        value={now}
        onChange={(event) => set(event.currentTarget.value as Option)}
      >
        {options.map(([option, said]) => (
          <option key={option} value={option}>
            {said}
          </option>
        ))}
      </select>
      {children}
    </fieldset>
  );
}

interface CheckProps {
  readonly name: 'pictures' | 'grey' | 'backs';
  readonly children: string;
}

/** One thing, wanted or not. */
export function Check({ name, children }: CheckProps) {
  return (
    <label class="option">
      <input
        type="checkbox"
        checked={choices.value[name]}
        onChange={(event) => choose({ [name]: event.currentTarget.checked })}
      />
      <span>{children}</span>
    </label>
  );
}

interface WholeProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly set: (value: number) => void;
}

/** A whole number. */
export function Whole({ label, value, least, most, set }: WholeProps) {
  return (
    <label class="whole-number">
      <span>{label}</span>
      <input
        type="number"
        min={least}
        max={most}
        value={value}
        onChange={(event) => set(wholeIn(event.currentTarget.value, least, most))}
      />
    </label>
  );
}

/** What was typed as a whole number from `least` to `most`; `least` when it is none. */
function wholeIn(text: string, least: number, most: number): number {
  const number = Math.round(Number(text));
  return Number.isFinite(number) ? Math.min(most, Math.max(least, number)) : least;
}
