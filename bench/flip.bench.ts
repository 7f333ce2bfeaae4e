import { stageCards } from '../test/browser/stage-page.ts';
import { openScreen, taughtUpTo } from '../test/browser/standing.ts';
import { flips } from '../test/browser/today-page.ts';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, summary } from './measure.ts';

/** One frame of a screen that draws sixty a second. */
const FRAME = 1000 / 60;

/**
 * From the key that asks for the next word to the frame that shows it, at 1920×1080 in a real
 * Chromium with software rendering: the key event's own time to the first task after the frame was
 * drawn. The yardstick is the same for a key that changes one letter on an otherwise empty page.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const { page, end } = await visit({ width: 1920, height: 1080, path: '#/today' });
  try {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await taughtUpTo(page, 40);
    await flips(page).first().waitFor();
    await openScreen(page, 'stage', stageCards(page));
    await page.evaluate(() => {
      const seen: number[] = [];
      Object.assign(globalThis, { seen });
      addEventListener(
        'keydown',
        (event) => {
          requestAnimationFrame(() => {
            const channel = new MessageChannel();
            channel.port1.onmessage = () => seen.push(performance.now() - event.timeStamp);
            channel.port2.postMessage(null);
          });
        },
        { capture: true },
      );
    });
    for (let i = 0; i < 60 && (await stageCards(page).count()) === 0; i++) {
      await page.keyboard.press('Space');
    }
    const turns = await timesOf(page, 25);
    await page.evaluate(() => {
      document.body.textContent = 'a';
      addEventListener('keydown', () => {
        document.body.textContent = document.body.textContent === 'a' ? 'b' : 'a';
      });
    });
    const letters = await timesOf(page, 25);
    return [
      summary({
        name: 'next word on the stage, key to paint',
        unit: 'ms',
        aim: FRAME,
        values: turns,
      }),
      summary({ name: 'yardstick: one letter on an empty page', unit: 'ms', values: letters }),
    ];
  } finally {
    await end();
  }
}

type Page = Awaited<ReturnType<typeof visit>>['page'];

/** The times of so many key presses, each after a pause in which the page is quiet. */
async function timesOf(page: Page, presses: number): Promise<readonly number[]> {
  await page.evaluate(() => {
    (globalThis as unknown as { seen: number[] }).seen.length = 0;
  });
  for (let i = 0; i < presses; i++) {
    await page.keyboard.press('Space');
    await page.waitForTimeout(120);
  }
  return page.evaluate(() => [...(globalThis as unknown as { seen: number[] }).seen]);
}
