import type { ClassId } from '../core/ids.ts';
import type { Append, Appended, ClassStore } from './class-store.ts';

/** Takes appends one by one and has them kept together. */
export interface AppendQueue {
  /**
   * Resolves after the commit; null when the database could not be reached, to be asked again later. A full
   * disk is told as a full class is: the device keeps what it has.
   */
  append(append: Append): Promise<Appended | null>;
}

/** So many appends go into one commit at most. */
const MOST_TOGETHER = 100;

/**
 * Appends that come while a commit is under way go into the next one together: a disk that takes
 * milliseconds for each commit then keeps thousands of appends a second. `onGrown` is told after the
 * commit, never before.
 */
export function createAppendQueue(
  store: ClassStore,
  now: () => number,
  onGrown: (classIds: readonly ClassId[]) => void,
): AppendQueue {
  let waiting: { readonly append: Append; readonly answer: (value: Appended | null) => void }[] =
    [];
  let isBusy = false;
  return {
    append(append) {
      return new Promise((answer) => {
        waiting.push({ append, answer });
        if (!isBusy) void work();
      });
    },
  };

  async function work(): Promise<void> {
    isBusy = true;
    while (waiting.length > 0) {
      const batch = waiting.slice(0, MOST_TOGETHER);
      waiting = waiting.slice(MOST_TOGETHER);
      const done = await keep(batch.map(({ append }) => append));
      for (const [place, { answer }] of batch.entries()) answer(done?.outcomes[place] ?? null);
      if (done && done.grown.length > 0) onGrown(done.grown);
    }
    isBusy = false;
  }

  async function keep(appends: readonly Append[]) {
    try {
      return await store.appendAll(appends, now());
    } catch (error) {
      if (appends.length === 1) return alone(error);
    }
    // One of them may be what failed: each for itself.
    const outcomes: (Appended | null)[] = [];
    const grown: ClassId[] = [];
    for (const append of appends) {
      const done = await store.appendAll([append], now()).catch(alone);
      outcomes.push(done?.outcomes[0] ?? null);
      grown.push(...(done?.grown ?? []));
    }
    return { outcomes, grown };
  }
}

/** What is said to one append that failed with this. */
function alone(
  error: unknown,
): { outcomes: readonly Appended[]; grown: readonly ClassId[] } | null {
  return isFull(error) ? { outcomes: [{ refused: 'full', id: null }], grown: [] } : null;
}

/** Whether a database has no room: SQLite says so in words, PostgreSQL by a code (disk_full). */
function isFull(error: unknown): boolean {
  const { message = '', code = '' } = error as { message?: string; code?: string };
  return code === '53100' || /database or disk is full/.test(message);
}
