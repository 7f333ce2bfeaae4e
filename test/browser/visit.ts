import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { findChromium } from '../../house/chromium.mjs';
import { fromRoot } from '../../house/root.mjs';
import { serve } from '../../house/serve.ts';
import { setChance } from './chance.ts';
import { setClocks, untilNoon } from './clock.ts';
import { STANDING, standingAt } from './standing.ts';

/** Someone opening the built app in a browser of her own that has never seen it. */
export interface Visit {
  /** The app's page, loaded. */
  readonly page: Page;
  /** The app's address, such as `http://127.0.0.1:40123/`. */
  readonly url: string;
  /** The addresses of all requests so far, by pages and service workers, in order. */
  readonly requests: readonly string[];
  /** What went wrong in the page so far: console errors, uncaught errors, broken policy. */
  readonly errors: readonly string[];
  /** Stops the server, as if the network were gone; the page lives on. */
  stopServer(): Promise<void>;
  /** Closes all her pages and the server; what they kept is forgotten. */
  end(): Promise<void>;
}

/**
 * How the visitor comes: the size of her screen in CSS pixels, the address below the app's, the step
 * up to which her class was taught (nothing is known of it when it is left out), and whether the app
 * may be kept for days without a network, which takes a second or two of each visit.
 */
export interface VisitSpec {
  readonly width?: number;
  readonly height?: number;
  readonly path?: string;
  readonly upTo?: number | undefined;
  readonly keepsApp?: boolean;
  /** Whether it is a phone: fingers, and a page as wide as the screen. */
  readonly isPhone?: boolean;
}

const found = findChromium();

/** The Chromium of the tests; throws with what to do when there is none. */
export function chromiumFound(): NonNullable<typeof found> {
  if (!found) throw new Error('No Chromium. Run: node house/ensure.mjs chromium');
  return found;
}

/** How every browser of the tests is started: alone, without a network, without a screen. */
export const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

/** One browser for all visits of a process; each visit is a stranger in it. */
let shared: Promise<Browser> | undefined;

/** Closes the browser of all visits, if there was any; the last thing to do. */
export async function closeBrowser(): Promise<void> {
  const browser = await shared;
  shared = undefined;
  await browser?.close();
}

/**
 * Serves the built app (`dist/`) on a free port of this computer and opens it. Her clocks begin at noon,
 * so that no test runs into midnight, and chance is the same in every run.
 */
export async function visit({
  width = 1366,
  height = 768,
  path = '',
  upTo,
  keepsApp = false,
  isPhone = false,
}: VisitSpec = {}): Promise<Visit> {
  const serving = await serve({ folder: fromRoot('dist'), port: 0 });
  let context: BrowserContext | undefined;
  const end = async () => {
    await context?.close();
    await serving.stop();
  };
  try {
    context = await newStranger(serving.url, { width, height, upTo, keepsApp, isPhone });
    await setClocks(context, untilNoon());
    await setChance(context);
    const requests: string[] = [];
    const errors: string[] = [];
    watch(context, requests, errors);
    const page = await context.newPage();
    await page.goto(new URL(path, serving.url).href, { waitUntil: 'load' });
    return { page, url: serving.url, requests, errors, stopServer: serving.stop, end };
  } catch (error) {
    await end();
    throw error;
  }
}

/** A browser of somebody who has never been at this address, without a page yet. */
export async function newStranger(
  url: string,
  { width = 1366, height = 768, upTo, keepsApp = false, isPhone = false }: Omit<VisitSpec, 'path'>,
): Promise<BrowserContext> {
  shared ??= chromium.launch(launching());
  return (await shared).newContext({
    viewport: { width, height },
    deviceScaleFactor: 1,
    isMobile: isPhone,
    hasTouch: isPhone,
    serviceWorkers: keepsApp ? 'allow' : 'block',
    ...(upTo === undefined ? {} : { storageState: remembering(url, upTo) }),
  });
}

/** Starts a browser whose own folder is this one, with a first page of this size. */
export async function startBrowser(
  folder: string,
  width: number,
  height: number,
): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    ...launching(),
    viewport: { width, height },
    deviceScaleFactor: 1,
  });
}

/** What her browser keeps for the app before she comes. */
function remembering(url: string, upTo: number) {
  const localStorage = [{ name: STANDING, value: standingAt(upTo) }];
  return { cookies: [], origins: [{ origin: new URL(url).origin, localStorage }] };
}

function launching() {
  const found = chromiumFound();
  return {
    executablePath: found.path,
    env: { ...process.env, ...found.environment },
    args: FLAGS,
  };
}

/** Notes what a browser asks for and what goes wrong in it. */
export function watch(context: BrowserContext, requests: string[], errors: string[]): void {
  context.on('request', (request) => requests.push(request.url()));
  context.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  context.on('weberror', (error) => errors.push(String(error.error())));
}
