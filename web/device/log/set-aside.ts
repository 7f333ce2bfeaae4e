import type { LogEvent } from '../../../core/log/event.ts';
import { type Connection, connect, isAsideRecord } from './database.ts';
import { createFileDrawer } from './file-drawer.ts';
import { type Drawer, parseSheet } from './sheet.ts';

/** Something that is kept apart from the classes, since it could not be read or kept with the rest of them. */
export interface SetAside {
  /**
   * Why: one `entry` no longer reads as it was written; a `page` of up to a thousand does not, whose readable
   * ones were kept; a `sheet` of the second copy does not, which was written again from the first; or an entry
   * could not be kept with the others, `as-text` it could.
   */
  readonly reason: 'entry' | 'page' | 'sheet' | 'as-text';
  /** What it says, as it was found; an entry as JSON. */
  readonly text: string;
  /** Where it stands now: a key of the database, or the name of a sheet. */
  readonly place: number | string;
}

/** What is set aside on this device, and how to throw it away. */
export interface AsideShelf {
  /** Everything, oldest first; what cannot be reached is left out. */
  all(): Promise<readonly SetAside[]>;
  /**
   * Keeps events that the store could not take: each as the text of what can be said of it as JSON. One that
   * has no such text is not kept. Rejects when the browser refuses.
   */
  keep(events: readonly LogEvent[]): Promise<void>;
  /** Throws these away for good. Rejects when the browser refuses. */
  throwAway(pieces: readonly SetAside[]): Promise<void>;
}

/** What this device has set aside, in both copies. */
export function createAsideShelf(
  connection: Connection = connect(),
  drawer: Drawer = createFileDrawer(),
): AsideShelf {
  return {
    async all() {
      const found = [fromDatabase(connection), fromDrawer(drawer)];
      return (await Promise.all(found.map((one) => one.catch(() => [])))).flat();
    },
    async keep(events) {
      const db = await connection.open();
      const tx = db.transaction('aside', 'readwrite', { durability: 'strict' });
      for (const event of events) {
        const text = jsonOf(event);
        if (text !== null) void tx.store.add({ classId: event.classId, record: text });
      }
      await tx.done;
    },
    async throwAway(pieces) {
      const db = await connection.open();
      const tx = db.transaction('aside', 'readwrite');
      const sheets: string[] = [];
      for (const { place } of pieces) {
        if (typeof place === 'string') sheets.push(place);
        else void tx.store.delete(place);
      }
      await tx.done;
      await connection.close();
      for (const name of sheets) await drawer.remove(name);
    },
  };
}

async function fromDatabase(connection: Connection): Promise<readonly SetAside[]> {
  const found: SetAside[] = [];
  const db = await connection.open();
  let cursor = await db.transaction('aside').store.openCursor();
  while (cursor) {
    found.push({ ...readAside(cursor.value), place: cursor.key });
    cursor = await cursor.continue();
  }
  await connection.close();
  return found;
}

/** Records of the second version stand there as they were found, without a reason. */
function readAside(value: unknown): Pick<SetAside, 'reason' | 'text'> {
  const record = isAsideRecord(value) ? value.record : value;
  if (typeof record === 'string') return { reason: 'as-text', text: record };
  const text = typeof record === 'object' && record !== null && 'text' in record && record.text;
  if (typeof text === 'string') return { reason: 'page', text };
  return { reason: 'entry', text: JSON.stringify(record) ?? String(record) };
}

async function fromDrawer(drawer: Drawer): Promise<readonly SetAside[]> {
  const names = (await drawer.names()).filter((name) => parseSheet(name)?.kind === 'aside');
  const texts = names.sort().map(async (name): Promise<SetAside> => {
    return { reason: 'sheet', text: await drawer.read(name), place: name };
  });
  return Promise.all(texts);
}

/** An event as JSON; null when it has none: it is nested too deep, or goes round in a circle. */
export function jsonOf(event: LogEvent): string | null {
  try {
    return JSON.stringify(event);
  } catch {
    return null;
  }
}
