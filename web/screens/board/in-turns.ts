/** Milliseconds of work between two pauses: half a frame. */
const TURN = 8;

/** Does the pieces of some work in turns; true when all were done, false when `isOver` said so. */
export async function inTurns(
  pieces: Iterable<() => void>,
  isOver: () => boolean,
): Promise<boolean> {
  let until = performance.now() + TURN;
  for (const piece of pieces) {
    if (performance.now() >= until) {
      await pause();
      if (isOver()) return false;
      until = performance.now() + TURN;
    }
    piece();
  }
  return !isOver();
}

/** Lets the browser do what waits: a key, a touch, the next picture. Resolves right after. */
function pause(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });
}
