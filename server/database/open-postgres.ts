import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import type { Tables } from './schema.ts';

/** The channel on which instances tell each other which classes have grown. */
const CHANNEL = 'sweepline';

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
export interface Word {
  /** Tells the others that these classes have grown; lost word does no harm. */
  send(classIds: readonly string[]): void;
  close(): Promise<void>;
}

/** Listens for word from other instances, again after a second when the connection breaks. */
export function keepInTouch(url: string, onWord: (classIds: readonly string[]) => void): Word {
  let client: pg.Client | null = null;
  let isClosed = false;
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
    next.on('notification', ({ payload }) => onWord((payload ?? '').split(' ')));
    try {
      await next.connect();
      await next.query(`listen ${CHANNEL}`);
      client = next;
    } catch {
      lose();
    }
  };
  void connect();
  return {
    send(classIds) {
      for (let from = 0; from < classIds.length; from += 50) {
        const payload = classIds.slice(from, from + 50).join(' ');
        client?.query('select pg_notify($1, $2)', [CHANNEL, payload]).catch(() => {});
      }
    },
    async close() {
      isClosed = true;
      clearTimeout(timer);
      await client?.end().catch(() => {});
    },
  };
}
