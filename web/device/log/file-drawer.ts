import type { LineAdded, LineToAdd } from './file-worker.ts';
import type { Drawer } from './sheet.ts';

/** So long a line may take to reach the disk, in milliseconds: a copy that hangs must hold nothing up. */
const PATIENCE = 5000;

/**
 * A drawer in the origin's private file system, apart from the browser's databases, each sheet a file of
 * its own. Every promise rejects where there is no such thing.
 */
export function createFileDrawer(folder = 'sweepline-second-copy'): Drawer {
  const writer = createWriter();
  const inside = async () => {
    const root = await navigator.storage.getDirectory();
    return root.getDirectoryHandle(folder, { create: true });
  };
  return {
    async names() {
      const names: string[] = [];
      for await (const file of (await inside()).keys()) names.push(decodeURIComponent(file));
      return names;
    },
    async read(name) {
      const handle = await (await inside()).getFileHandle(encodeURIComponent(name));
      return (await handle.getFile()).text();
    },
    add: (name, line) => writer.ask({ folder, file: encodeURIComponent(name), line }),
    async remove(name) {
      const file = encodeURIComponent(name);
      if (writer.isAtWork()) await writer.ask({ folder, file, line: null });
      await (await inside()).removeEntry(file).catch(unlessGone);
    },
  };
}

function unlessGone(thrown: unknown): void {
  if (!(thrown instanceof DOMException && thrown.name === 'NotFoundError')) throw thrown;
}

/** Where lines are added: a worker, which begins with the first of them. */
function createWriter() {
  const waiting: ((outcome: LineAdded) => void)[] = [];
  let worker: Worker | null = null;
  let isBroken = false;
  const start = () => {
    const started = new Worker(new URL('./file-worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<LineAdded>) => waiting.shift()?.(data);
    started.onerror = () => {
      isBroken = true;
      for (const hear of waiting.splice(0)) hear('There is no worker.');
    };
    return started;
  };
  return {
    isAtWork: () => worker !== null && !isBroken,
    ask: (line: LineToAdd): Promise<void> =>
      new Promise((done, fail) => {
        if (isBroken) throw new Error('There is no worker.');
        worker ??= start();
        const late = setTimeout(() => fail(new Error('It takes too long.')), PATIENCE);
        waiting.push((outcome) => {
          clearTimeout(late);
          if (outcome === null) done();
          else fail(new Error(outcome));
        });
        worker.postMessage(line);
      }),
  };
}
