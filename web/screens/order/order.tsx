import './order.css';
import { builtInHere } from '../../../core/sequence/order-here.ts';
import { makeSequenceCsv } from '../../../core/sequence/sequence-csv.ts';
import { saveText } from '../../device/save-text.ts';
import { accent } from '../../state/accent.ts';
import { earlierOrders } from '../../state/orders.ts';
import { hasOwnOrder, progress } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { Bring } from './bring.tsx';
import { Flex } from './flex.tsx';
import { MissingHabits } from './missing-habits.tsx';
import { replaceOrder } from './replace.ts';
import { StageRail } from './stage-rail.tsx';
import { StepList } from './step-list.tsx';
import { say } from './wording.ts';

/** The order of teaching: hers to rearrange, to bring along, to save, and to set back. */
export function Order() {
  const { sequence } = progress.value;
  return (
    <>
      <div class="order-head">
        <div>
          <h1>{say.order.theOrder}</h1>
          <p class="quiet">{say.order.stepsDragAStage(sequence.name, sequence.steps.length)}</p>
        </div>
        <p class="order-tools">
          <button
            type="button"
            class="button"
            onClick={() => saveText('sweepline-order.csv', makeSequenceCsv(sequence), 'text/csv')}
          >
            {say.order.saveAsAFile}
          </button>
          {hasOwnOrder.value && (
            <button
              type="button"
              class="button"
              onClick={() => replaceOrder(builtInHere(accent.peek()), say.order.backToTheBuilt)}
            >
              {say.order.backToTheBuiltInOrder}
            </button>
          )}
          <a class="button next" href={linkTo('learned')}>
            {say.order.done}
          </a>
        </p>
      </div>
      <Bring />
      <Earlier />
      <MissingHabits />
      <Flex />
      <div class="order-body">
        <StageRail onShow={showStep} />
        <StepList />
      </div>
    </>
  );
}

function showStep(number: number): void {
  document.getElementById(`order-step-${number}`)?.scrollIntoView({ block: 'start' });
}

function Earlier() {
  const earlier = earlierOrders.value;
  if (earlier.length === 0) return null;
  return (
    <details class="earlier-orders">
      <summary>{say.order.ordersYouHadBefore(earlier.length)}</summary>
      <ul>
        {earlier.map(({ kept, sequence }) => (
          <li key={`${kept} ${sequence.steps.length} ${sequence.name}`}>
            <span>{say.order.stepsUntil(sequence.name, sequence.steps.length, kept)}</span>
            <button
              type="button"
              class="button"
              onClick={() => replaceOrder(sequence, say.order.backTo(sequence.name))}
            >
              {say.order.takeItUpAgain}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
