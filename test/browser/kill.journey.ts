import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makeRandom } from '../../core/random.ts';
import { SEED } from './chance.ts';
import { HARMS, harmOneCopy } from './harm.ts';
import { type LogSite, openLogSite } from './log-site.ts';
import { untilGone } from './until-gone.ts';
import { chromiumFound, FLAGS } from './visit.ts';

/**
 * A drill is run and every word marked (log-page.ts), and the browser is killed
 * at random moments: while it marks, while it opens the class, while it seals.
 * A killed program is not a pulled plug: what reached the system's own buffers
 * survives here even if it did not reach the disk. Now and then one of the two copies is deleted, cut short
 * or torn between two starts, never both before the class was open again. The browser does the same by itself:
 * a kill between the head of a record and the record makes it throw the database away some starts later
 * (harm.ts), which is counted as well. A browser takes about a second to start, so
 * there are few kills unless the variable KILLS asks for more: KILLS=100 npm run journeys -- kill
 */
const kills = Number(process.env.KILLS ?? 10);

let site: LogSite;
const folder = mkdtempSync(join(tmpdir(), 'kill-'));
const kept = new Set<string>();
let cameBack = 0;
let thrownAway = 0;
/** Whether the database was harmed since the class was open. */
let isHarmed = false;
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
  const random = makeRandom(6 + SEED);
  let read = 0;
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
    await end(browser, 'SIGKILL');
    // What was posted before the kill may still be on its way here.
    await pause(5);
    if (found !== null) {
      read += 1;
      await take(found, before);
    }
    if (random.below(3) === 0) {
      const harm = HARMS[random.below(HARMS.length)] as (typeof HARMS)[number];
      await lookTwice();
      if (harmOneCopy(folder, harm, random)) harms.set(harm, (harms.get(harm) ?? 0) + 1);
      isHarmed = harm.startsWith('database');
    }
  }
  expect(kept.size).toBeGreaterThan(kills);
  expect(read).toBeGreaterThan(kills / 2);
  process.stdout.write(
    `${kept.size} events kept through ${kills} kills, read ${read} times; something came back ${cameBack} times, ${thrownAway} of them since the browser threw its database away; ${[...harms].map(([harm, times]) => `${harm}: ${times}`).join(', ')}\n`,
  );
}, 3_600_000);

it('loses nothing with a database that a kill has torn, which opens whole once and is gone at the next start', async () => {
  found = null;
  const browser = start();
  const enough = kept.size + 4;
  await until(() => kept.size >= enough);
  await end(browser, 'SIGKILL');
  await pause(5);
  harmOneCopy(folder, 'database torn', makeRandom(7));
  await lookTwice();
});

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

/** Checks what a start found, and counts what had come back from the second copy. */
async function take(seen: Found, before: Kept): Promise<void> {
  if (seen.putBack > 0) {
    cameBack += 1;
    if (!isHarmed) thrownAway += 1;
  }
  isHarmed = false;
  await check(seen, before);
}

/**
 * Looks until each copy is known to be whole by itself, so that the other may be harmed. A database that a
 * kill has torn opens whole, until enough is written behind the tear: then the next start throws it away. The
 * first look writes that much, so the second tells, and what it finds is on the disk in good order.
 */
async function lookTwice(): Promise<void> {
  for (let looks = 0; looks < 2; looks++) {
    await take(await look(), { ids: new Set(kept), place: lastKept });
  }
}

/** Opens the class in a browser that is ended in good order: killed, it might throw a copy away itself. */
async function look(): Promise<Found> {
  found = null;
  const browser = start('look');
  await until(() => found !== null);
  await end(browser, 'SIGTERM');
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

/**
 * Ends the browser, at once with all its processes or in good order, and waits until the last of them is gone:
 * what is still being written is not for us to harm.
 */
async function end(browser: ChildProcess, how: 'SIGKILL' | 'SIGTERM'): Promise<void> {
  const pid = browser.pid as number;
  const gone = once(browser, 'exit');
  process.kill(how === 'SIGKILL' ? -pid : pid, how);
  await gone;
  await untilGone(pid);
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
