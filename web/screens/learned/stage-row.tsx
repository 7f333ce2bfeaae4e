import './stage-row.css';
import { itemKey } from '../../../core/sequence/item.ts';
import type { Item, Step } from '../../../core/sequence/sequence.ts';
import { Card } from '../../controls/card.tsx';
import { itemName, itemShort } from '../../wording/card-name.ts';
import type { StageOfSteps } from './stages.ts';
import { say } from './wording.ts';

interface StageRowProps {
  readonly stage: StageOfSteps;
  readonly upTo: number;
  /** Keys of the single items that go against the line: added above it, taken out below it. */
  readonly singles: ReadonlySet<string>;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly onStep: (number: number) => void;
  readonly onItem: (item: Item, taughtNow: boolean) => void;
}

/** One stage: its name, and its steps as cards; or folded to a single quiet line. */
export function StageRow(props: StageRowProps) {
  const { stage, upTo, singles, open, onOpen } = props;
  const last = stage.steps.at(-1)?.number ?? 0;
  return (
    <section class={`stage-row ${open ? 'open' : 'folded'}`} aria-label={stage.name}>
      <h2>
        <button type="button" aria-expanded={open} onClick={onOpen}>
          <span class="fold" aria-hidden="true" />
          <span>
            {stage.name}
            <span class="grades">{stage.grades}</span>
          </span>
        </button>
      </h2>
      {open ? (
        <ol class="steps">
          {stage.steps.map((step) => (
            <StepCards key={step.number} step={step} {...props} />
          ))}
        </ol>
      ) : (
        <p class="folded-steps" data-step={last}>
          <span class="all">
            {stage.steps.flatMap((step) => step.items.map(itemShort)).join('  ')}
          </span>
          <span class="count">{countSaid(stage.steps, upTo, singles)}</span>
        </p>
      )}
    </section>
  );
}

function StepCards({
  step,
  upTo,
  singles,
  onStep,
  onItem,
}: StageRowProps & { readonly step: Step }) {
  const reached = step.number <= upTo;
  const cards = step.items.filter((item) => item.kind === 'card');
  const others = step.items.filter((item) => item.kind !== 'card');
  const toggle = (item: Item) => {
    const single = singles.has(itemKey(item));
    const taught = reached !== single;
    const state = single ? (taught ? ' added' : ' taken-out') : '';
    return (
      <button
        key={itemKey(item)}
        type="button"
        class={`toggle for-${item.kind}${taught ? '' : ' untaught not-yet'}${state}`}
        aria-pressed={taught}
        aria-label={`${itemName(item)}${single ? (taught ? say.stageRow.added : say.stageRow.takenOut) : ''}`}
        title={itemName(item)}
        onClick={() => onItem(item, !taught)}
      >
        {item.kind === 'card' ? <Card id={item.id} /> : itemShort(item)}
      </button>
    );
  };
  return (
    <li class="step" data-step={step.number}>
      <button
        type="button"
        class="step-number"
        aria-label={say.stageRow.taughtUpToStep(step.number, step.title)}
        aria-current={step.number === upTo ? 'step' : undefined}
        title={step.why || step.title}
        onClick={() => onStep(step.number)}
      >
        {step.number}
      </button>
      <div class="items">
        {cards.map(toggle)}
        {others.length > 0 && <div class="words">{others.map(toggle)}</div>}
      </div>
    </li>
  );
}

/** A step counts as taught above the line, unless all its cards were taken out. */
function countSaid(each: readonly Step[], upTo: number, singles: ReadonlySet<string>): string {
  const all = each.length;
  const isTaught = ({ number, items }: Step): boolean => {
    const spellings = items.filter(({ kind }) => kind !== 'word');
    const counted = spellings.length > 0 ? spellings : items;
    return number <= upTo && !counted.every((item) => singles.has(itemKey(item)));
  };
  const done = each.filter(isTaught).length;
  const steps = all === 1 ? say.stageRow.n1Step : say.stageRow.steps(all);
  if (done === 0) return say.stageRow.toCome(steps);
  return done === all ? say.stageRow.allTaught(steps) : say.stageRow.ofTaught(done, steps);
}
