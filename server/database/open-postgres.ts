import { randomUUID } from 'node:crypto';
import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { type ClassId, classId } from '../../core/ids.ts';
import type { Tables } from './schema.ts';

/** The channel on which instances tell each other which classes have grown, and the one for what is said live. */
const [GROWN, LIVE] = ['sweepline', 'sweepline_live'];

/**
 * Opens a PostgreSQL database by its address. Whole numbers come as numbers: none of ours passes 2^53. A
 * client whose connection breaks is dropped and never ends the server.
 */
export function openPostgres(url: string): Kysely<Tables> {
  const types: pg.CustomTypesConfig = {
    getTypeParser: ((oid: number, format: 'text') =>
      oid === pg.types.builtins.INT8
        ? Number
        : pg.types.getTypeParser(oid, format)) as pg.CustomTypesConfig['getTypeParser'],
  };
  const pool = new pg.Pool({ connectionString: url, max: 10, types });
  pool.on('error', () => {});
  pool.on('connect', (client) => client.on('error', () => {}));
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
}

/** Word between the instances on one PostgreSQL database. */
export interface InstanceWord {
  /** Tells the others that these classes have grown; lost word does no harm. */
  send(classIds: readonly ClassId[]): void;
  /** Passes on what was said live in a class, to the others alone. */
  pass(classId: ClassId, text: string): void;
  close(): Promise<void>;
}

/** What is done with word from other instances. */
export interface InstanceHeard {
  onGrown(classIds: readonly ClassId[]): void;
  onLive(classId: ClassId, text: string): void;
}

/** Listens for word from other instances, again after a second when the connection breaks. */
export function keepInTouch(url: string, { onGrown, onLive }: InstanceHeard): InstanceWord {
  const own = randomUUID();
  let client: pg.Client | null = null;
  let isClosed = false;
  let sending: Promise<unknown> = Promise.resolve();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const connect = async (): Promise<void> => {
    const next = new pg.Client({ connectionString: url });
    let isLost = false;
    const lose = () => {
      if (isLost) return;
      isLost = true;
      client = null;
      if (!isClosed) timer = setTimeout(connect, 1000);
    };
    next.on('error', lose);
    next.on('end', lose);
    next.on('notification', ({ channel, payload = '' }) => {
      if (channel === GROWN) return onGrown(payload.split(' ').map(classId));
      const [from, ofClass = '', ...text] = payload.split(' ');
      if (from !== own) onLive(classId(ofClass), text.join(' '));
    });
    try {
      await next.connect();
      await next.query(`listen ${GROWN}`);
      await next.query(`listen ${LIVE}`);
      client = next;
    } catch {
      lose();
    }
  };
  void connect();
  const notify = (channel: string, payload: string): void => {
    // One after the other, as the package asks.
    sending = sending
      .then(() => client?.query('select pg_notify($1, $2)', [channel, payload]))
      .catch(() => {});
  };
  return {
    send(classIds) {
      for (let from = 0; from < classIds.length; from += 50) {
        notify(GROWN, classIds.slice(from, from + 50).join(' '));
      }
    },
    pass: (classId, text) => notify(LIVE, `${own} ${classId} ${text}`),
    async close() {
      isClosed = true;
      clearTimeout(timer);
      await client?.end().catch(() => {});
    },
  };
}
