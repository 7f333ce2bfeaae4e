import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import sirv from 'sirv';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { fromRoot } from '../../house/root.mjs';
import { type Visit, visit } from './visit.ts';

/** The built folder on a plain web server of somebody else, below a path, with no header of ours. */
const PATH = '/schools/oak/warm-up';
const files = sirv(fromRoot('dist'), { dev: false });
const server: Server = createServer((request, response) => {
  const { url = '/' } = request;
  if (!url.startsWith(`${PATH}/`)) return void response.writeHead(404).end();
  request.url = url.slice(PATH.length);
  files(request, response, () => void response.writeHead(404).end());
});
let current: Visit;
let address: string;

beforeAll(async () => {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}${PATH}/`;
  current = await visit({ keepsApp: true });
});
afterAll(async () => {
  await current?.end();
  server.closeAllConnections();
  server.close();
});

it('runs from any path of a plain web server, asks for nothing outside it, and opens without a network', async () => {
  const { page, requests, errors, url: own } = current;
  await page.goto(`${address}#/class`, { waitUntil: 'load' });
  await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
  const asked = requests.filter((url) => !url.startsWith(own));
  expect(asked.filter((url) => !url.startsWith(address))).toEqual([]);
  expect(asked.length).toBeGreaterThan(5);
  expect(errors).toEqual([]);
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
  await page.reload({ waitUntil: 'load' });
  await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
});
