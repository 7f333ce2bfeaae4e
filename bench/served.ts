import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fromRoot } from '../house/root.mjs';

/** A server on the embedded database, as a program of its own, of which it is read what it takes. */
export interface MeasuredServer {
  readonly port: number;
  readonly pass: string;
  /** Its memory in KB (1000 bytes), as Linux counts what is resident. */
  memory(): number;
  /** The processor time that it has taken, in seconds. */
  processor(): number;
  stop(): Promise<void>;
}

/** Starts one with an empty database; Linux alone, since it reads `/proc`. */
export async function startServer(): Promise<MeasuredServer> {
  const data = mkdtempSync(join(tmpdir(), 'sweepline-bench-'));
  const options = ['--port', '0', '--data', data, '--new-pass', '100000'];
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', fromRoot('server/main.ts'), ...options],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const { port, pass } = await whenServing(child);
  return {
    port,
    pass,
    memory() {
      const status = readFileSync(`/proc/${child.pid}/status`, 'utf8');
      return (Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) * 1024) / 1000;
    },
    processor() {
      const stat = readFileSync(`/proc/${child.pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
      // Fields 14 and 15 of proc(5), in hundredths of a second.
      return (Number(stat[11]) + Number(stat[12])) / 100;
    },
    async stop() {
      const ended = new Promise((resolve) => child.once('exit', resolve));
      child.kill('SIGTERM');
      await ended;
      rmSync(data, { recursive: true, force: true });
    },
  };
}

function whenServing(child: ChildProcess): Promise<{ port: number; pass: string }> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.once('exit', (code) => reject(new Error(`The server ended with ${code}: ${said}`)));
    child.stdout?.on('data', (data) => {
      said += data;
      const port = /serving at http:\/\/127[.]0[.]0[.]1:(\d+)/.exec(said)?.[1];
      const pass = /\n {4}([A-Z2-9-]{19})\n/.exec(said)?.[1];
      if (port && pass) resolve({ port: Number(port), pass });
    });
  });
}
