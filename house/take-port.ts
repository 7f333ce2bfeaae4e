import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Serving, serve } from './serve.ts';

/** Where the app is served from, and on which port it is asked for. */
export interface PortSpec {
  /** The built app. */
  readonly folder: string;
  /** What the variable PORT says; without it, the first free port of a hundred from `first`. */
  readonly asked: string | undefined;
  readonly first: number;
}

/**
 * What came of it: the app is served, and `isElsewhere` when it had to go to another port than the usual one,
 * where a browser knows nothing of what was entered; or a Sweepline runs already, this very build of it or
 * another.
 */
export type PortTaken =
  | { readonly serving: Serving; readonly isElsewhere: boolean }
  | { readonly running: string; readonly isSameBuild: boolean };

/**
 * Serves the app on the port asked for and no other; without one, on the first free. Where a Sweepline runs
 * already nothing is started, since it would be a second and empty one. Rejects, in words for the terminal,
 * when the port asked for is none or in use, or no port is free.
 */
export async function takePort({ folder, asked, first }: PortSpec): Promise<PortTaken> {
  if (asked) {
    const port = Number(asked);
    if (!Number.isInteger(port) || port < 0 || port > 65535) {
      throw new Error(`PORT is “${asked}”; it should be a number up to 65535, such as ${first}.`);
    }
    const taken = await tryPort(folder, port);
    if (taken === null) {
      throw new Error(
        `Port ${port} is in use by another program. Leave PORT away, or name another.`,
      );
    }
    return 'url' in taken ? { serving: taken, isElsewhere: false } : taken;
  }
  for (let port = first; port < first + PORTS; port++) {
    const taken = await tryPort(folder, port);
    if (taken !== null) {
      return 'url' in taken ? { serving: taken, isElsewhere: port > first } : taken;
    }
  }
  throw new Error(
    `No port from ${first} to ${first + PORTS - 1} is free. Name one, for example: PORT=8080 npm start`,
  );
}

/** So many ports are tried. */
const PORTS = 100;

/** What is at a port: this app now, a Sweepline that runs there already, or null for another program. */
async function tryPort(
  folder: string,
  port: number,
): Promise<Serving | Exclude<PortTaken, { readonly serving: Serving }> | null> {
  try {
    return await serve({ folder, port });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
  }
  const running = `http://127.0.0.1:${port}/`;
  const found = await textAt(`${running}made-from.txt`);
  if (found === readFileSync(join(folder, 'made-from.txt'), 'utf8')) {
    return { running, isSameBuild: true };
  }
  if (found === '') return null;
  const manifest = await textAt(`${running}manifest.webmanifest`);
  return /"name":\s*"Sweepline"/.test(manifest) ? { running, isSameBuild: false } : null;
}

/** The text at an address; empty when nothing answers in good time, or not as a Sweepline does. */
async function textAt(address: string): Promise<string> {
  const asking = new AbortController();
  const late = setTimeout(() => asking.abort(), PATIENCE);
  try {
    const answer = await fetch(address, { signal: asking.signal, redirect: 'error' });
    const length = Number(answer.headers.get('content-length') ?? MOST_BYTES);
    return answer.ok && length < MOST_BYTES ? await answer.text() : '';
  } catch {
    return '';
  } finally {
    clearTimeout(late);
    asking.abort();
  }
}

/** So long an answer is waited for, in milliseconds. */
const PATIENCE = 2000;

/** No file that is asked for is as long. */
const MOST_BYTES = 100_000;
