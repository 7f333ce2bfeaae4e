/**
 * Runs beside a window and writes its files in the origin's private file system (File System Standard,
 * WHATWG). Only here does a browser write to such a file at once and down to the disk; from a window it
 * takes a copy of the file first.
 */

/** A line for a file, which begins empty; null lets the file go, for whoever wants to remove it. */
export interface LineToAdd {
  readonly folder: string;
  readonly file: string;
  readonly line: string | null;
}

/** What became of it, in the order in which it was asked: null when it is on the disk, else what was wrong. */
export type LineAdded = string | null;

/** A file held open for writing, by this window alone; TypeScript's library has it for workers only. */
interface HeldFile {
  getSize(): number;
  write(bytes: Uint8Array, place: { readonly at: number }): number;
  flush(): void;
  close(): void;
}

/**
 * So long after its last line a file is still held, in milliseconds: marks come every few seconds, and
 * to open it again takes twice as long as to write.
 */
const HELD_FOR = 5000;

let held: { readonly file: string; readonly open: HeldFile } | null = null;
let letGoLater: ReturnType<typeof setTimeout> | undefined;
let work: Promise<unknown> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<LineToAdd>) => {
  work = work.then(async () => {
    let outcome: LineAdded = null;
    try {
      if (data.line === null) letGo();
      else write(await hold(data), data.line);
    } catch (thrown) {
      outcome = String(thrown);
    }
    postMessage(outcome);
  });
});

/** The file of a line, opened when it is not open. */
async function hold({ folder, file }: LineToAdd): Promise<HeldFile> {
  clearTimeout(letGoLater);
  letGoLater = setTimeout(letGo, HELD_FOR);
  if (held?.file === file) return held.open;
  letGo();
  const root = await navigator.storage.getDirectory();
  const inside = await root.getDirectoryHandle(folder, { create: true });
  const handle = (await inside.getFileHandle(file, { create: true })) as FileSystemFileHandle & {
    createSyncAccessHandle(): Promise<HeldFile>;
  };
  held = { file, open: await handle.createSyncAccessHandle() };
  return held.open;
}

/** Writes a line behind a break, so that a line torn before it stands alone, and waits for the disk. */
function write(file: HeldFile, line: string): void {
  const bytes = new TextEncoder().encode(`\n${line}`);
  if (file.write(bytes, { at: file.getSize() }) < bytes.length) throw new Error('No more room.');
  file.flush();
}

function letGo(): void {
  held?.open.close();
  held = null;
}
