import type { Page } from 'playwright-core';
import type { LogEvent } from '../../core/log/event.ts';
import type { PageRecord } from '../../web/device/log/database.ts';
import { readPage } from '../../web/device/log/page.ts';

/** Waits until all that happened is kept, as the page signs it. */
export async function allKept(page: Page): Promise<void> {
  await page.waitForFunction(() => !('unsaved' in document.documentElement.dataset));
}

/** Whether something that happened is not kept yet, as the page signs it. */
export function isUnsaved(page: Page): Promise<boolean> {
  return page.evaluate(() => 'unsaved' in document.documentElement.dataset);
}

/** Every event that the page's own database holds, in the order of their times. */
export async function recorded(page: Page): Promise<readonly LogEvent[]> {
  const { loose, pages } = await page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('sweepline-log'));
    const tx = db.transaction(['loose', 'pages']);
    const loose: LogEvent[] = await asked(tx.objectStore('loose').getAll());
    const pages: PageRecord[] = await asked(tx.objectStore('pages').getAll());
    db.close();
    return { loose, pages };
  });
  const sealed = pages.flatMap(({ classId, text }) => readPage(classId, text).events);
  return [...sealed, ...loose].sort((left, right) => left.at - right.at);
}
