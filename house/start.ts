import { ensureApp } from './app.mjs';
import { fromRoot } from './root.mjs';
import { giveUp, say } from './say.mjs';
import { takePort } from './take-port.ts';

/** The port of the app; its address is where a browser keeps what was entered. */
const FIRST = 4173;

/** `npm start`: builds the app if need be, serves it to this computer, and says where. */
try {
  await ensureApp();
  const folder = fromRoot('dist');
  const taken = await takePort({ folder, asked: process.env.PORT, first: FIRST });
  if ('running' in taken) sayRunning(taken);
  else {
    const { url, stop } = taken.serving;
    if (taken.isElsewhere) say(otherPort(url));
    process.stdout.write(`\nSweepline is ready: ${url}\n(Ctrl+C stops it.)\n`);
    const end = () => stop().then(() => process.exit(0));
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end);
    if (process.env.npm_lifecycle_event) endWithParent(end);
  }
} catch (error) {
  giveUp(error);
}

/** When npm is ended from outside, it leaves what it started running, unseen, on its port. */
function endWithParent(end: () => void): void {
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) end();
  }, 500);
}

/** Names the Sweepline that runs already; nothing else is started. */
function sayRunning(taken: { readonly running: string; readonly isSameBuild: boolean }): void {
  if (taken.isSameBuild) {
    process.stdout.write(`\nSweepline is already running: ${taken.running}\n`);
    return;
  }
  say(`
Another version of Sweepline is already running: ${taken.running}
What was entered there is kept at that address. To open it with this version, stop the other one
(Ctrl+C in its window) and run npm start again.`);
  process.exitCode = 1;
}

function otherPort(url: string): string {
  return `
┌─ ATTENTION ──────────────────────────────────────────────────────────────────────────
│ Another program is using port ${FIRST}, so Sweepline is at a different address today.
│ A browser keeps classes by address: at ${url} Sweepline is EMPTY, and what you
│ enter there stays there. Your classes are safe at http://127.0.0.1:${FIRST}/.
│ To have them, stop that program and run npm start again.
└──────────────────────────────────────────────────────────────────────────────────────`;
}
