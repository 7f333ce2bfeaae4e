import { createServer as createPlain, type IncomingMessage } from 'node:http';
import { createServer as createSecure } from 'node:https';
import type { AddressInfo, Server } from 'node:net';
import { type Kysely, sql } from 'kysely';
import type { SchoolKey } from '../core/sharing/school-key.ts';
import { headers as sent } from '../house/headers.ts';
import { answerWithFile } from '../house/serve.ts';
import { createAppendQueue } from './append-queue.ts';
import { createClassStore } from './class-store.ts';
import { migrate } from './database/migrations.ts';
import type { InstanceHeard, InstanceWord } from './database/open-postgres.ts';
import type { Tables } from './database/schema.ts';
import { createFollowers } from './followers.ts';
import { readIdentity } from './identity.ts';
import { createLimit } from './limits.ts';
import { createPolling } from './polling.ts';
import { createPresence } from './presence.ts';
import type { SessionDesk } from './session.ts';
import { createSockets } from './sockets.ts';

/** What a server is made of. */
export interface ServeSpec {
  readonly db: Kysely<Tables>;
  /** Word between instances, given what to do with it; null for a database of this process alone. */
  readonly word: ((heard: InstanceHeard) => InstanceWord) | null;
  /** The built app; null to serve none. */
  readonly folder: string | null;
  readonly host: string;
  /** 0 takes any free one. */
  readonly port: number;
  /** A certificate and its key, as PEM; null for plain HTTP, as behind a proxy. */
  readonly tls: { readonly cert: Buffer; readonly key: Buffer } | null;
  /** The public half of the school's key, which owners are asked about; left out for none. */
  readonly schoolKey?: SchoolKey;
  readonly now: () => number;
  /** A device may append so many records a second, and ten times as many at once. */
  readonly appendsPerSecond: number;
  /** From one address so many connections begin a second, and twenty times as many at once. */
  readonly arrivalsPerSecond: number;
}

/** A running server. */
export interface Served {
  readonly port: number;
  /** Ends it: what was asked for before is still kept and answered. */
  stop(): Promise<void>;
}

/** A class takes at most so many bytes: ten years of four warm-ups a day. */
const MOST_CLASS_BYTES = 400 * 1024 * 1024;

/** A device may say so much live in a second, and twice as much at once. */
const LIVE_PER_SECOND = 30;

/** Who has not answered for so long is gone, in milliseconds. */
const SWEEP_EVERY = 25_000;

/** Serves the app and what is shared at one address. Rejects when the port is taken. */
export async function serveClasses(spec: ServeSpec): Promise<Served> {
  const { db, word, folder, host, port, tls, schoolKey, now } = spec;
  await migrate(db);
  const identity = await readIdentity(db);
  const locksRows = word !== null;
  const store = createClassStore({ db, locksRows, mostBytes: MOST_CLASS_BYTES });
  const followers = createFollowers(store, now);
  const live = createLimit(LIVE_PER_SECOND, LIVE_PER_SECOND * 2, now);
  const presence = createPresence(followers, live, now, (...said) => others?.pass(...said));
  const others = word?.({ onGrown: followers.grown, onLive: presence.heard });
  const queue = createAppendQueue(store, now, (classIds) => {
    followers.grown(classIds);
    others?.send(classIds);
  });
  const { appendsPerSecond, arrivalsPerSecond } = spec;
  const arrivals = createLimit(arrivalsPerSecond, arrivalsPerSecond * 20, now);
  const desk: SessionDesk = {
    store,
    queue,
    identity,
    now,
    appends: createLimit(appendsPerSecond, appendsPerSecond * 10, now),
    fetches: createLimit(1, 20, now),
  };
  const house = { desk, followers, presence };
  const sockets = createSockets(house);
  const polling = createPolling(house);
  const server: Server & ReturnType<typeof createPlain> = tls
    ? (createSecure(tls) as unknown as ReturnType<typeof createPlain>)
    : createPlain();
  server.on('request', async (request, response) => {
    const path = (request.url ?? '/').split(/[?#]/, 1)[0];
    if (path !== '/healthz' && !path?.startsWith('/v1/')) {
      if (folder !== null) return answerWithFile(folder, request, response);
      response.writeHead(404).end();
      return;
    }
    for (const [name, value] of Object.entries(sent)) response.setHeader(name, value);
    try {
      if (path === '/v1/challenge' && arrivals.take(addressOf(request)) > 0) {
        response.writeHead(429, { 'Retry-After': '30' }).end();
      } else if (path === '/v1/school-key') {
        const type = { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' };
        response.writeHead(schoolKey ? 200 : 204, type);
        response.end(schoolKey && JSON.stringify(schoolKey));
      } else if (path === '/healthz') {
        await withinTwoSeconds(sql`select 1`.execute(db));
        response.writeHead(200, { 'Content-Type': 'text/plain', 'Cache-Control': 'no-store' });
        response.end('ok\n');
      } else if (!(await polling.answer(request, response))) {
        response.writeHead(404).end();
      }
    } catch {
      if (!response.headersSent) response.writeHead(503, { 'Retry-After': '2' });
      response.end();
    }
  });
  server.on('upgrade', (request, socket, head) => {
    if (request.url !== '/v1') socket.destroy();
    else if (arrivals.take(addressOf(request)) === 0) sockets.take(request, socket, head);
    else socket.end('HTTP/1.1 429 Too Many Requests\r\nRetry-After: 30\r\n\r\n');
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve());
  });
  const ticking = setInterval(() => {
    presence.tick();
    polling.sweep();
    void followers.tick().catch(() => {});
  }, 1000);
  const sweeping = setInterval(() => sockets.sweep(), SWEEP_EVERY);
  return {
    port: (server.address() as AddressInfo).port,
    async stop() {
      clearInterval(ticking);
      clearInterval(sweeping);
      sockets.close();
      polling.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await others?.close();
      await db.destroy();
    },
  };
}

/** Where a request comes from: behind a proxy of this computer, where the proxy says. */
function addressOf({ socket, headers }: IncomingMessage): string {
  const address = socket.remoteAddress ?? '';
  const isProxied = /^(::1|(::ffff:)?127[.])/.test(address);
  const said = isProxied
    ? String(headers['x-forwarded-for'] ?? '')
        .split(',')
        .at(-1)
    : '';
  return said?.trim() || address;
}

async function withinTwoSeconds(work: Promise<unknown>): Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error('The database does not answer.')), 2000);
  });
  await Promise.race([work, late]).finally(() => clearTimeout(timer));
}
