import type { Page } from 'playwright-core';
import { visitLog } from '../test/browser/log-visit.ts';
import { type Measurement, summary } from './measure.ts';

const EVENTS = 60_000;

/**
 * The log in a real Chromium, on IndexedDB: opening a large class in a page just loaded (reading it,
 * and replaying it), and an append until it is committed. Beside each stands its ratio to a yardstick
 * taken in the same run: for opening, the same events parsed from one JSON text that is in memory
 * already; for appending, the smallest thing that IndexedDB can commit.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const visit = await visitLog();
  const inNewPage = async <Answer>(ask: (page: Page) => Promise<Answer>): Promise<Answer> => {
    const page = await visit.open();
    const answer = await ask(page);
    await page.close();
    return answer;
  };
  try {
    await inNewPage((page) => page.evaluate((size) => log.keepClassYear(size), EVENTS));
    await inNewPage((page) => page.evaluate(() => log.timeOpeningBoth()));
    const both: number[] = [];
    const opened: Awaited<ReturnType<typeof log.timeOpening>>[] = [];
    for (let run = 0; run < 10; run++) {
      opened.push(
        await inNewPage((page) => page.evaluate((size) => log.timeOpening(size), EVENTS)),
      );
      both.push(await inNewPage((page) => page.evaluate(() => log.timeOpeningBoth())));
    }
    const appended = await inNewPage((page) => page.evaluate(() => log.timeAppends()));
    return [
      ...beside(
        'yardstick: as many events parsed from memory',
        opened.map(({ parse }) => parse),
        {
          name: `open a class of ${EVENTS} events`,
          aim: 300,
          values: opened.map(({ open }) => open),
        },
      ),
      summary({ name: '… of which read', unit: 'ms', values: opened.map(({ read }) => read) }),
      summary({ name: '… as the app does, its second copy looked at', unit: 'ms', values: both }),
      ...beside(
        'yardstick: the least that IndexedDB commits',
        appended.map(({ least }) => least),
        {
          name: 'append a mark, committed (means of 20)',
          aim: 5,
          values: appended.map(({ mark }) => mark),
        },
      ),
      ...(['strict', 'alone', 'file'] as const).map((part) =>
        summary({ name: PARTS[part], unit: 'ms', values: appended.map((row) => row[part]) }),
      ),
    ];
  } finally {
    await visit.end();
  }
}

const PARTS = {
  strict: '… the least, down to the disk',
  alone: '… the mark in the database alone',
  file: '… its line in a file alone',
} as const;

/** A yardstick, and what is measured by it. */
function beside(
  name: string,
  values: readonly number[],
  spec: Omit<Parameters<typeof summary>[0], 'unit'>,
): readonly Measurement[] {
  const yardstick = summary({ name, unit: 'ms', values });
  const measured = summary({ ...spec, unit: 'ms' });
  const ratio = (measured.median / yardstick.median).toFixed(2);
  return [yardstick, { ...measured, name: `${measured.name} (${ratio} yardsticks)` }];
}
