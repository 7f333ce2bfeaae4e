import { useLayoutEffect, useRef } from 'preact/hooks';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { itemKey } from '../../../core/sequence/item.ts';
import { moveStepOf } from '../../../core/sequence/progress.ts';
import type { Item, Step } from '../../../core/sequence/sequence.ts';
import { Card } from '../../controls/card.tsx';
import { progress, setProgress } from '../../state/progress.ts';
import { itemName, itemShort } from '../../wording/card-name.ts';

/** Every step on a line of its own, with the two buttons that move it. */
export function StepList() {
  const now = progress.value;
  const { sequence, upTo } = now;
  const list = useRef<HTMLOListElement>(null);
  const moved = useRef<{ readonly number: number; readonly way: string }>(undefined);

  useLayoutEffect(() => {
    const last = moved.current;
    moved.current = undefined;
    if (!last) return;
    const row = list.current?.children[last.number - 1];
    const same = row?.querySelector<HTMLButtonElement>(`.${last.way}:not([disabled])`);
    const button = same ?? row?.querySelector<HTMLButtonElement>('button:not([disabled])');
    button?.focus();
    row?.scrollIntoView({ block: 'nearest' });
  }, [sequence]);

  const move = (step: Step, to: number) => {
    moved.current = { number: to, way: to < step.number ? 'up' : 'down' };
    const next = moveStepOf(now, step.number, to);
    const name = sequence === SEQUENCE ? 'Our own order' : sequence.name;
    setProgress(
      { ...next, sequence: { ...next.sequence, name } },
      `Moved step ${step.number} to ${to}.`,
    );
  };

  return (
    <ol class="step-list" aria-label="Steps" ref={list}>
      {sequence.steps.map((step) => (
        <li key={keyOf(step)} class={step.number <= upTo ? '' : 'untaught'}>
          <span class="quiet step-number">{step.number}</span>
          <span class="step-items">
            {step.items.map((item) => (
              <ItemShown key={itemKey(item)} item={item} />
            ))}
          </span>
          <span class="step-why">
            {step.title}
            <span class="quiet small"> {step.stage}</span>
          </span>
          <span class="moves">
            <button
              type="button"
              class="up"
              disabled={step.number === 1}
              aria-label={`Move step ${step.number}, ${step.title}, up`}
              onClick={() => move(step, step.number - 1)}
            >
              ↑
            </button>
            <button
              type="button"
              class="down"
              disabled={step.number === sequence.steps.length}
              aria-label={`Move step ${step.number}, ${step.title}, down`}
              onClick={() => move(step, step.number + 1)}
            >
              ↓
            </button>
          </span>
        </li>
      ))}
    </ol>
  );
}

function ItemShown({ item }: { readonly item: Item }) {
  if (item.kind !== 'card') return <span class="step-word">{itemShort(item)}</span>;
  return (
    <span role="img" aria-label={itemName(item)}>
      <Card id={item.id} />
    </span>
  );
}

/** A step keeps its element when it moves, so that nothing flickers and the focus stays. */
function keyOf(step: Step): string {
  return step.items.map(itemKey).join(' ');
}
