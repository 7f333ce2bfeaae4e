import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createServer as createSilent } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { serve } from './serve.ts';
import { type PortTaken, takePort } from './take-port.ts';

const place = mkdtempSync(join(tmpdir(), 'take-port-'));
const stops: (() => Promise<unknown>)[] = [];

beforeEach(() => {
  mkdirSync(place, { recursive: true });
});
afterEach(async () => {
  for (const stop of stops.splice(0)) await stop();
  rmSync(place, { recursive: true });
});

/** A folder of a built app that was made from these sources. */
function built(madeFrom: string): string {
  const folder = join(place, madeFrom);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<p>app</p>');
  writeFileSync(join(folder, 'made-from.txt'), madeFrom);
  writeFileSync(join(folder, 'manifest.webmanifest'), '{"name":"Sweepline","lang":"en-US"}');
  return folder;
}

async function take(asked: string | undefined, first: number): Promise<PortTaken> {
  const taken = await takePort({ folder: built('this'), asked, first });
  if ('serving' in taken) stops.push(taken.serving.stop);
  return taken;
}

/** The port on which a program listens; it is ended after the test. */
async function portOf(program: Pick<Server, 'listen' | 'address' | 'close' | 'once'>) {
  await new Promise<void>((resolve) => program.listen(0, '127.0.0.1', resolve));
  stops.push(() => new Promise((resolve) => program.close(resolve)));
  return (program.address() as AddressInfo).port;
}

/** The port of a Sweepline that runs already. */
async function portOfRunning(madeFrom: string): Promise<number> {
  const { url, stop } = await serve({ folder: built(madeFrom), port: 0 });
  stops.push(stop);
  return Number(new URL(url).port);
}

const other = () => createServer((_, response) => response.end('something else'));

it.each([undefined, 'asked'])('names the very Sweepline that runs on the port', async (asked) => {
  const port = await portOfRunning('this');
  expect(await take(asked && String(port), port)).toEqual({
    running: `http://127.0.0.1:${port}/`,
    isSameBuild: true,
  });
});

it('names a Sweepline of another build, and starts no second, empty one beside it', async () => {
  const port = await portOfRunning('that');
  expect(await take(undefined, port)).toEqual({
    running: `http://127.0.0.1:${port}/`,
    isSameBuild: false,
  });
});

it('goes to a later port where another program has the usual one, and knows that it is another', async () => {
  const port = await portOf(other());
  const taken = await take(undefined, port);
  expect('serving' in taken && taken.isElsewhere).toBe(true);
  expect('serving' in taken && Number(new URL(taken.serving.url).port)).toBeGreaterThan(port);
});

it('is not held up by a program that never answers, nor fooled by one without end', async () => {
  const silent = createSilent((socket) => socket.resume());
  const endless = createServer((_, response) => {
    const on = setInterval(() => response.write('0'.repeat(1000)), 1);
    response.on('close', () => clearInterval(on));
  });
  for (const program of [silent, endless]) {
    const taken = await take(undefined, await portOf(program as Server));
    expect('serving' in taken && taken.isElsewhere).toBe(true);
  }
}, 20_000);

it('takes the port that was asked for or says that it is in use', async () => {
  const port = await portOf(other());
  await expect(take(String(port), 4173)).rejects.toThrow(`Port ${port} is in use`);
  const taken = await take('0', 4173);
  expect('serving' in taken && taken.isElsewhere).toBe(false);
});

it.each(['abc', '-1', '65536', '4173.5'])('says what a port is: %s', async (asked) => {
  await expect(take(asked, 4173)).rejects.toThrow('should be a number up to 65535');
});
