import type { Kysely } from 'kysely';
import type { Tables } from './schema.ts';

/**
 * Brings a database to the newest shape: each step once, in order. A step only adds, so that a server of
 * the version before goes on beside a newer one. The same for SQLite and PostgreSQL.
 */
export async function migrate(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('migration')
    .ifNotExists()
    .addColumn('version', 'integer', (column) => column.primaryKey())
    .execute();
  for (const [place, step] of steps.entries()) {
    await db.transaction().execute(async (tx) => {
      // Of two servers that begin at once, one makes the row and the other waits for it and goes on.
      const made = await tx
        .insertInto('migration')
        .values({ version: place + 1 })
        .onConflict((conflict) => conflict.doNothing())
        .returning('version')
        .execute();
      if (made.length > 0) await step(tx);
    });
  }
}

const steps: readonly ((db: Kysely<Tables>) => Promise<void>)[] = [
  async ({ schema }) => {
    await schema
      .createTable('server')
      .addColumn('one', 'integer', (column) => column.primaryKey())
      .addColumn('secret', 'text', (column) => column.notNull())
      .execute();
    await schema
      .createTable('pass')
      .addColumn('hash', 'text', (column) => column.primaryKey())
      .addColumn('classes_left', 'integer', (column) => column.notNull())
      .execute();
    await schema
      .createTable('class')
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('seq', 'bigint', (column) => column.notNull())
      .addColumn('rights_seq', 'bigint', (column) => column.notNull())
      .addColumn('trace', 'bigint', (column) => column.notNull())
      .addColumn('bytes', 'bigint', (column) => column.notNull())
      .addColumn('gone', 'integer', (column) => column.notNull())
      .execute();
    await schema
      .createTable('record')
      .addColumn('class_id', 'text', (column) => column.notNull())
      .addColumn('seq', 'bigint', (column) => column.notNull())
      .addColumn('id', 'text', (column) => column.notNull())
      .addColumn('writer', 'text', (column) => column.notNull())
      .addColumn('count', 'bigint', (column) => column.notNull())
      .addColumn('epoch', 'bigint', (column) => column.notNull())
      .addColumn('lane', 'text', (column) => column.notNull())
      .addColumn('body', 'text', (column) => column.notNull())
      .addColumn('signature', 'text', (column) => column.notNull())
      .addColumn('at', 'bigint', (column) => column.notNull())
      .addColumn('trace', 'bigint', (column) => column.notNull())
      .addPrimaryKeyConstraint('record_place', ['class_id', 'seq'])
      .addUniqueConstraint('record_once', ['class_id', 'id'])
      .execute();
    await schema
      .createTable('invite')
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('class_id', 'text', (column) => column.notNull())
      .addColumn('box', 'text', (column) => column.notNull())
      .addColumn('until', 'bigint', (column) => column.notNull())
      .execute();
  },
];
