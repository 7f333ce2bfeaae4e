/**
 * Long work that can be paused and stopped: after every so many steps it yields which share of it is done,
 * from 0 to 1; at its end it returns its outcome. It changes nothing outside itself, so that stopping it
 * leaves everything as it was.
 */
export type Paced<Outcome> = Generator<number, Outcome, undefined>;

/** Does paced work in its own time; null when it was stopped. */
export type PacedBy = <Outcome>(work: Paced<Outcome>) => Promise<Outcome | null>;

/** Does paced work without a pause. */
export function atOnce<Outcome>(work: Paced<Outcome>): Outcome {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

/** Goes through a list and yields the share that is done after every so many; `each` is given one at a time. */
export function* pacedEach<One>(
  list: readonly One[],
  each: (one: One, place: number) => void,
  atATime = AT_A_TIME,
): Paced<void> {
  for (const [place, one] of list.entries()) {
    if (place > 0 && place % atATime === 0) yield place / list.length;
    each(one, place);
  }
}

/** Events or lines that take a few milliseconds. */
const AT_A_TIME = 500;
