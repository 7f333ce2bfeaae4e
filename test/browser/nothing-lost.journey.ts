import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type EventOf, type LogEvent, PARTS } from '../../core/log/event.ts';
import { makeRandom, type Random } from '../../core/random.ts';
import { fromRoot } from '../../house/root.mjs';
import { type Serving, serve } from '../../house/serve.ts';
import { deskCount, deskEnd, deskPart, markCards, marksMade } from './desk-page.ts';
import { type Killable, startKillable } from './killable.ts';
import { allKept, isUnsaved, recorded } from './recorded.ts';
import { stageCards } from './stage-page.ts';
import { openScreen, taughtUpTo } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

/**
 * The built app in front of a class, and everything that can end it. A browser takes a second or more to
 * start, so it is killed a few times only, unless the variable KILLS asks for more:
 * KILLS=100 npm run journeys -- nothing-lost
 */
const kills = Number(process.env.KILLS ?? 8);

const servings: Serving[] = [];

async function serveApp(): Promise<string> {
  const serving = await serve({ folder: fromRoot('dist'), port: 0 });
  servings.push(serving);
  return serving.url;
}

afterAll(() => Promise.all(servings.map((serving) => serving.stop())));

/** A warm-up as the log has it. */
interface Run {
  /** Marks as `3 visual 2 1`: which run, part, place, card. */
  readonly marks: readonly string[];
  /** What the desk shows where the last run stands: `Visual drill 3 of 12`; null at the end or for none. */
  readonly stands: string | null;
  /** Its place among all moments; -1 for none. */
  readonly at: number;
  readonly runs: number;
}

const partNames = {
  visual: 'Visual drill',
  auditory: 'Auditory drill',
  blending: 'Blending drill',
};

function readRun(events: readonly LogEvent[]): Run {
  const begun = ofKind(events, 'begun');
  const runOf = new Map(begun.map(({ body }, place) => [body.drillId, place]));
  const marks = ofKind(events, 'marked').map(
    ({ body }) => `${runOf.get(body.drillId)} ${body.part} ${body.place} ${body.broke}`,
  );
  const last = begun.at(-1)?.body;
  const shown = ofKind(events, 'shown').filter(({ body }) => body.drillId === last?.drillId);
  const ended = ofKind(events, 'ended').some(({ body }) => body.drillId === last?.drillId);
  const up = shown.at(-1)?.body;
  if (!last || !up || ended) return { marks, stands: null, at: -1, runs: begun.length };
  const { visual, auditory, run } = last.drill;
  const counts = { visual: visual.length, auditory: auditory.length, blending: run.length };
  const before = PARTS.slice(0, PARTS.indexOf(up.part)).reduce(
    (sum, part) => sum + counts[part],
    0,
  );
  return {
    marks,
    stands: `${partNames[up.part]} ${up.place + 1} of ${counts[up.part]}`,
    at: before + up.place,
    runs: begun.length,
  };
}

function ofKind<Kind extends 'marked' | 'shown' | 'begun' | 'ended'>(
  events: readonly LogEvent[],
  kind: Kind,
): readonly EventOf<Kind>[] {
  return events.filter((event) => event.kind === kind) as unknown as readonly EventOf<Kind>[];
}

/** Where the desk says that the warm-up stands. */
async function deskStands(page: Page): Promise<string> {
  return [
    ...(await deskPart(page).allTextContents()),
    ...(await deskCount(page).allTextContents()),
  ].join(' ');
}

const openDesk = (page: Page) => openScreen(page, 'desk', markCards(page).or(deskEnd(page)));

describe('a browser that is killed in the middle of a run', () => {
  const folder = mkdtempSync(join(tmpdir(), 'killed-'));
  let last: Killable | undefined;
  afterAll(async () => {
    await last?.kill();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  });

  it(
    `loses no mark that the page signed as kept, and stands where it stood, in ${kills} kills`,
    async () => {
      const url = await serveApp();
      const random = makeRandom(20_261_124);
      const pressed = new Set<string>();
      const signed = new Set<string>();
      const began = Date.now();
      for (let round = 0; round <= kills; round += 1) {
        last = await startKillable(folder);
        const { page, kill } = last;
        page.setDefaultTimeout(60_000);
        const loading = round === 0 ? settle(page, url) : page.goto(`${url}#/desk`);
        if (round > 0 && round < kills && random.below(5) === 0) {
          loading.catch(() => {});
          await pause(random.below(700));
          await kill();
          continue;
        }
        await loading;
        await openDesk(page);
        const run = readRun(await recorded(page));
        expect([...signed].filter((mark) => !run.marks.includes(mark))).toEqual([]);
        expect(run.marks.filter((mark) => !pressed.has(mark))).toEqual([]);
        if (run.stands !== null) expect(await deskStands(page)).toBe(run.stands);
        if (round === kills) {
          await kill();
          break;
        }
        await markAndGoOn(page, run, { kill, random, pressed, signed });
      }
      expect(signed.size).toBeGreaterThan(kills / 2);
      const each = Math.round((Date.now() - began) / kills);
      process.stdout.write(`${signed.size} marks kept through ${kills} kills, ${each} ms each\n`);
    },
    60_000 + kills * 30_000,
  );

  async function settle(page: Page, url: string): Promise<void> {
    await page.goto(url);
    await taughtUpTo(page, 40);
    await openScreen(page, 'today', flips(page));
  }

  interface Life {
    readonly kill: () => Promise<void>;
    readonly random: Random;
    readonly pressed: Set<string>;
    readonly signed: Set<string>;
  }

  /** Marks what is up and goes on, until the browser is killed in the middle of it. */
  async function markAndGoOn(page: Page, run: Run, { kill, random, pressed, signed }: Life) {
    let number = run.stands === null ? run.runs : run.runs - 1;
    let killing: Promise<void> | undefined;
    const enough = 1 + random.below(6);
    try {
      for (let marks = 0; ; marks += 1) {
        if (marks === enough) killing = pause(random.below(80)).then(kill);
        const [, name, place] = /^(\w+) drill (\d+) of/.exec(await deskStands(page)) ?? [];
        if (name === undefined) {
          // At the end the desk, opened again, begins again.
          await allKept(page);
          await page.reload();
          await openDesk(page);
          number += 1;
          continue;
        }
        const card = name === 'Blending' ? 1 + random.below(3) : 1;
        const mark = `${number} ${name.toLowerCase()} ${Number(place) - 1} ${card}`;
        pressed.add(mark);
        await page.keyboard.press(`Digit${card}`);
        if (random.below(3) > 0) {
          await allKept(page);
          signed.add(mark);
        }
        if (random.below(3) === 0) await page.keyboard.press('Digit1');
        await page.keyboard.press('Space');
      }
    } catch (error) {
      if (!killing) throw error;
    }
    await killing;
  }
});

describe('a class at work', () => {
  let browser: Visit;
  beforeAll(async () => {
    browser = await visit({ path: '#/about' });
  });
  afterEach(async () => {
    for (const page of browser.page.context().pages())
      if (page !== browser.page) await page.close();
  });
  afterAll(() => browser?.end());

  /** A class at an address of its own, at its desk; `before` runs first in the page. */
  async function atDesk(before: (page: Page) => Promise<unknown> = async () => {}): Promise<Page> {
    const page = await browser.page.context().newPage();
    await before(page);
    await page.goto(await serveApp());
    await taughtUpTo(page, 40);
    await openDesk(page);
    return page;
  }

  /** Marks the first card of what is up, and goes on. */
  async function markFirst(page: Page): Promise<void> {
    await page.keyboard.press('Digit1');
    await page.keyboard.press('Space');
  }

  it('is one class in two windows: what is done in one shows in both, and is kept once', async () => {
    const desk = await atDesk();
    await markFirst(desk);
    const stage = await browser.page.context().newPage();
    await stage.goto(new URL('#/stage', desk.url()).href);
    await stageCards(stage).first().waitFor();
    // What comes up is noted after it was painted; nobody changes windows within a frame.
    for (const [turn, window] of [stage, desk, stage].entries()) {
      await markFirst(window);
      await expect.poll(async () => readRun(await recorded(window)).at).toBe(turn + 2);
    }
    await expect.poll(() => deskStands(desk)).toMatch(/^Visual drill 5 of/);
    const marks = ['0', '1', '2', '3'].map((place) => `0 visual ${place} 1`);
    const events = await recorded(desk);
    expect(readRun(events).marks).toEqual(marks);
    const places = ofKind(events, 'shown').map(({ body }) => body.place);
    expect(places).toEqual([0, 1, 2, 3, 4]);

    await desk.close();
    await markFirst(stage);
    await allKept(stage);
    const again = await browser.page.context().newPage();
    await again.goto(new URL('#/desk', stage.url()).href);
    await markCards(again).first().waitFor();
    await expect.poll(() => deskStands(again)).toMatch(/^Visual drill 6 of/);
    expect(readRun(await recorded(again)).marks).toEqual([...marks, '0 visual 4 1']);
    for (const window of [again, stage]) await openScreen(window, 'after', marksMade(window));
    expect(await marksMade(again).count()).toBe(5);
    expect(await marksMade(stage).count()).toBe(5);
  });

  it('goes on when the device is full, says so, offers a copy, and keeps all once there is room', async () => {
    const desk = await atDesk(async (page) => {
      await page.addInitScript(() => {
        const { add } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.add = function (...args) {
          if (Object.hasOwn(globalThis, 'noRoom')) throw new DOMException('', 'QuotaExceededError');
          return add.apply(this, args);
        };
      });
    });
    await markFirst(desk);
    await allKept(desk);
    await desk.evaluate(() => Object.assign(globalThis, { noRoom: true }));
    await markFirst(desk);
    await markFirst(desk);
    await desk.getByText('There is no more room on this device.').waitFor();
    expect(await deskStands(desk)).toMatch(/^Visual drill 4 of/);
    expect(await isUnsaved(desk)).toBe(true);
    const marks = ['0', '1', '2'].map((place) => `0 visual ${place} 1`);
    expect(readRun(await savedCopy(desk)).marks).toEqual(marks);

    await desk.evaluate(() => Reflect.deleteProperty(globalThis, 'noRoom'));
    await desk.keyboard.press('Space');
    await allKept(desk);
    expect(readRun(await recorded(desk)).marks).toEqual(marks);
    await expect.poll(() => desk.getByText('There is no more room').count()).toBe(0);
  });

  it('goes on when the browser keeps nothing, says so, and offers a copy', async () => {
    const desk = await atDesk(async (page) => {
      await page.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('', 'SecurityError');
        };
      });
    });
    await desk.getByText('This browser lets Sweepline keep nothing').waitFor();
    await markFirst(desk);
    expect(await deskStands(desk)).toMatch(/^Visual drill 2 of/);
    expect(readRun(await savedCopy(desk)).marks).toEqual(['0 visual 0 1']);
    await openScreen(desk, 'after', marksMade(desk));
  });

  it('has everything again when the browser lost its database, and says so until it was read', async () => {
    const desk = await atDesk();
    await markFirst(desk);
    await markFirst(desk);
    await allKept(desk);
    await desk.evaluate(
      () =>
        new Promise((resolve) => {
          indexedDB.deleteDatabase('sweepline-log').onsuccess = resolve;
        }),
    );
    await desk.reload();
    await openDesk(desk);
    expect(await deskStands(desk)).toMatch(/^Visual drill 3 of/);
    const marks = ['0', '1'].map((place) => `0 visual ${place} 1`);
    expect(readRun(await recorded(desk)).marks).toEqual(marks);
    await openScreen(desk, 'after', marksMade(desk));
    await desk.reload();
    const notice = desk.getByText(/came back from the second copy on this device/);
    await notice.waitFor();
    expect(readRun(await savedCopy(desk)).marks).toEqual(marks);
    await desk.getByRole('button', { name: 'Close' }).click();
    expect(await notice.count()).toBe(0);
    await desk.reload();
    await marksMade(desk).first().waitFor();
    expect(await notice.count()).toBe(0);
  });

  it('keeps the order of what happened when the clock is set back', async () => {
    const desk = await atDesk();
    await markFirst(desk);
    const before = await desk.evaluate(() => {
      const now = Date.now();
      globalThis.moveClock(-3 * 3_600_000);
      return now;
    });
    await markFirst(desk);
    await markFirst(desk);
    await allKept(desk);
    const events = await recorded(desk);
    expect(readRun(events).marks).toEqual(['0', '1', '2'].map((place) => `0 visual ${place} 1`));
    const times = ofKind(events, 'marked').map(({ at }) => at);
    expect(times.toSorted((left, right) => left - right)).toEqual(times);
    expect(new Set(times).size).toBe(3);
    expect(Math.min(...times.slice(1))).toBeGreaterThanOrEqual(Math.min(before, ...times));
  });

  /** The events of the copy that the banner offers. */
  async function savedCopy(page: Page): Promise<readonly LogEvent[]> {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save a copy' }).click(),
    ]);
    const lines = readFileSync(await download.path(), 'utf8')
      .trim()
      .split('\n');
    return lines.map((line) => JSON.parse(line)).filter((line) => typeof line.kind === 'string');
  }
});

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
