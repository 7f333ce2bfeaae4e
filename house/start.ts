import { ensureApp } from './app.mjs';
import { fromRoot } from './root.mjs';
import { giveUp } from './say.mjs';
import { type Serving, serve } from './serve.ts';

/** `npm start`: builds the app if need be, serves it to this computer, and says where. */
try {
  await ensureApp();
  const { url, stop } = await serveOn(process.env.PORT);
  process.stdout.write(`\nSweepline is ready: ${url}\n(Ctrl+C stops it.)\n`);
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

/** The port asked for and no other; without one, the first free of a hundred from 4173. */
async function serveOn(asked: string | undefined): Promise<Serving> {
  const folder = fromRoot('dist');
  if (asked) {
    const port = Number(asked);
    if (!Number.isInteger(port) || port < 0 || port > 65535) {
      throw new Error(`PORT is “${asked}”; it should be a number up to 65535, such as 4173.`);
    }
    const serving = await serveUnlessTaken(folder, port);
    if (serving) return serving;
    throw new Error(`Port ${port} is in use. Leave PORT away, or name another.`);
  }
  for (let port = 4173; port < 4273; port++) {
    const serving = await serveUnlessTaken(folder, port);
    if (serving) return serving;
  }
  throw new Error('No port from 4173 to 4272 is free. Name one, for example: PORT=8080 npm start');
}

async function serveUnlessTaken(folder: string, port: number): Promise<Serving | undefined> {
  try {
    return await serve({ folder, port });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') return undefined;
    throw error;
  }
}
