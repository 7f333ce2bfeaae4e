import { markCards } from '../test/browser/desk-page.ts';
import { stageCards } from '../test/browser/stage-page.ts';
import { openScreen, taughtUpTo } from '../test/browser/standing.ts';
import { flips } from '../test/browser/today-page.ts';
import { visit } from '../test/browser/visit.ts';
import { type Measurement, summary } from './measure.ts';

/** Two frames of a screen that draws sixty a second. */
const TWO_FRAMES = 2000 / 60;

type Page = Awaited<ReturnType<typeof visit>>['page'];

/**
 * From the key at the desk to the frame that shows it on the stage, in two windows of one real
 * Chromium with software rendering, by the clock that both windows share. The yardstick is the same
 * for two otherwise empty pages, of which one tells the other a letter.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const { page: desk, url, end } = await visit({ width: 1366, height: 768, path: '#/today' });
  try {
    await taughtUpTo(desk, 40);
    await flips(desk).first().waitFor();
    await openScreen(desk, 'desk', markCards(desk));
    const stage = await desk.context().newPage();
    await stage.setViewportSize({ width: 1920, height: 1080 });
    await stage.emulateMedia({ reducedMotion: 'reduce' });
    await stage.goto(new URL('#/stage', url).href);
    await stageCards(stage).first().waitFor();
    for (let presses = 0; presses < 60 && !(await isBlending(desk)); presses += 1) {
      await desk.keyboard.press('Space');
    }
    await watch(desk, stage);
    const steps = await timesOf(desk, stage, 20);
    for (const page of [desk, stage]) {
      await page.evaluate(() => {
        document.body.textContent = 'a';
        const channel = new BroadcastChannel('yardstick');
        channel.onmessage = ({ data }) => {
          document.body.textContent = data;
        };
        addEventListener('keydown', () => {
          document.body.textContent = document.body.textContent === 'a' ? 'b' : 'a';
          channel.postMessage(document.body.textContent);
        });
      });
    }
    const letters = await timesOf(desk, stage, 20);
    return [
      summary({
        name: 'next word at the desk, key to paint on the stage',
        unit: 'ms',
        aim: TWO_FRAMES,
        values: steps,
      }),
      summary({ name: 'yardstick: one letter from page to page', unit: 'ms', values: letters }),
    ];
  } finally {
    await end();
  }
}

async function isBlending(desk: Page): Promise<boolean> {
  return (await desk.locator('.desk-part').textContent()) === 'Blending drill';
}

/** Notes when keys are pressed at the desk, and when the first frame after a change of the stage was drawn. */
async function watch(desk: Page, stage: Page): Promise<void> {
  await desk.evaluate(() => {
    const pressed: number[] = [];
    Object.assign(globalThis, { pressed });
    addEventListener('keydown', (event) => pressed.push(performance.timeOrigin + event.timeStamp), {
      capture: true,
    });
  });
  await stage.evaluate(() => {
    const drawn: number[] = [];
    Object.assign(globalThis, { drawn });
    let asked = false;
    new MutationObserver(() => {
      if (asked) return;
      asked = true;
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          asked = false;
          drawn.push(performance.timeOrigin + performance.now());
        };
        channel.port2.postMessage(null);
      });
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

/** The times of so many key presses, each after a pause in which both pages are quiet. */
async function timesOf(desk: Page, stage: Page, presses: number): Promise<readonly number[]> {
  const times: number[] = [];
  for (let press = 0; press < presses; press += 1) {
    const before = await drawnIn(stage);
    await desk.keyboard.press('Space');
    await stage.waitForTimeout(150);
    const pressed = await desk.evaluate(
      () => (globalThis as unknown as { pressed: number[] }).pressed.at(-1) ?? 0,
    );
    const first = (await drawnIn(stage))[before.length];
    if (first !== undefined) times.push(first - pressed);
  }
  return times;
}

function drawnIn(stage: Page): Promise<readonly number[]> {
  return stage.evaluate(() => [...(globalThis as unknown as { drawn: number[] }).drawn]);
}
