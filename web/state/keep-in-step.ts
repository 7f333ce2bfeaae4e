import { effect } from '@preact/signals';
import { sharedAs, store } from './open-class.ts';
import { inStep, sharing } from './sharing.ts';

/**
 * From now on the open class is kept in step with her other devices, if it is shared, and the other shared
 * classes are brought up to date now and then. What speaks to a network is fetched when there is a shared
 * class, and not before.
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
  setTimeout(async () => {
    const all = await store.shared.all().catch(() => []);
    if (all.length > 0) void (await import('./visit-classes.ts')).visitClasses();
  }, VISIT_AFTER);
}

/** The app has been open for so long before the classes that are not open are looked after, in milliseconds. */
const VISIT_AFTER = 10_000;
