import { useLayoutEffect, useRef } from 'preact/hooks';
import { itemKey } from '../../../core/sequence/item.ts';
import { moveStepOf } from '../../../core/sequence/reorder.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { progress } from '../../state/progress.ts';
import { ItemsShown } from './item-shown.tsx';
import { rearrange } from './rearrange.ts';

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
    const same = row?.querySelector<HTMLButtonElement>(`[data-way="${last.way}"]:not([disabled])`);
    const button = same ?? row?.querySelector<HTMLButtonElement>('button:not([disabled])');
    button?.focus();
    row?.scrollIntoView({ block: 'nearest' });
  }, [sequence]);

  const move = (step: Step, to: number) => {
    moved.current = { number: to, way: to < step.number ? 'up' : 'down' };
    const next = moveStepOf(now, step.number, to);
    rearrange(next, `Moved step ${step.number} to ${to}.${stays(step.number, to, upTo)}`);
  };

  return (
    <ol class="step-list" aria-label="Steps" ref={list}>
      {sequence.steps.map((step) => (
        <li
          key={keyOf(step)}
          id={`order-step-${step.number}`}
          class={step.number <= upTo ? '' : 'untaught'}
        >
          <span class="quiet">{step.number}</span>
          <ItemsShown items={step.items} />
          <span class="step-why">
            {step.title}
            <span class="quiet small"> {step.stage}</span>
          </span>
          <span class="moves">
            <button
              type="button"
              data-way="up"
              disabled={step.number === 1}
              aria-label={`Move step ${step.number}, ${step.title}, up`}
              onClick={() => move(step, step.number - 1)}
            >
              ↑
            </button>
            <button
              type="button"
              data-way="down"
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

/** What becomes of a step that was moved across the line; nothing of one that was not. */
function stays(from: number, to: number, upTo: number): string {
  if (from > upTo && to <= upTo) return ' Your class has not had it yet, and it stays so.';
  return from <= upTo && to > upTo ? ' Your class knows it, and it stays known.' : '';
}

/** A step keeps its element when it moves, so that nothing flickers and the focus stays. */
function keyOf(step: Step): string {
  return step.items.map(itemKey).join(' ');
}
