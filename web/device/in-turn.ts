/** Runs pieces of work one after another: each begins when the one before has ended, however it ended. */
export type InTurn = <Value>(work: () => Promise<Value>) => Promise<Value>;

/** A line of its own for work that must not overlap; what a piece comes to or throws is its asker's. */
export function makeInTurn(): InTurn {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const done = last.then(work, work);
    last = done.catch(() => {});
    return done;
  };
}
