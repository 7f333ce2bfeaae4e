import { deskCount } from '../test/browser/desk-page.ts';
import { makeCode, share } from '../test/browser/share-page.ts';
import { serveShared } from '../test/browser/shared-site.ts';
import { stageCards } from '../test/browser/stage-page.ts';
import { type Measurement, summary } from './measure.ts';

/** A screen has so long to become the stage from the moment that a camera has read its code, in milliseconds. */
const AIM = 10_000;
const ROUNDS = 5;

/**
 * A new browser that has never seen the app becomes the wall of a warm-up that is led elsewhere: from the address
 * behind the code, as a camera reads it, to the first card on the screen. Pointing the camera is hers.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const site = await serveShared();
  try {
    const desk = await site.device({ upTo: 12 });
    await share(site, desk);
    const took: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      await desk.page.goto(`${site.url}#/share`);
      const address = await makeCode(desk, 'Wall only');
      await desk.page.goto(`${site.url}#/desk`);
      await deskCount(desk.page).waitFor();
      const wall = await site.device({ width: 1920, height: 1080, path: 'about:blank' });
      const started = performance.now();
      await wall.page.goto(address);
      await stageCards(wall.page).first().waitFor();
      took.push(performance.now() - started);
      await wall.context.close();
    }
    return [summary({ name: 'code read → card on the wall', unit: 'ms', aim: AIM, values: took })];
  } finally {
    await site.end();
  }
}
