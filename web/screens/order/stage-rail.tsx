import { useLayoutEffect, useRef } from 'preact/hooks';
import { lettersShown } from '../../../core/language/card-id.ts';
import { itemKey } from '../../../core/sequence/item.ts';
import { moveStageOf, renameStageOf, stagesOf } from '../../../core/sequence/reorder.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { dragged, useDrag } from '../../controls/drag.ts';
import { progress } from '../../state/progress.ts';
import { NameStage } from './name-stage.tsx';
import { rearrange } from './rearrange.ts';
import { say } from './wording.ts';

/** The stages in their order, to be dragged or moved with Alt and an arrow; a press shows a stage's steps. */
export function StageRail({ onShow }: { readonly onShow: (firstStep: number) => void }) {
  const now = progress.value;
  const runs = stagesOf(now.sequence.steps);
  const moved = useRef<number>(undefined);
  const move = (from: number, to: number) => {
    const next = moveStageOf(now, from, to);
    if (next === now) return;
    moved.current = to;
    rearrange(next, say.stageRail.movedWhatYourClass(runs[from]?.stage || say.stageRail.aStage));
  };
  const root = useDrag<HTMLOListElement>((what, at) => move(Number(what), Number(at)));
  useLayoutEffect(() => {
    if (moved.current === undefined) return;
    root.current?.children[moved.current]?.querySelector('button')?.focus();
    moved.current = undefined;
  }, [now.sequence, root]);
  if (runs.length < 2) return null;
  return (
    <ol class="stage-rail" ref={root} aria-label={say.stageRail.stages}>
      {runs.map(({ stage, steps }, place) => (
        <li
          key={steps[0]?.items.map(itemKey).join(' ')}
          data-drag={String(place)}
          data-drop={String(place)}
          class={`rail-stage ${dropSide(place)}`}
        >
          <button
            type="button"
            title={say.stageRail.dragOrAlt}
            onClick={() => onShow(steps[0]?.number ?? 1)}
            onKeyDown={(event) => {
              if (!event.altKey || !/^Arrow(Up|Down)$/.test(event.key)) return;
              event.preventDefault();
              move(place, place + (event.key === 'ArrowUp' ? -1 : 1));
            }}
          >
            <span class="grip" aria-hidden="true" />
            <span class="rail-name">
              <b>{stage || say.stageRail.noStage}</b>
              <span class="quiet small">{lettersOf(steps)}</span>
            </span>
            <span class="quiet small">
              {steps.length} {steps.length === 1 ? say.stageRail.step : say.stageRail.steps}
            </span>
          </button>
          <NameStage
            opens={say.stageRail.rename}
            about={stage || say.stageRail.noStage}
            begins={stage}
            onName={(name) =>
              rearrange(renameStageOf(now, place, name), say.stageRail.theStageIsNow(name))
            }
          />
        </li>
      ))}
    </ol>
  );
}

/** The line where a dragged stage would land: above or below the one under it. */
function dropSide(place: number): string {
  const now = dragged.value;
  if (!now || now.over !== String(place) || now.what === String(place)) return '';
  return Number(now.what) > place ? 'lands-above' : 'lands-below';
}

function lettersOf(steps: readonly Step[]): string {
  const letters = steps.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'card' ? [lettersShown(item.id)] : [])),
  );
  const some = [...new Set(letters)];
  return some.length > 7 ? `${some.slice(0, 7).join(' ')} …` : some.join(' ');
}
