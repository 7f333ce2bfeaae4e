import './learned.css';
import { useMemo, useRef, useState } from 'preact/hooks';
import { itemKey } from '../../../core/sequence/item.ts';
import { addItem, dropItem, type Progress, setStep } from '../../../core/sequence/progress.ts';
import type { Item } from '../../../core/sequence/sequence.ts';
import { groupKey } from '../../state/open-class.ts';
import { progress, setProgress, told } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { itemName, itemShort } from '../../wording/card-name.ts';
import { Foot } from './foot.tsx';
import { Gaps } from './gaps.tsx';
import { StageRow } from './stage-row.tsx';
import { stagesOf } from './stages.ts';
import { TaughtLine } from './taught-line.tsx';
import { Welcome } from './welcome.tsx';
import { say } from './wording.ts';

/** What have they learned? The order as cards, and the line that she moves down as she teaches. */
export function Learned() {
  return <LearnedBy key={groupKey.value} />;
}

/** One group's order, unfolded around its line. */
function LearnedBy() {
  const [preview, setPreview] = useState<number | null>(null);
  const now = preview === null ? progress.value : setStep(progress.value, preview);
  const { sequence, upTo } = now;
  const list = useRef<HTMLDivElement>(null);
  const stages = useMemo(() => stagesOf(sequence.steps), [sequence]);
  const here = stages.findIndex((stage) => stage.steps.some((step) => step.number > upTo));
  const [opened, setOpened] = useState<ReadonlyMap<number, boolean>>(() =>
    nearby(here, stages.length),
  );
  // It stays while she moves the line, so that nothing shifts under her hand.
  const [welcomed] = useState(!told.value);
  const holdsLine = (index: number) =>
    stages[index]?.steps.some((step) => step.number === upTo) === true;
  const isOpen = (index: number) => (opened.get(index) ?? false) || holdsLine(index);
  const allOpen = stages.every((_, index) => isOpen(index));

  const move = (number: number) => {
    if (number !== progress.peek().upTo)
      setProgress(setStep(progress.peek(), number), say.learned.taughtUpToStep(number));
  };

  return (
    <div class="learned">
      {welcomed && <Welcome />}
      <div class="learned-head">
        <div>
          <h1>{say.learned.whatHaveTheyLearned}</h1>
          <p class="quiet lead">{say.learned.moveTheLineDown}</p>
        </div>
        <p class="learned-tools">
          <button
            type="button"
            class="button plain"
            onClick={() => setOpened(new Map(stages.map((_, index) => [index, !allOpen])))}
          >
            {allOpen ? say.learned.foldTheStages : say.learned.openAllStages}
          </button>
          <a class="button plain" href={linkTo('order')}>
            {say.learned.editTheOrder}
          </a>
        </p>
      </div>
      <Foot />
      <Gaps />
      <div class="learned-list" ref={list}>
        <TaughtLine
          list={list}
          upTo={upTo}
          last={sequence.steps.length}
          stops={stages.map((stage) => stage.steps.at(-1)?.number ?? 0)}
          said={lineSaid(now)}
          layout={`${sequence.name} ${stages.map((_, index) => isOpen(index))}`}
          onPreview={setPreview}
          onMove={move}
        />
        {stages.map((stage, index) => (
          <StageRow
            key={`${stage.name} ${stage.steps[0]?.number}`}
            stage={stage}
            upTo={upTo}
            singles={singlesOf(now)}
            open={isOpen(index)}
            onOpen={() => setOpened(new Map([...opened, [index, !isOpen(index)]]))}
            onStep={move}
            onItem={toggleItem}
          />
        ))}
      </div>
    </div>
  );
}

function toggleItem(item: Item, taughtNow: boolean): void {
  const now = progress.peek();
  const next = taughtNow ? addItem(now, item) : dropItem(now, item);
  setProgress(
    next,
    taughtNow ? say.learned.added(itemShort(item)) : say.learned.tookOut(itemShort(item)),
  );
}

function singlesOf({ added, dropped, sequence, upTo }: Progress): ReadonlySet<string> {
  const reached = new Set(
    sequence.steps.flatMap((step) => (step.number <= upTo ? step.items.map(itemKey) : [])),
  );
  return new Set([
    ...added.map(itemKey).filter((key) => !reached.has(key)),
    ...dropped.map(itemKey).filter((key) => reached.has(key)),
  ]);
}

function lineSaid({ sequence, upTo }: Progress): string {
  const step = sequence.steps[upTo - 1];
  if (!step) return say.learned.nothingYet;
  return say.learned.stepOf(upTo, sequence.steps.length, step.items.map(itemName).join('; '));
}

function nearby(here: number, count: number): ReadonlyMap<number, boolean> {
  const center = here < 0 ? count - 1 : here;
  return new Map([center, center + 1].map((index): [number, boolean] => [index, true]));
}
