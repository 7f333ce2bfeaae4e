import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EventBodies, EventKind, LogEvent } from '../../core/log/event.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { DAY, setClocks } from './clock.ts';
import {
  atNow,
  broken,
  cardsBefore,
  deskCount,
  deskEnd,
  deskLetters,
  deskPart,
  keptMark,
  markCards,
  reader,
  turnSaid,
  upcoming,
} from './desk-page.ts';
import { barriersIn, fitsAcross } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import {
  answer,
  edge,
  stageCards,
  stageEnd,
  stageLetters,
  stagePlaces,
  sweepLine,
  turnPicture,
  writingLine,
} from './stage-page.ts';
import { openScreen, putRows } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

const CHILDREN = ['Odalys', 'Bram', 'Tova', 'Wren'];

let current: Visit;
let desk: Page;
let stage: Page;

/** A class of four children who have just learned i_e, its desk open, and the stage in the window that the desk opened. */
beforeAll(async () => {
  current = await visit({
    path: '#/class',
    upTo: stepOf(SEQUENCE, { kind: 'card', id: 'i_e=AY' }) ?? 0,
  });
  desk = current.page;
  await desk.getByLabel('Add children').fill(CHILDREN.join('\n'));
  await desk.getByRole('button', { name: 'Add 4 children' }).click();
  await openScreen(desk, 'today', flips(desk));
  const opened = desk.context().waitForEvent('page');
  await desk.getByRole('button', { name: 'Open the desk' }).click();
  stage = await opened;
  await stage.setViewportSize({ width: 1280, height: 720 });
  await stageCards(stage).first().waitFor();
  await markCards(desk).first().waitFor();
});

afterAll(() => current?.end());

type Said<Kind extends EventKind> = LogEvent & { readonly body: EventBodies[Kind] };

/** The events of a kind, as this browser's own database holds them. */
async function told<Kind extends EventKind>(kind: Kind): Promise<readonly Said<Kind>[]> {
  await allKept(desk);
  await allKept(stage);
  const events = await recorded(desk);
  return events.filter((event) => event.kind === kind) as unknown as readonly Said<Kind>[];
}

const part = () => deskPart(desk).textContent();

/** Waits until the stage shows the row that the desk shows. */
async function inStep(): Promise<void> {
  await expect.poll(() => stageLetters(stage)).toBe(await deskLetters(desk));
}

async function goOnTo(name: string): Promise<void> {
  for (let presses = 0; presses < 40 && (await part()) !== name; presses += 1) {
    await desk.keyboard.press('Space');
  }
  expect(await part()).toBe(name);
}

describe('desk and stage', () => {
  it('go in step, part by part, and the children see only what they should', async () => {
    await desk.getByText('stage open').waitFor();
    await inStep();
    expect(await edge(stage).count()).toBe(0);
    await desk.getByText('as in').first().waitFor();
    await desk.keyboard.press('PageDown');
    await desk.keyboard.press('PageDown');
    await expect.poll(() => deskCount(desk).textContent()).toBe('3 of 16');
    await inStep();
    await stage.keyboard.press('PageUp');
    await expect.poll(() => deskCount(desk).textContent()).toBe('2 of 16');

    await goOnTo('Auditory drill');
    await writingLine(stage).waitFor();
    expect(await stageCards(stage).count()).toBe(0);
    expect(await markCards(desk).count()).toBeGreaterThan(0);
    await desk.getByRole('button', { name: 'Reveal on the stage' }).click();
    await stageCards(stage).first().waitFor();
    await inStep();

    await desk.keyboard.press('d');
    const words = new Set<string | null>();
    for (let word = 0; word < 6; word += 1) {
      words.add(await atNow(desk).getByRole('heading').textContent());
      expect(await writingLine(stage).count()).toBe(1);
      expect(await stageCards(stage).count()).toBe(0);
      if (word < 5) await desk.keyboard.press('Space');
    }
    expect(words.size).toBe(6);
    await desk.keyboard.press('Escape');
    expect(await part()).toBe('Auditory drill');

    await goOnTo('Blending drill');
    await inStep();
    await atNow(desk)
      .getByText(/^(real word|nonsense)/)
      .first()
      .waitFor();
    const seen = await stage.getByRole('main').textContent();
    expect(seen).not.toMatch(/nonsense|Odalys|Bram|Tova|Wren|\/[a-z]+\//);
    expect(await answer(stage).count()).toBe(0);
  });

  it('blend the whole row, one sound at a time or joined, as she chooses at the desk', async () => {
    const waiting = () => stagePlaces(stage, 'waiting').count();
    await desk.getByLabel('One sound at a time').check();
    await expect.poll(waiting).toBeGreaterThan(0);
    await desk.keyboard.press('Space');
    await desk.getByLabel('Joined sounds').check();
    for (let presses = 0; presses < 5 && (await waiting()) > 0; presses += 1) {
      const width = await widthOf(sweepLine(stage));
      const before = await waiting();
      await desk.keyboard.press('Space');
      await expect.poll(waiting).toBeLessThan(before);
      await sweepLine(stage, 'gliding').waitFor();
      const after = await widthOf(sweepLine(stage));
      expect(after).toBeGreaterThan(width);
    }
    await desk.keyboard.press('o');
    await expect.poll(() => desk.getByLabel('Whole row').isChecked()).toBe(true);
  });

  it('keep what broke: the child, the card, what was heard, and take it back', async () => {
    await desk.getByLabel('Call on children').check();
    await reader(desk).waitFor();
    const child = await reader(desk).textContent();
    await desk.keyboard.press('Digit2');
    await desk.getByText('heard instead').waitFor();
    await desk.keyboard.press('Digit1');
    const marked = (await told('marked')).at(-1);
    const names = new Map((await told('set')).map(({ body }) => [body.id, body.value]));
    expect(names.get(marked?.body.child ?? '')).toBe(child);
    expect(marked?.body).toMatchObject({ part: 'blending', broke: 2, heard: null });
    const amended = (await told('amended')).at(-1);
    expect(amended?.body).toMatchObject({ mark: marked?.id, field: 'heard' });
    expect(amended?.body.value).not.toBeNull();
    await keptMark(desk).waitFor();

    const cards = marked?.body.cards;
    await desk.keyboard.press('Space');
    await desk.keyboard.press('Shift+Digit1');
    const before = (await told('marked')).at(-1);
    expect(before?.body).toMatchObject({ broke: 1, cards, child: marked?.body.child });
    await desk.keyboard.press('z');
    expect((await told('undone')).at(-1)?.body.event).toBe(before?.id);
    const first = cardsBefore(desk).first();
    expect(await first.getAttribute('aria-pressed')).toBe('false');
    expect(await broken(cardsBefore(desk)).count()).toBeGreaterThan(0);

    await markCards(desk).nth(0).click();
    await desk.getByRole('button', { name: 'something else' }).click();
    expect((await told('amended')).at(-1)?.body.value).toEqual({ kind: 'other' });
    await markCards(desk).nth(1).click();
    await desk.keyboard.press('Space');
    expect(await desk.getByText('heard instead').count()).toBe(0);
  });

  it('call on every child, none of them twice more often than another, and nobody who is away', async () => {
    await desk.getByText('4 of 4 here today').click();
    await desk.getByRole('checkbox', { name: 'Tova is here' }).uncheck();
    // The window that leads hears of it a moment later, and looks again who is there.
    await allKept(desk);
    await desk.keyboard.press('Space');
    await expect.poll(() => upcoming(desk).allTextContents()).not.toContain('Tova');
    const readers: (string | null)[] = [];
    for (let turn = 0; turn < 9; turn += 1) {
      const next = await upcoming(desk).first().textContent();
      await desk.keyboard.press('Space');
      const child = await reader(desk).textContent();
      expect(child).toBe(next);
      readers.push(child);
    }
    const counts = ['Odalys', 'Bram', 'Wren'].map(
      (name) => readers.filter((child) => child === name).length,
    );
    expect(readers).not.toContain('Tova');
    expect(Math.min(...counts)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(3);
    await desk.getByRole('checkbox', { name: 'Tova is here' }).check();
  });

  it('lead through my turn, our turn and your turn, and bring the word back a few flips later', async () => {
    const word = await deskLetters(desk);
    await desk.keyboard.press('Digit1');
    await desk.keyboard.press('c');
    const seen: string[] = [];
    for (let step = 0; step < 15 && (await turnSaid(desk).count()) > 0; step += 1) {
      const turn = (await turnSaid(desk).textContent())?.split(':', 1)[0] ?? '';
      if (seen.at(-1) !== turn) seen.push(turn);
      await stage.getByRole('img', { name: turn }).waitFor();
      if (step === 0) {
        expect(await stagePlaces(stage, 'lit').count()).toBe(1);
        expect(await turnSaid(desk).textContent()).toMatch(/^My turn: you say \/.+\//);
      }
      await desk.keyboard.press('c');
    }
    expect(seen).toEqual(['My turn', 'Our turn', 'Your turn']);
    await expect.poll(async () => (await told('corrected')).length).toBe(1);
    const child = await reader(desk).textContent();
    for (let more = 0; more < 4; more += 1) await desk.keyboard.press('Space');
    expect(await deskLetters(desk)).toBe(word);
    expect(await reader(desk).textContent()).toBe(child);
    await desk.keyboard.press('c');
    await desk.keyboard.press('Escape');
    expect(await turnSaid(desk).count()).toBe(0);
    expect(await turnPicture(stage).count()).toBe(0);
  });

  it('stand where they stood when either is loaded again, and when both are', async () => {
    const count = await deskCount(desk).textContent();
    const row = await deskLetters(desk);
    await allKept(desk);
    for (const page of [desk, stage]) {
      await page.reload({ waitUntil: 'load' });
      await markCards(desk).first().waitFor();
      await stageCards(stage).first().waitFor();
      expect(await deskCount(desk).textContent()).toBe(count);
      expect(await deskLetters(desk)).toBe(row);
      await inStep();
    }
    await stage.close();
    await desk.reload({ waitUntil: 'load' });
    await markCards(desk).first().waitFor();
    expect(await deskLetters(desk)).toBe(row);
    const link = desk.context().waitForEvent('page');
    await desk.getByRole('button', { name: 'Open the stage' }).click();
    stage = await link;
    await stageCards(stage).first().waitFor();
    await inStep();
    expect(current.errors).toEqual([]);
  });

  it('pass the accessibility checks in every look, fit a phone, and have large targets', async () => {
    await desk.keyboard.press('Digit1');
    await desk.emulateMedia({ reducedMotion: 'reduce' });
    for (const look of ['paper', 'dark', 'contrast']) {
      for (const page of look === 'paper' ? [desk] : [desk, stage]) {
        await page.evaluate((name) => {
          document.documentElement.dataset.look = name;
        }, look);
        await page.waitForFunction(() => document.getAnimations().length === 0);
        expect(await barriersIn(page), look).toEqual([]);
      }
    }
    for (const size of [
      { width: 1366, height: 768 },
      { width: 390, height: 844 },
    ]) {
      await fitsAcross(desk, size.width, size.height);
      const small = await desk.getByRole('button').evaluateAll((buttons) =>
        buttons
          .map((button) => ({ name: button.textContent, box: button.getBoundingClientRect() }))
          .filter(({ box }) => Math.round(box.height) < 44 || Math.round(box.width) < 44)
          .map(({ name }) => name),
      );
      expect(small, `${size.width} wide`).toEqual([]);
    }
    const tall = await desk.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    await desk.setViewportSize({ width: 1366, height: 768 });
    expect(await desk.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0);
    expect(tall).toBeGreaterThan(0);
  });

  it('come to the end together, from where one goes on to how it went', async () => {
    for (let presses = 0; presses < 60 && (await deskEnd(desk).count()) === 0; presses += 1) {
      await desk.keyboard.press('Space');
    }
    await stageEnd(stage).waitFor();
    expect(await stage.getByRole('link').count()).toBe(0);
    await expect.poll(async () => (await told('ended')).at(-1)?.body.complete).toBe(true);
    await desk.getByRole('link', { name: 'How it went' }).click();
    await desk.getByRole('heading', { name: 'How it went' }).waitFor();
    expect(current.errors).toEqual([]);
  });
});

describe('the stage alone', () => {
  it('has a narrow edge for her: a mark by touch, what was heard, and a correction', async () => {
    await stage.close();
    await desk.setViewportSize({ width: 1366, height: 768 });
    await openScreen(desk, 'today', flips(desk));
    await setClocks(desk, DAY);
    await putRows(desk, [
      ['b=B', 'a=AE', 't=T'],
      ['s=S', 'a=AE', 't=T'],
      ['b=B', 'i=IH', 't=T'],
    ]);
    await desk.getByRole('button', { name: 'Start on the stage' }).click();
    await stageCards(desk).first().waitFor();
    await desk.getByRole('button', { name: 'Card 2 broke' }).click();
    await desk.getByRole('button', { name: 'Heard instead: left out' }).click();
    await allKept(desk);
    const events = await recorded(desk);
    expect(events.findLast(({ kind }) => kind === 'marked')?.body).toMatchObject({
      cards: ['b=B', 'a=AE', 't=T'],
      broke: 2,
    });
    expect(events.findLast(({ kind }) => kind === 'amended')?.body).toMatchObject({
      value: { kind: 'left-out' },
    });
    await desk.getByRole('button', { name: /^Correct it/ }).click();
    await desk.getByRole('img', { name: 'My turn' }).waitFor();
    await desk.keyboard.press('Escape');
    const touch = await fingerOn(desk);
    await touch(await middleOf(stageCards(desk).filter({ hasText: 'a' })));
    await expect.poll(() => stageLetters(desk)).toBe('bit');
    await touch(await middleOf(stageCards(desk).filter({ hasText: 'i' })));
    await stagePlaces(desk, 'nudged').waitFor();
    expect(await stageLetters(desk)).toBe('bit');
    await touch({ x: 150, y: 640 }, { x: 1150, y: 640 });
    await sweepLine(desk, 'drawn').waitFor();
    await touch({ x: 1200, y: 60 });
    await expect.poll(() => stageLetters(desk)).toBe('sat');
  });

  it('has a link in place of a window that the browser blocks', async () => {
    await openScreen(desk, 'desk', markCards(desk));
    await desk.evaluate(() => {
      window.open = () => null;
    });
    await desk.getByRole('button', { name: 'Open the stage' }).click();
    const link = desk.getByRole('link', { name: 'Open the stage here' });
    expect(await link.getAttribute('href')).toBe('#/stage');
  });
});

/** How wide it is on the screen, in CSS pixels. */
const widthOf = async (line: Locator): Promise<number> => (await line.boundingBox())?.width ?? 0;

interface Point {
  readonly x: number;
  readonly y: number;
}

async function middleOf(place: Locator): Promise<Point> {
  const box = await place.boundingBox();
  if (!box) throw new Error(`Nothing to touch: ${place}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** A finger for a page: it touches a point, and is drawn to another one if there is one. */
async function fingerOn(page: Page): Promise<(from: Point, to?: Point) => Promise<void>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: [...points] });
  return async (from, to = from) => {
    await send('touchStart', [from]);
    for (const share of [0.1, 0.4, 0.7, 1]) {
      const at = (start: number, end: number) => start + (end - start) * share;
      await send('touchMove', [{ x: at(from.x, to.x), y: at(from.y, to.y) }]);
    }
    await send('touchEnd', []);
  };
}
