import { mkdirSync, writeFileSync } from 'node:fs';
import { fromRoot } from '../../house/root.mjs';
import { TOPICS } from '../../web/wording/help/topics.ts';
import { closeBrowser, visit } from '../browser/visit.ts';
import { missingFrom, namesIn, SCREENS_OF_HELP } from './named.ts';

/**
 * `npm run guide`: takes the pictures of the help from the running app with the sample class, half as large
 * as a laptop's screen, and writes down which names were on each, so that a test tells when they are stale.
 */
const FOLDER = fromRoot('web/screens/help/pictures');

mkdirSync(FOLDER, { recursive: true });
const visited = await visit({ path: '#/known' });
const { page, url } = visited;
await page.getByRole('button', { name: 'Look around with a sample class' }).click();
await page.getByText('This is a sample class.').waitFor({ timeout: 120_000 });

const shown: Record<string, readonly string[]> = {};
for (const screen of SCREENS_OF_HELP) {
  const names = namesIn(TOPICS.find((topic) => topic.screen === screen) ?? { ways: [] });
  await page.goto(`${url}#/${screen}`);
  for (let tries = 0; tries < 50; tries += 1) {
    if ((await missingFrom(page, names)).length === 0) break;
    await page.waitForTimeout(200);
  }
  const missing = await missingFrom(page, names);
  if (missing.length > 0)
    throw new Error(`The help on ${screen} names what is not there: ${missing}`);
  for (const button of await page.getByRole('button', { name: 'Got it' }).all())
    await button.click();
  await page.waitForTimeout(600);
  const png = await page.screenshot();
  writeFileSync(`${FOLDER}/${screen}.webp`, await small(png));
  shown[screen] = names;
}
writeFileSync(`${FOLDER}/names.json`, `${JSON.stringify(shown, null, 2)}\n`);
await visited.end();
await closeBrowser();

/** A picture at half its size as WebP, made by the browser. */
async function small(png: Buffer): Promise<Buffer> {
  const painter = await page.context().newPage();
  const made = await painter.evaluate(
    async (source) => {
      const blob = await (await fetch(source)).blob();
      const bitmap = await createImageBitmap(blob, {
        resizeWidth: 683,
        resizeHeight: 384,
        resizeQuality: 'high',
      });
      const canvas = document.createElement('canvas');
      canvas.width = 683;
      canvas.height = 384;
      canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
      return canvas.toDataURL('image/webp', 0.7);
    },
    `data:image/png;base64,${png.toString('base64')}`,
  );
  await painter.close();
  return Buffer.from(made.slice(made.indexOf(',') + 1), 'base64');
}
