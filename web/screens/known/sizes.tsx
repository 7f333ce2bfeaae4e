import { useState } from 'preact/hooks';
import { MOST_CHILDREN, MOST_GROUPS, setSizes, sizes } from './suggestion.ts';
import { say } from './wording.ts';

/** How many groups, and how many children each takes at most. */
export function Sizes() {
  const now = sizes();
  return (
    <fieldset class="sizes">
      <legend class="for-ears">{say.sizes.howManyGroups}</legend>
      <label>
        {say.sizes.groups}{' '}
        <select
          value={now.length}
          onChange={(event) => {
            const count = Number(event.currentTarget.value);
            const children = now.reduce((sum, size) => sum + size, 0);
            setSizes(Array.from({ length: count }, () => Math.ceil(children / count)));
          }}
        >
          {Array.from({ length: MOST_GROUPS }, (_, at) => (
            <option key={at} value={at + 1}>
              {at + 1}
            </option>
          ))}
        </select>
      </label>
      {now.map((size, at) => (
        <Size
          key={`${at} ${size}`}
          at={at}
          size={size}
          onSize={(next) => setSizes(now.with(at, next))}
        />
      ))}
    </fieldset>
  );
}

function Size({
  at,
  size,
  onSize,
}: {
  readonly at: number;
  readonly size: number;
  readonly onSize: (size: number) => void;
}) {
  const [text, setText] = useState(`${size}`);
  const isFit = /^\d+$/.test(text) && Number(text) >= 1 && Number(text) <= MOST_CHILDREN;
  return (
    <label>
      <span class={at === 0 ? undefined : 'for-ears'}>{say.sizes.atMost}</span>{' '}
      <span class="for-ears">{say.sizes.inGroup(at + 1)}</span>
      <input
        type="text"
        inputMode="numeric"
        size={2}
        value={text}
        aria-invalid={!isFit}
        onInput={(event) => setText(event.currentTarget.value)}
        onChange={() => {
          if (isFit) onSize(Number(text));
          else setText(`${size}`);
        }}
      />
    </label>
  );
}
