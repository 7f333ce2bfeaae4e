import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makeRandom } from '../../core/random.ts';
import { harmOneCopy } from './harm.ts';
import { type LogSite, openLogSite } from './log-site.ts';
import { chromiumFound, FLAGS } from './visit.ts';

/**
 * A drill is run and every word marked (log-page.ts), and the browser is killed
 * at random moments: while it marks, while it opens the class, while it seals.
 * A killed program is not a pulled plug: what reached the system's own buffers
 * survives here even if it did not reach the disk. Now and then one of the two copies is deleted or cut
 * short between two starts, never both before the class was open again. A browser takes about a second to start, so
 * there are few kills unless the variable KILLS asks for more: KILLS=100 npm run journeys -- kill
 */
const kills = Number(process.env.KILLS ?? 10);

let site: LogSite;
const folder = mkdtempSync(join(tmpdir(), 'kill-'));
const kept = new Set<string>();
let lastKept = -1;
let found: Found | null = null;
let onTold: () => void = () => {};

beforeAll(async () => {
  site = await openLogSite((what, value) => {
    if (what === 'found') {
      found = value as Found;
    } else {
      const { ids, place } = value as { readonly ids: readonly string[]; readonly place: number };
      for (const id of ids) kept.add(id);
      lastKept = Math.max(lastKept, place);
    }
    onTold();
  });
});
afterAll(async () => {
  await site?.stop();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

it(`loses nothing that was said to be kept, and stands where it stood, in ${kills} kills`, async () => {
  const random = makeRandom(7);
  let read = 0;
  let cameBack = 0;
  const harms = new Map<string, number>();
  for (let round = 0; round <= kills; round++) {
    const before = { ids: new Set(kept), place: lastKept };
    found = null;
    const browser = start();
    // Every fifth kill may come before the class is open; the others while words are marked.
    const early = random.below(5) === 0 && round < kills;
    if (early) await pause(200 + random.below(1000));
    else {
      await until(() => found !== null);
      const enough = kept.size + 2 * random.below(20);
      await until(() => kept.size >= enough);
      await pause(random.below(12));
    }
    await kill(browser);
    // What was posted before the kill may still be on its way here.
    await pause(5);
    const seen = found as Found | null;
    if (seen !== null) {
      read += 1;
      if (seen.putBack > 0) cameBack += 1;
      await check(seen, before);
    }
    if (random.below(3) === 0) {
      // The browser itself may have thrown one copy away just now: both are looked at first.
      const seen = await look();
      if (seen.putBack > 0) cameBack += 1;
      await check(seen, { ids: new Set(kept), place: lastKept });
      const harm = harmOneCopy(folder, random);
      harms.set(harm, (harms.get(harm) ?? 0) + 1);
    }
  }
  expect(kept.size).toBeGreaterThan(kills);
  expect(read).toBeGreaterThan(kills / 2);
  process.stdout.write(
    `${kept.size} events kept through ${kills} kills, read ${read} times; something came back ${cameBack} times; ${[...harms].map(([harm, times]) => `${harm}: ${times}`).join(', ')}\n`,
  );
}, 3_600_000);

/**
 * Compares what a start found with what all earlier ones had been told is kept. What is missing may be lost,
 * or only hidden until the copies are united: another look tells.
 */
async function check({ ids, stood }: Found, before: Kept): Promise<void> {
  const here = new Set(ids);
  const missing = [...before.ids].filter((id) => !here.has(id));
  if (missing.length > 0) {
    const later = new Set((await look()).ids);
    const lost = missing.filter((id) => !later.has(id)).length;
    throw new Error(
      `Of ${before.ids.size} kept ${missing.length} were not shown, ${lost} are lost.`,
    );
  }
  expect(here.size).toBe(ids.length);
  expect(stood).toBeGreaterThanOrEqual(before.place);
}

/** Opens the class in a browser that is ended in good order: killed, it might throw a copy away itself. */
async function look(): Promise<Found> {
  found = null;
  const browser = start('look');
  await until(() => found !== null);
  const gone = once(browser, 'exit');
  process.kill(browser.pid as number, 'SIGTERM');
  await gone;
  return found as unknown as Found;
}

/** What a start of the browser found of the class. */
interface Found {
  readonly ids: readonly string[];
  /** The last word shown. */
  readonly stood: number;
  /** How many events the browser had lost, which came from the second copy. */
  readonly putBack: number;
}

interface Kept {
  readonly ids: ReadonlySet<string>;
  readonly place: number;
}

function start(page = 'run'): ChildProcess {
  const { path, environment } = chromiumFound();
  const flags = [...FLAGS, `--user-data-dir=${folder}`, '--disable-breakpad'];
  return spawn(path, [...flags, `${site.url}${page}`], {
    env: { ...process.env, ...environment },
    stdio: 'ignore',
    detached: true,
  });
}

/** Kills the browser and all its processes at once, and waits until it is gone. */
async function kill(browser: ChildProcess): Promise<void> {
  const gone = once(browser, 'exit');
  process.kill(-(browser.pid as number), 'SIGKILL');
  await gone;
}

/** Waits for something that the page tells. */
async function until(isSo: () => boolean): Promise<void> {
  const tooLong = pause(60_000).then(() => {
    throw new Error('The page told nothing for a minute.');
  });
  tooLong.catch(() => {});
  while (!isSo()) {
    const told = new Promise<void>((resolve) => {
      onTold = resolve;
    });
    await Promise.race([told, tooLong]);
  }
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
