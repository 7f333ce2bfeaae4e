import { effect } from '@preact/signals';
import { sharedAs } from './open-class.ts';
import { inStep, sharing } from './sharing.ts';

/**
 * From now on the open class is kept in step with her other devices, if it is shared. What speaks to a
 * network is fetched when a shared class is opened, and not before.
 */
export function keepInStep(): void {
  let turn = 0;
  effect(() => {
    const record = sharedAs.value;
    const own = ++turn;
    inStep.peek()?.stop();
    inStep.value = null;
    sharing.value = null;
    if (record === null) return;
    void import('./in-step.ts').then(({ beginInStep }) => {
      if (own !== turn) return;
      inStep.value = beginInStep(record, (now) => {
        if (own === turn) sharing.value = now;
      });
    });
  });
}
