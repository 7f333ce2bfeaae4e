import type { Page } from 'playwright-core';
import type { LogEvent } from '../../core/log/event.ts';

/** Waits until all that happened is kept, as the page signs it. */
export async function allKept(page: Page): Promise<void> {
  await page.waitForSelector('html:not([data-unsaved])', { state: 'attached' });
}

/** Every event that the page's own database holds, in the order of their times. */
export async function recorded(page: Page): Promise<readonly LogEvent[]> {
  return page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('sweepline-log'));
    const tx = db.transaction(['loose', 'pages']);
    const loose: LogEvent[] = await asked(tx.objectStore('loose').getAll());
    const pages = await asked(tx.objectStore('pages').getAll());
    db.close();
    const sealed = pages.flatMap(({ classId, text }: { classId: string; text: string }) =>
      JSON.parse(text).map(([id, at, by, kind, body]: readonly unknown[]) => ({
        id,
        classId,
        at,
        by,
        kind,
        body,
      })),
    );
    return [...sealed, ...loose].sort((left, right) => left.at - right.at) as LogEvent[];
  });
}
