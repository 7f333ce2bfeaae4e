import type { Browser, Locator, Page } from 'playwright-core';
import { stageCards } from '../test/browser/stage-page.ts';
import { STANDING, standingAt } from '../test/browser/standing.ts';
import { flips } from '../test/browser/today-page.ts';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, summary } from './measure.ts';

/** So much slower than this one is the processor on which she waits. */
const SLOWER = 4;

/** What is opened, and what shows that it is ready. */
const WAYS: readonly (readonly [screen: string, shows: (page: Page) => Locator])[] = [
  ['today', flips],
  ['stage', stageCards],
];

/**
 * From the address to the words of today's warm-up, and to the first card on the stage, in a browser that has
 * never seen the app and has no plan for today yet, on a processor slowed four times: with a class taught up to step 60, the word list
 * fetched, read, and the warm-up made. Beside each stands how long the page itself was at work, in processor
 * time, which what else the machine does counts little for.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const { page, url, end } = await visit({ path: '#/about' });
  try {
    const browser = page.context().browser() as Browser;
    const found: Measurement[] = [];
    for (const [screen, shows] of WAYS) {
      const all = [];
      for (let run = 0; run < 5; run += 1)
        all.push(await opened(browser, `${url}#/${screen}`, shows));
      const name = `${screen} ready, processor slowed ${SLOWER} times`;
      const [ready, atWork] = [all.map(({ ready }) => ready), all.map(({ atWork }) => atWork)];
      found.push(
        summary({ name, unit: 'ms', aim: 2000, values: ready }),
        summary({ name: `${name}: the page at work`, unit: 'ms', values: atWork }),
      );
    }
    return found;
  } finally {
    await end();
  }
}

async function opened(
  browser: Browser,
  address: string,
  shows: (page: Page) => Locator,
): Promise<{ readonly ready: number; readonly atWork: number }> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.addInitScript(([name, text]) => localStorage.setItem(name, text), [
      STANDING,
      standingAt(60),
    ] as const);
    const session = await context.newCDPSession(page);
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await page.goto(address, { waitUntil: 'commit' });
    await shows(page).first().waitFor();
    const ready = await page.evaluate(() => performance.now());
    const { metrics } = await session.send('Performance.getMetrics');
    const seconds = metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0;
    return { ready, atWork: seconds * 1000 };
  } finally {
    await context.close();
  }
}
