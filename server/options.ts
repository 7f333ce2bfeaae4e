import { parseArgs } from 'node:util';

/** How a server was asked to run. */
export interface Options {
  readonly port: number;
  readonly host: string;
  /** The folder of the embedded database. */
  readonly data: string;
  /** The address of a PostgreSQL database; null for the embedded one. */
  readonly databaseUrl: string | null;
  readonly cert: string | null;
  readonly key: string | null;
  /** The folder of nightly copies; null for none. */
  readonly backup: string | null;
  /** The file with the public half of the school's key; null when the school asks for none. */
  readonly schoolKey: string | null;
  /** To make a pass with which so many classes can be begun; null to make one only with a new database. */
  readonly newPass: number | null;
}

/** What is known, for who has mistyped. */
const KNOWN = '--port, --host, --data, --cert, --key, --backup, --school-key, --new-pass';

/**
 * Reads what was typed; throws a sentence that says what is wrong. `DATABASE_URL` and `SCHOOL_KEY` come from
 * outside.
 */
export function readOptions(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): Options {
  const text = { type: 'string' } as const;
  let values: Readonly<Record<string, string | undefined>>;
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: {
        port: text,
        host: text,
        data: text,
        cert: text,
        key: text,
        backup: text,
        'school-key': text,
        'new-pass': text,
      },
    }));
  } catch (error) {
    throw new Error(`${(error as Error).message}\nThe server knows ${KNOWN}.`);
  }
  const databaseUrl = environment.DATABASE_URL || null;
  const { cert = null, key = null, backup = null } = values;
  if ((cert === null) !== (key === null)) {
    throw new Error(
      '--cert and --key belong together: name both files, or neither behind a proxy.',
    );
  }
  if (backup !== null && databaseUrl !== null) {
    throw new Error(
      '--backup copies the embedded database. With DATABASE_URL, back up PostgreSQL by its own means (pg_dump).',
    );
  }
  return {
    port: whole('port', values.port, 8430, 0, 65_535),
    host: values.host ?? '127.0.0.1',
    data: values.data ?? 'data',
    databaseUrl,
    cert,
    key,
    backup,
    schoolKey: values['school-key'] ?? (environment.SCHOOL_KEY || null),
    newPass: values['new-pass'] ? whole('new-pass', values['new-pass'], 0, 1, 100_000) : null,
  };
}

function whole(
  name: string,
  typed: string | undefined,
  otherwise: number,
  least: number,
  most: number,
): number {
  if (typed === undefined) return otherwise;
  const read = Number(typed);
  if (!(Number.isInteger(read) && read >= least && read <= most)) {
    throw new Error(
      `--${name} takes a whole number from ${least} to ${most}; “${typed}” is not one.`,
    );
  }
  return read;
}
