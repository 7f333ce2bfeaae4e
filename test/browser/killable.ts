import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { untilGone } from './until-gone.ts';
import { chromiumFound, FLAGS } from './visit.ts';

/** A browser that can be killed as a whole, with a first page. */
export interface Killable {
  readonly page: Page;
  /** Kills the browser and all its processes at once, and waits until it is gone; nothing once it is. */
  kill(): Promise<void>;
}

/** Starts a browser on its own folder, in a process group of its own. */
export async function startKillable(folder: string): Promise<Killable> {
  const { path, environment } = chromiumFound();
  const told = join(folder, 'DevToolsActivePort');
  rmSync(told, { force: true });
  const flags = [...FLAGS, `--user-data-dir=${folder}`, '--disable-breakpad'];
  const child = spawn(path, [...flags, '--remote-debugging-port=0', 'about:blank'], {
    env: { ...process.env, ...environment },
    stdio: 'ignore',
    detached: true,
  });
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portIn(told)}`);
    const page = browser.contexts()[0]?.pages()[0];
    if (!page) throw new Error('The browser opened no page.');
    return { page, kill: () => kill(child, browser) };
  } catch (error) {
    await kill(child);
    throw error;
  }
}

async function kill(child: ChildProcess, browser?: Browser): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  process.kill(-(child.pid as number), 'SIGKILL');
  await gone;
  await untilGone(child.pid as number);
  // There is nothing left that could answer.
  browser?.close().catch(() => {});
}

/** The port that a browser writes into its folder once it listens. */
async function portIn(told: string): Promise<number> {
  for (let tries = 0; tries < 3000; tries += 1) {
    const port = Number(read(told).split('\n')[0]);
    if (port > 0) return port;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error('The browser did not start within a minute.');
}

function read(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
