import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { openLogSite } from './log-site.ts';
import { startBrowser } from './visit.ts';

/** Someone at a browser of her own, at the page on which the log can be tried. */
export interface LogVisit {
  readonly context: BrowserContext;
  /**
   * Opens the page in another window, from this site or the one at `url`. `prepare` runs in it
   * first, as a script would that stands above all others.
   */
  open(spec?: { readonly prepare?: () => void; readonly url?: string }): Promise<Page>;
  /** Closes the browser and starts it again on the same folder. */
  restart(): Promise<void>;
  end(): Promise<void>;
}

/** Starts a browser that has never seen the page. */
export async function visitLog(): Promise<LogVisit> {
  const site = await openLogSite();
  const folder = mkdtempSync(join(tmpdir(), 'log-'));
  let context = await startBrowser(folder, 800, 600);
  return {
    get context() {
      return context;
    },
    async open({ prepare, url = site.url } = {}) {
      const page = await context.newPage();
      if (prepare) await page.addInitScript(prepare);
      await page.goto(url);
      await page.waitForFunction(() => 'log' in globalThis);
      return page;
    },
    async restart() {
      await context.close();
      context = await startBrowser(folder, 800, 600);
    },
    async end() {
      await context.close();
      await site.stop();
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
