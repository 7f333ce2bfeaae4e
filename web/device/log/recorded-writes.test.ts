import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId, eventId, groupId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { createMemoryStore } from './memory-store.ts';
import { withSecondCopy } from './second-copy.ts';
import type { Drawer } from './sheet.ts';

/** One write to a sheet, and the ids of the events that it was to keep. */
interface Write {
  readonly name: string;
  readonly line: string;
  readonly ids: readonly string[];
}

/** The writes of a recording in their order, and after how many of them each append was said to be kept. */
interface Recording {
  readonly writes: readonly Write[];
  readonly kept: readonly { readonly after: number; readonly ids: readonly string[] }[];
}

const note = (id: string, at: number): LogEvent => ({
  id: eventId(id),
  classId: classId('room'),
  at,
  by: 'device',
  kind: 'noted',
  body: { drillId: null, groupId: groupId('all'), text: `„${id}“ ă` },
});

/** A drawer over given texts; `wrote` is told of every line before it is there. */
function drawerOver(
  texts: Map<string, string>,
  wrote: (name: string, line: string) => void,
): Drawer {
  return {
    names: async () => [...texts.keys()],
    read: async (name) => texts.get(name) ?? '',
    add: async (name, line) => {
      wrote(name, line);
      texts.set(name, `${texts.get(name) ?? ''}\n${line}`);
    },
    remove: async (name) => void texts.delete(name),
  };
}

/** Records what windows write that add batches in turn: `turns` names the window and how many events. */
async function record(turns: readonly (readonly [string, number])[]): Promise<Recording> {
  const writes: Write[] = [];
  const kept: { after: number; ids: readonly string[] }[] = [];
  let ids: readonly string[] = [];
  const drawer = drawerOver(new Map(), (name, line) => writes.push({ name, line, ids }));
  const store = createMemoryStore();
  const windows = new Map<string, EventStore>();
  for (const [turn, [session, count]] of turns.entries()) {
    const window = windows.get(session) ?? withSecondCopy(store, { drawer, session });
    windows.set(session, window);
    const batch = Array.from({ length: count }, (_, n) => note(`${turn}-${n}`, turn));
    ids = batch.map(({ id }) => id);
    await window.append(batch);
    kept.push({ after: writes.length, ids });
  }
  return { writes, kept };
}

/** The ids in a class that is opened from sheets alone, by a new window; and once more after another mark. */
async function reopened(texts: Map<string, string>): Promise<readonly string[]> {
  const drawer = drawerOver(texts, () => {});
  const first = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
  const found = await idsIn(first);
  await first.append([note('one more', 99)]);
  await first.close();
  const again = withSecondCopy(createMemoryStore(), { drawer, session: 'last' });
  expect(await idsIn(again)).toEqual([...found, 'one more'].sort());
  await again.close();
  return found;
}

async function idsIn(store: EventStore): Promise<readonly string[]> {
  const read = await store.eventsOf(classId('room'));
  if ('error' in read) throw new Error(read.error.code);
  return read.events.map(({ id }) => id).sort();
}

function sheetsOf(writes: readonly Write[]): Map<string, string> {
  const texts = new Map<string, string>();
  for (const { name, line } of writes) texts.set(name, `${texts.get(name) ?? ''}\n${line}`);
  return texts;
}

const idsOf = (writes: readonly Write[]) => writes.flatMap(({ ids }) => ids).sort();

const turns = fc.array(
  fc.tuple(fc.constantFrom('desk', 'wall', 'tablet'), fc.integer({ min: 1, max: 4 })),
  {
    minLength: 1,
    maxLength: 8,
  },
);

describe('recorded writes', () => {
  it('replayed up to any of them, the next one torn, give what was kept by then and nothing torn', async () => {
    await fc.assert(
      fc.asyncProperty(turns, fc.double({ min: 0, max: 1, noNaN: true }), async (given, share) => {
        const { writes, kept } = await record(given);
        expect(writes).toHaveLength(given.length);
        for (let done = 0; done <= writes.length; done += 1) {
          const before = writes.slice(0, done);
          const next = writes[done];
          const texts = sheetsOf(before);
          if (next) {
            const torn = next.line.slice(0, Math.floor(share * (next.line.length - 1)));
            texts.set(next.name, `${texts.get(next.name) ?? ''}\n${torn}`);
          }
          const found = await reopened(texts);
          expect(found).toEqual(idsOf(before));
          const promised = kept.filter(({ after }) => after <= done).flatMap(({ ids }) => ids);
          expect(found).toEqual(expect.arrayContaining(promised));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('replayed in another order, and some of them twice, give the same', async () => {
    const recorded = turns.chain((given) =>
      fc.tuple(
        fc.constant(given),
        fc.shuffledSubarray([...given.keys(), ...given.keys()], { minLength: given.length }),
      ),
    );
    await fc.assert(
      fc.asyncProperty(recorded, async ([given, order]) => {
        const { writes } = await record(given);
        const replayed = order.flatMap((at) => writes[at] ?? []);
        expect(await reopened(sheetsOf(replayed))).toEqual([...new Set(idsOf(replayed))]);
      }),
      { numRuns: 50 },
    );
  });
});
