import { readFileSync } from 'node:fs';
import { ensureApp } from './app.mjs';
import { fromRoot } from './root.mjs';
import { giveUp } from './say.mjs';
import { type Serving, serve } from './serve.ts';

/** `npm start`: builds the app if need be, serves it to this computer, and says where. */
try {
  await ensureApp();
  const { url, stop, said } = await serveOn(process.env.PORT);
  process.stdout.write(`\n${said}Sweepline is ready: ${url}\n(Ctrl+C stops it.)\n`);
  const end = () => stop().then(() => process.exit(0));
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end);
  if (process.env.npm_lifecycle_event) endWithParent(end);
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

/**
 * The port asked for and no other; without one, the first free of a hundred from 4173. On another port the
 * browser knows nothing of what was entered, which is said. Where this very app runs already, it is named
 * instead, and this ends.
 */
async function serveOn(asked: string | undefined): Promise<Serving & { readonly said: string }> {
  const folder = fromRoot('dist');
  if (asked) {
    const port = Number(asked);
    if (!Number.isInteger(port) || port < 0 || port > 65535) {
      throw new Error(`PORT is “${asked}”; it should be a number up to 65535, such as 4173.`);
    }
    const serving = await serveUnlessTaken(folder, port);
    if (serving) return { ...serving, said: '' };
    await nameIfRunning(port);
    throw new Error(`Port ${port} is in use. Leave PORT away, or name another.`);
  }
  for (let port = FIRST; port < FIRST + 100; port++) {
    const serving = await serveUnlessTaken(folder, port);
    if (serving) return { ...serving, said: port === FIRST ? '' : otherPort };
    await nameIfRunning(port);
  }
  throw new Error('No port from 4173 to 4272 is free. Name one, for example: PORT=8080 npm start');
}

const FIRST = 4173;

const otherPort = `ATTENTION: port ${FIRST} is taken by another program, so this is another address.
A browser keeps classes by address: here Sweepline is empty, and what you enter stays here.
To have your classes, end that program (perhaps an older Sweepline) and run npm start again.\n
`;

/** Ends with the address of this very app where it already runs on a port. */
async function nameIfRunning(port: number): Promise<void> {
  const url = `http://127.0.0.1:${port}/`;
  const stamp = readFileSync(fromRoot('dist', 'made-from.txt'), 'utf8');
  const found = await fetch(`${url}made-from.txt`, { signal: AbortSignal.timeout(2000) })
    .then((answer) => answer.text())
    .catch(() => null);
  if (found !== stamp) return;
  process.stdout.write(`\nSweepline is already running: ${url}\n`);
  process.exit(0);
}

async function serveUnlessTaken(folder: string, port: number): Promise<Serving | undefined> {
  try {
    return await serve({ folder, port });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') return undefined;
    throw error;
  }
}
