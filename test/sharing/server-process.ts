import { type ChildProcess, spawn } from 'node:child_process';

/** A server as a program of its own. */
export interface ServerProcess {
  readonly process: ChildProcess;
  readonly port: number;
  /** All that it has said, on both of its outputs. */
  readonly said: () => string;
}

/** Starts one, and resolves when it says that it serves. */
export function startServerProcess({
  url,
  folder,
}: {
  readonly url: string | null;
  readonly folder: string;
}): Promise<ServerProcess> {
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', 'server/main.ts', '--port', '0', '--data', folder],
    { env: { ...process.env, ...(url ? { DATABASE_URL: url } : {}) }, stdio: 'pipe' },
  );
  return new Promise((resolve, reject) => {
    let said = '';
    child.once('exit', (code) => reject(new Error(`The server ended with ${code}: ${said}`)));
    const hear = (data: Buffer): void => {
      said += data;
      const port = /serving at http:\/\/127[.]0[.]0[.]1:(\d+)/.exec(said)?.[1];
      if (port) resolve({ process: child, port: Number(port), said: () => said });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
  });
}
