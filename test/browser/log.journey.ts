import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { STORE_LAWS } from '../event-store-contract.ts';
import { openLogSite } from './log-site.ts';
import { type LogVisit, visitLog } from './log-visit.ts';

let visit: LogVisit;

beforeAll(async () => {
  visit = await visitLog();
});
afterAll(() => visit?.end());

describe('the store on IndexedDB, in a real browser', () => {
  let lawful: Page;
  beforeAll(async () => {
    lawful = await visit.open();
  });

  for (const [place, { name }] of STORE_LAWS.entries()) {
    it(name, () =>
      lawful.evaluate(async (n) => {
        const store = log.createIndexedStore(`law ${n}`);
        await log.STORE_LAWS[n]?.check(store);
        await store.close();
      }, place),
    );
  }

  it('has all events after the browser was closed, loose and sealed ones', async () => {
    const page = await visit.open();
    const kept = await page.evaluate(async () => {
      const store = log.createIndexedStore('reopened');
      const events = log.classYear(log.classId('class'), 2000);
      for (let from = 0; from < events.length; from += 190) {
        await store.append(events.slice(from, from + 190));
        if (from === 1140) await store.eventsOf(log.classId('class'));
      }
      await store.close();
      return log.mergeEvents(events, []);
    });
    expect(await countsIn(page, 'reopened')).toEqual({ loose: 670, pages: 2 });
    await visit.restart();
    const again = await visit.open();
    const found = await again.evaluate(async () => {
      const read = await log.createIndexedStore('reopened').eventsOf(log.classId('class'));
      return 'events' in read ? log.mergeEvents(read.events, []) : [];
    });
    expect(found).toEqual(kept);
    await again.close();
  });
});

describe('when storage fails', () => {
  it('is refused: the class goes on in memory, says so, and can be saved as a file', async () => {
    const page = await visit.open({
      prepare: () => {
        Object.defineProperty(globalThis, 'indexedDB', {
          get() {
            throw new DOMException('refused', 'SecurityError');
          },
        });
      },
    });
    expect(await page.evaluate(nameTheClass)).toEqual({
      name: 'Room 4',
      trouble: 'refused',
      exported: 2,
    });
    await page.close();
  });

  it('is full: what was kept stays, what was not is held and offered, and is kept once there is room', async () => {
    // A site of its own: the browser asks for the room of each only now and then.
    const site = await openLogSite();
    const page = await visit.open(site);
    const session = await visit.context.newCDPSession(page);
    const { origin } = new URL(site.url);
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 500_000 });
    await page.evaluate(async () => {
      const store = log.createDeviceStore();
      Object.assign(globalThis, { store, opened: await log.openClass(store, log.classId('full')) });
      await opened.record(log.note('before it was full')).kept;
    });
    const full = await page.evaluate(async () => {
      const bytes = Array.from({ length: 40 }, () =>
        crypto.getRandomValues(new Uint8Array(50_000)),
      );
      const outcome = await opened.record(log.note(bytes.join())).kept;
      return {
        code: 'error' in outcome ? outcome.error.code : 'kept',
        notes: opened.state.value.notes.length,
        unsaved: store.unsaved.value.length,
      };
    });
    expect(full).toEqual({ code: 'full', notes: 2, unsaved: 1 });
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    const after = await page.evaluate(async () => {
      const outcome = await opened.record(log.note('there is room again')).kept;
      const read = await log.createIndexedStore().eventsOf(log.classId('full'));
      return {
        kept: 'kept' in outcome,
        unsaved: store.unsaved.value.length,
        read: 'events' in read && read.events.length,
      };
    });
    expect(after).toEqual({ kept: true, unsaved: 0, read: 3 });
    await page.close();
    await site.stop();
  });

  it('is thrown away by the browser: everything comes back from the second copy', async () => {
    const site = await openLogSite();
    const page = await visit.open(site);
    await page.evaluate(async () => {
      const store = log.createDeviceStore();
      const { record } = await log.openClass(store, log.classId('lost'));
      for (const text of ['one', 'two', 'ă']) await record(log.note(text)).kept;
      await store.close();
      await new Promise((resolve) => {
        indexedDB.deleteDatabase('sweepline-log').onsuccess = resolve;
      });
    });
    await page.reload();
    const notes = await page.evaluate(async () => {
      const { state } = await log.openClass(log.createDeviceStore(), log.classId('lost'));
      return state.value.notes.map(({ text }) => text);
    });
    expect(notes).toEqual(['one', 'two', 'ă']);
    await page.close();
    await site.stop();
  });

  it('loses a page, a record and a sign of the database: everything comes back, and it says how much', async () => {
    const site = await openLogSite();
    const page = await visit.open(site);
    await page.evaluate(async () => {
      const store = log.createDeviceStore();
      await store.append(log.classYear(log.classId('part'), 3000));
      const { record } = await log.openClass(store, log.classId('part'));
      for (const text of ['one', 'two', 'three', 'four', 'five', 'six'])
        await record(log.note(text)).kept;
      await store.close();
      const db = await new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open('sweepline-log');
        opening.onsuccess = () => resolve(opening.result);
      });
      const tx = db.transaction(['pages', 'loose'], 'readwrite');
      tx.objectStore('pages').delete(['part', 0]);
      const reading = tx.objectStore('pages').get(['part', 1]);
      reading.onsuccess = () => {
        const { text, ...rest } = reading.result;
        tx.objectStore('pages').put({ ...rest, text: text.replace('"texts"', '"tests"') });
      };
      const keys = tx.objectStore('loose').getAllKeys();
      keys.onsuccess = () => tx.objectStore('loose').delete(keys.result[0] as IDBValidKey);
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      db.close();
    });
    for (const putBack of [2049, 0]) {
      await page.reload();
      const found = await page.evaluate(async () => {
        const store = log.createDeviceStore();
        const { state } = await log.openClass(store, log.classId('part'));
        const read = await store.eventsOf(log.classId('part'));
        const notes = state.value.notes.slice(-6).map(({ text }) => text);
        await store.close();
        return { count: 'events' in read && read.events.length, notes, amiss: store.amiss.value };
      });
      expect(found.count).toBe(3006);
      expect([...found.notes].sort()).toEqual(['five', 'four', 'one', 'six', 'three', 'two']);
      expect(found.amiss).toEqual({
        putBack,
        copied: 0,
        damaged: putBack === 0 ? 0 : 1,
        twofold: 0,
      });
    }
    await page.close();
    await site.stop();
  });

  it('is forgotten in one window just after another wrote on its second copy', async () => {
    const site = await openLogSite();
    const [one, other] = [await visit.open(site), await visit.open(site)];
    const sheets = await one.evaluate(async () => {
      const store = log.createDeviceStore();
      const { record } = await log.openClass(store, log.classId('gone'));
      await record(log.note('one')).kept;
      return log.sheetsOfSecondCopy();
    });
    expect(sheets).toHaveLength(1);
    const left = await other.evaluate(async () => {
      await log.createDeviceStore().forget(log.classId('gone'));
      return log.sheetsOfSecondCopy();
    });
    expect(left).toEqual(['gone/~gone']);
    for (const page of [one, other]) await page.close();
    await site.stop();
  });

  it('keeps what the store cannot take as text beside it: it is there after a reload, for whoever looks', async () => {
    const page = await visit.open();
    await page.evaluate(async () => {
      const store = log.createDeviceStore();
      const odd = { text: 'Robin read alone', does: () => 'what no store keeps' };
      await store.append([
        {
          id: log.eventId('odd'),
          classId: log.classId('odd room'),
          at: 1,
          by: 'desk',
          kind: 'noted',
          body: odd,
        },
      ]);
      await store.close();
    });
    await page.reload();
    await page.waitForFunction(() => 'log' in globalThis);
    const shelf = () =>
      page.evaluate(async () => {
        const aside = log.createAsideShelf();
        const all = (await aside.all()).filter(({ reason }) => reason === 'as-text');
        await aside.throwAway(all);
        return all.map(({ text }) => JSON.parse(text));
      });
    await expect.poll(shelf).toMatchObject([{ id: 'odd', body: { text: 'Robin read alone' } }]);
    expect(await shelf()).toEqual([]);
    await page.close();
  });

  it('is of a newer version: it is left as it is', async () => {
    const page = await visit.open();
    const outcome = await page.evaluate(async () => {
      await new Promise<void>((resolve) => {
        const opening = indexedDB.open('newer', 99);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      });
      return log.createIndexedStore('newer').append([]);
    });
    expect(outcome).toMatchObject({ error: { code: 'newer' } });
    await page.close();
  });

  it('makes way for a newer version in another window, and from then on holds what is recorded', async () => {
    const page = await visit.open();
    const outcome = await page.evaluate(async () => {
      const store = log.createIndexedStore('upgraded');
      await store.append([]);
      await new Promise<void>((resolve) => {
        const opening = indexedDB.open('upgraded', 99);
        opening.onsuccess = () => resolve();
      });
      return store.append([]);
    });
    expect(outcome).toMatchObject({ error: { code: 'newer' } });
    await page.close();
  });
});

describe('a class on this device', () => {
  it('is one in two windows, whichever of them records', async () => {
    const [desk, stage] = [await visit.open(), await visit.open()];
    for (const page of [desk, stage]) await openShared(page);
    await desk.evaluate(() => opened.record(log.note('from the desk')).kept);
    await stage.waitForFunction(() => opened.state.value.notes.length === 1);
    await stage.evaluate(() => opened.record(log.note('from the stage')).kept);
    await desk.waitForFunction(() => opened.state.value.notes.length === 2);
    const states = [desk, stage].map((page) =>
      page.evaluate(() => opened.state.value.notes.map(({ id, text }) => [id, text])),
    );
    expect(await states[0]).toEqual(await states[1]);
    await stage.close();
    await desk.close();
  });

  it('has after a reload what was kept when the window was closed mid-run, and the last word stands', async () => {
    const page = await visit.open();
    await openShared(page);
    const kept = await page.evaluate(async () => {
      for (let n = 0; n < 20; n++) await opened.record(log.note(`mid-run ${n}`)).kept;
      const now = Date.now();
      Date.now = () => now - 86_400_000;
      await opened.record(log.note('after the clock was set back')).kept;
      for (let n = 0; n < 20; n++) opened.record(log.note(`not waited for ${n}`));
      return opened.state.value.notes.slice(0, 23).map(({ text }) => text);
    });
    await page.close();
    const again = await visit.open();
    await openShared(again);
    const found = await again.evaluate(() => opened.state.value.notes.map(({ text }) => text));
    expect(found.slice(0, 23)).toEqual(kept);
    expect(found[22]).toBe('after the clock was set back');
    await again.close();
  });

  it('has, once it is shared, all that is recorded noted as to be sent, and nothing that came from afar', async () => {
    const page = await visit.open();
    const outcome = await page.evaluate(async () => {
      const room = log.classId('between devices');
      const store = log.createDeviceStore();
      const noted = async () => (await store.shared.unsent(room)).map(({ id }) => id);
      const own = await log.openClass(store, room);
      await own.record(log.note('alone')).kept;
      const before = await noted();
      const how = { algorithm: 'ECDSA', name: 'ECDSA', namedCurve: 'P-256' };
      const sign = await crypto.subtle.generateKey(how, false, ['sign', 'verify']);
      const keys = { sign, box: sign };
      const nobody = { founder: 'me', invitation: null, rights: [], seen: {}, told: null };
      const followed = { cursor: 0, trace: 0 };
      await store.shared.begin({ classId: room, by: 'here', keys, followed, ...nobody }, []);
      const shared = await log.openClass(store, room);
      const { events, kept } = shared.record(log.note('to be sent'));
      await kept;
      const after = await noted();
      const far = {
        ...(events[0] as (typeof events)[number]),
        id: log.eventId('from afar'),
        by: 'phone',
      };
      await store.receive([far]);
      const received = await noted();
      await store.receive([events[0] as (typeof events)[number]]);
      const held = (await store.shared.of(room))?.keys.sign.privateKey.extractable;
      const read = await store.eventsOf(room);
      const last = await noted();
      await store.forget(room);
      return {
        before,
        isOwn: after.join() === events[0]?.id && events[0]?.by === 'here',
        received: received.length,
        last,
        held,
        count: 'events' in read ? read.events.length : 0,
        left: [await store.shared.of(room), await noted()],
      };
    });
    expect(outcome).toEqual({
      before: [],
      isOwn: true,
      received: 1,
      last: [],
      held: false,
      count: 3,
      left: [null, []],
    });
    await page.close();
  });

  it('is saved as a locked file and brought in elsewhere, a second time without effect', async () => {
    const page = await visit.open();
    const outcome = await page.evaluate(async () => {
      const events = log.classYear(log.classId('class'), 3000);
      const saved = await log.exportLog(events, 'moss and fern');
      if ('error' in saved) return saved;
      const store = log.createIndexedStore('elsewhere');
      const here = { device: 'desk', now: () => events.at(-1)?.at ?? 0, newId: () => 'none' };
      const first = await log.importLog(store, saved.text, 'moss and fern', here);
      const second = await log.importLog(store, saved.text, 'moss and fern', here);
      const read = await store.eventsOf(log.classId('class'));
      const same =
        'events' in read &&
        JSON.stringify(log.mergeEvents(read.events, [])) ===
          JSON.stringify(log.mergeEvents(events, []));
      return { first, second, same, readable: saved.text.includes('Room 4') };
    });
    expect(outcome).toMatchObject({
      first: { added: 3000, known: 0 },
      second: { added: 0, known: 3000 },
      same: true,
      readable: false,
    });
    await page.close();
  });

  it('asks the browser to keep it, and hears what the browser says', async () => {
    const page = await visit.open();
    const answers = await page.evaluate(async () => {
      const real = await log.askToPersist();
      const said: string[] = [real];
      const storage = navigator.storage;
      for (const answer of [true, false]) {
        storage.persisted = async () => false;
        storage.persist = async () => answer;
        said.push(await log.askToPersist());
      }
      storage.persist = async () => {
        throw new TypeError('no');
      };
      return [...said, await log.askToPersist()];
    });
    expect(['granted', 'denied']).toContain(answers[0]);
    expect(answers.slice(1)).toEqual(['granted', 'denied', 'unknown']);
    await page.close();
  });
});

/** Opens one class in a page, as `opened`. */
function openShared(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const store = log.createDeviceStore();
    Object.assign(globalThis, { store, opened: await log.openClass(store, log.classId('shared')) });
  });
}

/** In the page: names a class, notes something, and saves what could not be kept as a file. */
async function nameTheClass() {
  const store = log.createDeviceStore();
  const { state, record } = await log.openClass(store, log.classId('memory'));
  await record({
    kind: 'set',
    body: { of: 'class', id: log.classId('memory'), field: 'name', value: 'Room 4' },
  }).kept;
  await record(log.note('still here')).kept;
  const saved = await log.exportLog(store.unsaved.value, null);
  return {
    name: state.value.name,
    trouble: store.trouble.value?.code,
    exported: 'text' in saved ? saved.text.trimEnd().split('\n').length - 2 : 0,
  };
}

/** How many records are in two stores of a database. */
function countsIn(page: Page, name: string): Promise<{ loose: number; pages: number }> {
  return page.evaluate(async (database) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open(database);
      opening.onsuccess = () => resolve(opening.result);
    });
    const count = (store: string) =>
      new Promise<number>((resolve) => {
        const counting = db.transaction(store).objectStore(store).count();
        counting.onsuccess = () => resolve(counting.result);
      });
    const counts = { loose: await count('loose'), pages: await count('pages') };
    db.close();
    return counts;
  }, name);
}
