import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import type { SchoolKey } from '../../core/sharing/school-key.ts';
import { fromRoot } from '../../house/root.mjs';
import { openSqlite } from '../../server/database/open-sqlite.ts';
import { makePass } from '../../server/identity.ts';
import { type Served, serveClasses } from '../../server/serve.ts';
import { newStranger, type VisitSpec, watch } from './visit.ts';

/** The real server with a database of its own, and browsers of strangers to each other. */
export interface SharedSite {
  readonly url: string;
  /** A school pass. */
  readonly pass: string;
  /** A new device, at an address below the app's; `noSockets` has its network let no WebSocket through. */
  device(spec?: VisitSpec & { readonly noSockets?: boolean }): Promise<Device>;
  /** The bytes of the database and what lies beside it. */
  bytes(): Buffer;
  stopServer(): Promise<void>;
  startServer(): Promise<void>;
  end(): Promise<void>;
}

/** A browser of its own. */
export interface Device {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly requests: readonly string[];
  readonly errors: readonly string[];
}

/** Serves the built app and what is shared on a free port of this computer; perhaps with a school's key. */
export async function serveShared(schoolKey?: SchoolKey): Promise<SharedSite> {
  const folder = mkdtempSync(join(tmpdir(), 'sweepline-shared-'));
  const contexts: BrowserContext[] = [];
  let served: Served;
  let port = 0;
  let pass = '';
  const startServer = async () => {
    const db = openSqlite(folder);
    served = await serveClasses({
      db,
      word: null,
      folder: fromRoot('dist'),
      host: '127.0.0.1',
      port,
      tls: null,
      ...(schoolKey && { schoolKey }),
      now: Date.now,
      appendsPerSecond: 50,
      arrivalsPerSecond: 100,
    });
    ({ port } = served);
    if (pass === '') pass = await makePass(db, 10);
  };
  await startServer();
  const url = `http://127.0.0.1:${port}/`;
  return {
    url,
    get pass() {
      return pass;
    },
    async device({ path = '', noSockets = false, ...spec } = {}) {
      const context = await newStranger(url, spec);
      contexts.push(context);
      const requests: string[] = [];
      const errors: string[] = [];
      watch(context, requests, errors);
      if (noSockets) await context.routeWebSocket(/.*/, (socket) => void socket.close());
      const page = await context.newPage();
      await page.goto(new URL(path, url).href, { waitUntil: 'load' });
      return { page, context, requests, errors };
    },
    bytes: () =>
      Buffer.concat(
        readdirSync(folder, { withFileTypes: true })
          .filter((entry) => entry.isFile())
          .map(({ name }) => readFileSync(join(folder, name))),
      ),
    stopServer: () => served.stop(),
    startServer,
    async end() {
      for (const context of contexts) await context.close().catch(() => {});
      await served.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
