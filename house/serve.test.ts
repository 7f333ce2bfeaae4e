import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { get, request } from 'node:http';
import { connect } from 'node:net';
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
  symlinkSync(join(place, 'secret.txt'), join(folder, 'link.txt'));
  symlinkSync(join(place, 'site-of-another'), join(folder, 'linked'));
  writeFileSync(join(folder, 'large.bin'), Buffer.alloc(4_000_000));
  serving = await serve({ folder, port: 0 });
});

afterAll(async () => {
  await serving.stop();
  rmSync(place, { recursive: true });
});

/** Asks without the tidying of addresses that `fetch` does. */
function ask(
  path: string,
  method = 'GET',
  headers: Readonly<Record<string, string>> = {},
): Promise<{ status: number; body: string; location?: string | undefined }> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(serving.url);
    request({ hostname, port, path, method, headers }, (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (part) => {
        body += part;
      });
      const { location } = response.headers;
      const status = response.statusCode ?? 0;
      response.on('end', () => resolve({ status, body, ...(location ? { location } : {}) }));
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
    expect(response.headers.get('content-type')).toBe('text/html;charset=utf-8');
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

  it('lets browsers keep hashed files for good, and asks again for all others', async () => {
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
    `/${'a'.repeat(256)}`,
    `/${'%2e'.repeat(900)}`,
  ])('answers 404 to %s', async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
  });

  it.each(['/link.txt', '/linked/secret.txt'])(
    'follows no link out of the folder: %s',
    async (path) => {
      const said = await ask(path).catch(() => ({ status: 0, body: '' }));
      expect(said.status).not.toBe(200);
      expect(said.body).not.toContain('secret');
    },
  );

  it.each([
    ['GET', '/index.html/', {}],
    ['GET', '/', { range: 'bytes=5-2' }],
    ['GET', '/', { range: 'bytes=-' }],
    ['GET', '/', { range: 'bytes=99999999-' }],
    ['GET', '/%ff', {}],
    ['GET', '/?%', {}],
    ['OPTIONS', '*', {}],
    ['GET', 'http://127.0.0.1/', {}],
  ])('goes on after %s %s', async (method, path, headers) => {
    await ask(path, method, headers).catch(() => {});
    expect((await ask('/')).status).toBe(200);
  });

  it('goes on after what is no request at all', async () => {
    const { hostname, port } = new URL(serving.url);
    for (const said of ['\0\0\0', 'GET', 'GET / HTTP/9.9\r\n\r\n', `GET /${'a'.repeat(99_999)}`]) {
      await new Promise<void>((resolve) => {
        const socket = connect(Number(port), hostname, () => socket.end(said));
        socket.on('close', () => resolve()).on('error', () => {});
        socket.resume();
      });
    }
    expect((await ask('/')).status).toBe(200);
  });

  it('leads the other names of this computer to the one address, and refuses all others', async () => {
    const { host, port } = new URL(serving.url);
    for (const name of [`localhost:${port}`, `LOCALHOST:${port}`, `[::1]:${port}`]) {
      expect(await ask('/x?y', 'GET', { host: name })).toMatchObject({
        status: 307,
        location: `http://${host}/x?y`,
      });
    }
    for (const name of ['example.org', `localhost.example.org:${port}`, '127.0.0.1']) {
      expect((await ask('/', 'GET', { host: name })).status).toBe(421);
    }
  });

  it.skipIf(process.platform !== 'linux')(
    'gives back what it opened for downloads that were broken off',
    async () => {
      const open = () => readdirSync('/proc/self/fd').length;
      const before = open();
      for (let batch = 0; batch < 8; batch++) {
        await Promise.all(
          Array.from(
            { length: 25 },
            () =>
              new Promise<void>((resolve) => {
                const asked = get(new URL('large.bin', serving.url), (response) => {
                  response.once('data', () => asked.destroy());
                  response.once('close', () => resolve());
                  response.on('error', () => {});
                });
                asked.on('error', () => resolve());
              }),
          ),
        );
      }
      await expect.poll(open, { timeout: 5000 }).toBeLessThan(before + 20);
    },
  );

  it('shows what was built again without being started again', async () => {
    writeFileSync(join(folder, 'index.html'), '<p>built again</p>');
    rmSync(join(folder, 'index.html.br'));
    utimesSync(join(folder, 'index.html'), 1, 1);
    expect((await ask('/')).body).toBe('<p>built again</p>');
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
