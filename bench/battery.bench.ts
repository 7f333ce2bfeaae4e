import { markCards } from '../test/browser/desk-page.ts';
import { openScreen, taughtUpTo } from '../test/browser/standing.ts';
import { flips } from '../test/browser/today-page.ts';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, summary } from './measure.ts';

/** A warm-up of 12 minutes has about so many acts. */
const ACTS = 120;
const SECONDS = 12 * 60;

/** So many acts are measured, so far apart, in milliseconds, and a desk left alone for as long. */
const PRESSES = 15;
const EVERY = 1500;

/**
 * What the desk on a phone (390×844, moving as it does for everybody) asks of the processor: all processes
 * of a real Chromium together, with a screen drawn by software, which a phone's own chip draws for far
 * less. Of a battery no more can be said here: what the lit screen takes is the phone's own.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const { page, end } = await visit({ width: 390, height: 844, path: '#/today' });
  try {
    await taughtUpTo(page, 40);
    await flips(page).first().waitFor();
    await openScreen(page, 'desk', markCards(page));
    const browser = page.context().browser();
    if (!browser) throw new Error('The page belongs to no browser.');
    const session = await browser.newBrowserCDPSession();
    const spent = async () => {
      const { processInfo } = await session.send('SystemInfo.getProcessInfo');
      return processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0) * 1000;
    };
    const spentIn = async (press: () => Promise<void>) => {
      const before = await spent();
      for (let i = 0; i < PRESSES; i++) {
        await press();
        await page.waitForTimeout(EVERY);
      }
      return (await spent()) - before;
    };
    await spentIn(() => page.keyboard.press('Space'));
    const alone = await spentIn(async () => {});
    const pressed = await spentIn(() => page.keyboard.press('Space'));
    const act = Math.max(pressed - alone, 0) / PRESSES;
    const idle = alone / ((PRESSES * EVERY) / 1000);
    const name = "desk on a phone: processor's time";
    return [
      summary({ name: `${name}, an act`, unit: 'ms', values: [act] }),
      summary({ name: `${name}, a second left alone`, unit: 'ms', values: [idle] }),
      summary({ name: `${name}, 12 minutes`, unit: 'ms', values: [act * ACTS + idle * SECONDS] }),
    ];
  } finally {
    await end();
  }
}
