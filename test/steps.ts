import { type Profiler, Session } from 'node:inspector';

/**
 * How many steps each work takes: how often its blocks of code are run, as the engine counts them (precise
 * coverage of V8), whatever else the machine does. What the engine does by itself in one call, such as a
 * search in a text, counts as one. Code that the engine has made before it was asked to count is counted
 * coarsely until the engine makes it again, whenever that is; so all is counted again and again until two
 * rounds agree.
 */
export function stepsOfEach(works: readonly (() => unknown)[]): readonly number[] {
  const session = startCounting();
  try {
    const round = () =>
      works.map((work) => {
        work();
        return counted(session);
      });
    let before = round();
    for (let rounds = 1; rounds < MOST_ROUNDS; rounds++) {
      const now = round();
      if (now.every((steps, at) => steps === before[at])) return now;
      before = now;
    }
    return before;
  } finally {
    session.disconnect();
  }
}

const MOST_ROUNDS = 12;

/**
 * Counts from now on until the process ends; code that the engine makes from now on is counted exactly, the
 * first time already. Gives what tells how many steps some work takes.
 */
export function countSteps(): (work: () => unknown) => number {
  const session = startCounting();
  return (work) => {
    counted(session);
    work();
    return counted(session);
  };
}

function startCounting(): Session {
  const session = new Session();
  session.connect();
  ask(session, 'Profiler.enable');
  ask(session, 'Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  return session;
}

/** The steps since it was asked last. */
function counted(session: Session): number {
  const { result } = ask(session, 'Profiler.takePreciseCoverage') as {
    readonly result: readonly Profiler.ScriptCoverage[];
  };
  let steps = 0;
  for (const { functions } of result) {
    for (const { ranges } of functions) for (const { count } of ranges) steps += count;
  }
  return steps;
}

/** Asks the engine; in this thread it answers at once. */
function ask(session: Session, method: string, params: object = {}): unknown {
  let answer: unknown;
  session.post(method, params, (error, result) => {
    if (error) throw error;
    answer = result;
  });
  return answer;
}
