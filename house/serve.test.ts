import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Serving, serve } from './serve.ts';

const place = mkdtempSync(join(tmpdir(), 'serve-'));
const folder = join(place, 'site');
let serving: Serving;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(place, 'site-of-another'));
  writeFileSync(join(place, 'secret.txt'), 'secret');
  writeFileSync(join(place, 'site-of-another', 'secret.txt'), 'secret');
  writeFileSync(join(folder, '.hidden'), 'secret');
  writeFileSync(join(folder, 'index.html'), '<p>plain</p>');
  writeFileSync(join(folder, 'index.html.br'), brotliCompressSync('<p>packed</p>'));
  writeFileSync(join(folder, 'assets', 'a-1234.woff2'), 'font');
  serving = await serve({ folder, port: 0 });
});

afterAll(async () => {
  await serving.stop();
  rmSync(place, { recursive: true });
});

/** Asks without the tidying of addresses that `fetch` does. */
function ask(path: string, method = 'GET'): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(serving.url);
    request({ hostname, port, path, method }, (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (part) => {
        body += part;
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, body }));
    })
      .on('error', reject)
      .end();
  });
}

describe('the server of the built app', () => {
  it('listens on this computer only', () => {
    expect(new URL(serving.url).hostname).toBe('127.0.0.1');
  });

  it('gives the page under the bare address, and never lets scripts from elsewhere or inline run', async () => {
    const response = await fetch(serving.url, { headers: { 'accept-encoding': 'identity' } });
    expect(await response.text()).toBe('<p>plain</p>');
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    const policy = response.headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    expect(response.headers.get('referrer-policy')).toBe('no-referrer');
  });

  it('gives the brotli copy only to those who take it', async () => {
    const taking = await fetch(serving.url, { headers: { 'accept-encoding': 'gzip, br' } });
    expect(await taking.text()).toBe('<p>packed</p>');
    const refusing = await fetch(serving.url, { headers: { 'accept-encoding': 'br;q=0, gzip' } });
    expect(await refusing.text()).toBe('<p>plain</p>');
  });

  it('lets browsers keep hashed files for good, and asks anew for all others', async () => {
    const font = await fetch(new URL('assets/a-1234.woff2', serving.url));
    expect(font.headers.get('content-type')).toBe('font/woff2');
    expect(font.headers.get('cache-control')).toContain('immutable');
    const page = await fetch(serving.url);
    expect(page.headers.get('cache-control')).toBe('no-cache');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/../site-of-another/secret.txt',
    '/assets/../../secret.txt',
    '//etc/passwd',
    '/.hidden',
    '/%',
    '/%00',
    '/assets',
    '/assets/',
    '/absent.js',
  ])('answers 404 to %s', async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
  });

  it('takes nothing in', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    expect(await ask('/', 'HEAD')).toEqual({ status: 200, body: '' });
  });

  it('rejects with EADDRINUSE when the port is taken', async () => {
    const port = Number(new URL(serving.url).port);
    await expect(serve({ folder, port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});
