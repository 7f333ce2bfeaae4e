import { type Profiler, Session } from 'node:inspector';

/**
 * How many steps some work takes: how often its blocks of code are run, as the engine counts them (precise
 * coverage of V8), whatever else the machine does. What the engine does by itself in one call, such as a
 * search in a text, counts as one.
 */
export function stepsOf(work: () => unknown): number {
  const session = new Session();
  session.connect();
  try {
    ask(session, 'Profiler.enable');
    ask(session, 'Profiler.startPreciseCoverage', { callCount: true, detailed: true });
    // The first time is not counted: code that was made fast before is not counted as long as it runs.
    work();
    ask(session, 'Profiler.takePreciseCoverage');
    work();
    const { result } = ask(session, 'Profiler.takePreciseCoverage') as {
      readonly result: readonly Profiler.ScriptCoverage[];
    };
    let steps = 0;
    for (const { functions } of result) {
      for (const { ranges } of functions) for (const { count } of ranges) steps += count;
    }
    return steps;
  } finally {
    session.disconnect();
  }
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
