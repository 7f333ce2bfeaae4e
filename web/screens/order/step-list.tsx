import { useLayoutEffect, useRef } from 'preact/hooks';
import { itemKey } from '../../../core/sequence/item.ts';
import { beginStageAt, moveStepOf } from '../../../core/sequence/reorder.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { dragged, useDrag } from '../../controls/drag.ts';
import { progress } from '../../state/progress.ts';
import { ItemsShown } from './item-shown.tsx';
import { NameStage } from './name-stage.tsx';
import { rearrange } from './rearrange.ts';
import { say } from './wording.ts';

/** Every step on a line of its own, to be dragged or moved with its two buttons; a stage can begin with any. */
export function StepList() {
  const now = progress.value;
  const { sequence, upTo } = now;
  const list = useDrag<HTMLOListElement>((what, at) => {
    const step = sequence.steps[Number(what) - 1];
    if (step && what !== at) move(step, Number(at));
  });
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
  }, [sequence, list]);

  const move = (step: Step, to: number) => {
    moved.current = { number: to, way: to < step.number ? 'up' : 'down' };
    const next = moveStepOf(now, step.number, to);
    rearrange(next, say.stepList.movedStepTo(step.number, to, stays(step.number, to, upTo)));
  };

  return (
    <ol class="step-list" aria-label={say.stepList.steps} ref={list}>
      {sequence.steps.map((step) => (
        <li
          key={keyOf(step)}
          id={`order-step-${step.number}`}
          data-drag={String(step.number)}
          data-drop={String(step.number)}
          class={`${step.number <= upTo ? '' : 'untaught'} ${landsAt(step.number)}`}
        >
          <span class="step-grip quiet">
            <span class="grip" aria-hidden="true" />
            {step.number}
          </span>
          <ItemsShown items={step.items} />
          <span class="step-why">
            {step.title}
            <span class="quiet small"> {step.stage}</span>
            {step.number > 1 && sequence.steps[step.number - 2]?.stage === step.stage && (
              <NameStage
                opens={say.stepList.newStageHere}
                about={say.stepList.step(step.number, step.title)}
                begins=""
                onName={(name) =>
                  rearrange(
                    beginStageAt(now, step.number, name),
                    say.stepList.theStageBegins(name, step.number),
                  )
                }
              />
            )}
          </span>
          <span class="moves">
            <button
              type="button"
              data-way="up"
              disabled={step.number === 1}
              aria-label={say.stepList.moveStepUp(step.number, step.title)}
              onClick={() => move(step, step.number - 1)}
            >
              ↑
            </button>
            <button
              type="button"
              data-way="down"
              disabled={step.number === sequence.steps.length}
              aria-label={say.stepList.moveStepDown(step.number, step.title)}
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

/** The line where a dragged step would land: above or below the one under it. */
function landsAt(number: number): string {
  const now = dragged.value;
  if (!now || now.over !== String(number) || now.what === String(number)) return '';
  return Number(now.what) > number ? 'lands-above' : 'lands-below';
}

/** What becomes of a step that was moved across the line; nothing of one that was not. */
function stays(from: number, to: number, upTo: number): string {
  if (from > upTo && to <= upTo) return say.stepList.yourClassHasNot;
  return from <= upTo && to > upTo ? say.stepList.yourClassKnows : '';
}

/** A step keeps its element when it moves, so that nothing flickers and the focus stays. */
function keyOf(step: Step): string {
  return step.items.map(itemKey).join(' ');
}
