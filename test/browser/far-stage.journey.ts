import { afterEach, describe, expect, it } from 'vitest';
import { deskBar, deskCount, markCards } from './desk-page.ts';
import { comeIn, makeCode, share } from './share-page.ts';
import { type Device, type SharedSite, serveShared } from './shared-site.ts';
import { stageCards } from './stage-page.ts';
import type { VisitSpec } from './visit.ts';

let site: SharedSite | undefined;

afterEach(async () => {
  await site?.end();
  site = undefined;
});

/** A laptop that shared its class, and another device that is in it. */
async function pair(noSockets = false): Promise<{ readonly desk: Device; readonly wall: Device }> {
  site = await serveShared();
  const desk = await site.device({ upTo: 12, noSockets });
  await share(site, desk);
  const wall = await site.device({ width: 1920, height: 1080, noSockets });
  await comeIn(wall, await makeCode(desk, 'Everything', 'Wall'));
  return { desk, wall };
}

/** The cards that a stage shows. */
const row = ({ page }: Device) => stageCards(page);

/** How far a desk is, as it says itself: `3 of 12`. */
const count = ({ page }: Device) => deskCount(page);

describe.each([
  ['', false],
  [' where no WebSocket gets through', true],
])('a stage on one device and a desk on another%s', (_, noSockets) => {
  it('are one warm-up: what is turned on either is turned on both, and who marked what is said', async () => {
    const { desk, wall } = await pair(noSockets);
    await wall.page.getByRole('link', { name: 'Be the stage' }).click();
    await wall.page.getByText('as soon as your desk begins one').waitFor();
    await desk.page.goto(`${site?.url}#/desk`);
    await row(wall).first().waitFor();
    await desk.page.getByText('stage open').waitFor();
    const first = await row(wall).allTextContents();
    await desk.page.keyboard.press('Space');
    await expect.poll(() => row(wall).allTextContents()).not.toEqual(first);
    await expect.poll(() => count(desk).textContent()).toMatch(/^2 of /);
    await wall.page.keyboard.press('Space');
    await expect.poll(() => count(desk).textContent()).toMatch(/^3 of /);
    await wall.page.keyboard.press('ArrowLeft');
    await expect.poll(() => count(desk).textContent()).toMatch(/^2 of /);
    await desk.page.keyboard.press('Digit1');
    await wall.page.goto(`${site?.url}#/after`);
    await wall.page.getByText(/on Laptop$/).waitFor();
    await desk.page.goto(`${site?.url}#/after`);
    await desk.page.getByRole('heading', { name: 'How it went' }).waitFor();
    expect(await desk.page.getByText(/on Laptop$/).count()).toBe(0);
    expect(
      [...desk.errors, ...wall.errors].filter((text) => !noSockets || !/WebSocket/.test(text)),
    ).toEqual([]);
  });
});

describe('an aide and a specialist in the class', () => {
  it('work and look on at the same time: each sees who did what, and who reads along turns and notes nothing', async () => {
    site = await serveShared();
    const teacher = await site.device({ upTo: 12 });
    await share(site, teacher);
    const enter = async (role: string, name: string, spec: VisitSpec = {}) => {
      const device = await (site as SharedSite).device(spec);
      await teacher.page.goto(`${site?.url}#/share`);
      await comeIn(device, await makeCode(teacher, role, name));
      return device;
    };
    const aide = await enter('Desk, without notes', 'Phone', {
      ...{ width: 390, height: 844, isPhone: true },
    });
    const reader = await enter('Reads along', 'Reading room');
    await teacher.page.goto(`${site.url}#/desk`);
    await count(teacher).waitFor();
    for (const { page } of [aide, reader]) {
      await page.goto(`${site.url}#/desk?follow`);
      await expect.poll(() => deskCount(page).textContent()).toMatch(/^1 of /);
    }
    await markCards(aide.page).first().tap();
    await deskBar(aide.page).getByRole('button', { name: /^Next/ }).tap();
    await expect.poll(() => count(teacher).textContent()).toMatch(/^2 of /);
    await expect.poll(() => count(reader).textContent()).toMatch(/^2 of /);
    await reader.page.getByText('reading along: nothing is noted').waitFor();
    await reader.page.keyboard.press('Digit1');
    await reader.page.keyboard.press('Space');
    await teacher.page.keyboard.press('Space');
    for (const each of [teacher, aide, reader]) {
      await expect.poll(() => count(each).textContent()).toMatch(/^3 of /);
    }
    // The one mark is the aide's, and everybody sees that.
    for (const { page } of [teacher, reader]) {
      await page.goto(`${site.url}#/after`);
      await page.getByText(/on Phone$/).waitFor();
      expect(await page.getByText(/on Reading room$/).count()).toBe(0);
    }
    // What is not hers to note is not noted, and she is told.
    await reader.page.goto(`${site.url}#/class`);
    await reader.page.getByLabel('Add children').fill('Quillan');
    await reader.page.keyboard.press('Enter');
    await reader.page.getByText('This device reads along, so').waitFor();
    expect(await reader.page.getByRole('button', { name: 'Quillan' }).count()).toBe(0);
    expect([...teacher.errors, ...aide.errors, ...reader.errors]).toEqual([]);
  });
});

describe('a stage whose desk is on another device', () => {
  it('goes on by its own keys while the network is gone, and they are one again afterwards', async () => {
    const { desk, wall } = await pair();
    await desk.page.goto(`${site?.url}#/desk`);
    await count(desk).waitFor();
    await wall.page.goto(`${site?.url}#/stage?follow`);
    await row(wall).first().waitFor();
    await desk.page.getByText('stage open').waitFor();
    await site?.stopServer();
    const before = await row(wall).allTextContents();
    await wall.page.keyboard.press('Space');
    await expect.poll(() => row(wall).allTextContents()).not.toEqual(before);
    await wall.page.keyboard.press('Space');
    expect(await count(desk).textContent()).toMatch(/^1 of /);
    await site?.startServer();
    await expect.poll(() => count(desk).textContent(), { timeout: 60_000 }).toMatch(/^3 of /);
    const text = await row(wall).allTextContents();
    await desk.page.keyboard.press('Space');
    await expect.poll(() => row(wall).allTextContents()).not.toEqual(text);
  });
});
