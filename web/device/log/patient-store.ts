import type { EventStore, StoreFailure } from '../../../core/log/event-store.ts';
import { failureOf } from './store-error.ts';

/**
 * A store that always answers: a call that takes longer than so many milliseconds fails as `slow`. What it
 * had asked for may still be done later, which changes nothing when it is asked for again.
 */
export function withPatience(store: EventStore, milliseconds = PATIENCE): EventStore {
  return {
    append: (events, origin) => inTime(store.append(events, origin)),
    eventsOf: (classId) => inTime(store.eventsOf(classId)),
    classes: () => inTime(store.classes()),
    // To forget and to remove waits on purpose for other windows, which takes longer.
    forget: (classId) => inTime(store.forget(classId), 4 * milliseconds),
    remove: (classId, ids) => inTime(store.remove(classId, ids), 4 * milliseconds),
    recall: (classId) => inTime(store.recall(classId)),
    close: () => store.close(),
  };

  async function inTime<Answer>(
    asked: Promise<Answer>,
    limit = milliseconds,
  ): Promise<Answer | StoreFailure> {
    let late: ReturnType<typeof setTimeout> | undefined;
    const tooLate = new Promise<StoreFailure>((resolve) => {
      late = setTimeout(() => resolve(failureOf('slow')), limit);
    });
    const answer = await Promise.race([asked, tooLate]);
    clearTimeout(late);
    return answer;
  }
}

/** Twenty times what a year of a class takes to open on the slowest device tried. */
const PATIENCE = 6000;
