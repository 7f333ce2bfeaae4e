import { createReadStream, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { headers } from './headers.ts';

/** A running server. */
export interface Serving {
  /** Its address, such as `http://127.0.0.1:4173/`. */
  readonly url: string;
  /** Stops it at once, open connections included. */
  stop(): Promise<void>;
}

/** Where to serve from and on which port; 0 takes any free one. */
export interface ServingSpec {
  readonly folder: string;
  readonly port: number;
}

/**
 * Serves a folder of built files to this computer only (127.0.0.1), with the app's security headers,
 * and brotli copies (`x.js.br`) to browsers that take them. Nothing outside the folder can be had.
 * Rejects when the port is taken (`EADDRINUSE`).
 */
export async function serve({ folder, port }: ServingSpec): Promise<Serving> {
  const server = createServer((request, response) => answerWithFile(folder, request, response));
  await listening(server, port);
  const address = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${address.port}/`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve());
  });
}

/** Answers a request with a file of the folder, with the app's security headers; 404 when there is none. */
export function answerWithFile(
  folder: string,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    sayStatus(response, 405, 'Only reading is possible here.');
    return;
  }
  const file = fileFor(folder, request.url ?? '/');
  const size = file === undefined ? undefined : sizeOf(file);
  if (file === undefined || size === undefined) {
    sayStatus(response, 404, 'There is no such page.');
    return;
  }
  const packedSize = takesBrotli(request) ? sizeOf(`${file}.br`) : undefined;
  response.setHeader('Content-Type', types[extname(file)] ?? 'application/octet-stream');
  response.setHeader('Cache-Control', cacheRule(file));
  response.setHeader('Vary', 'Accept-Encoding');
  response.setHeader('Content-Length', packedSize ?? size);
  if (packedSize !== undefined) response.setHeader('Content-Encoding', 'br');
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(packedSize === undefined ? file : `${file}.br`)
    .on('error', () => response.destroy())
    .pipe(response);
}

/**
 * The file that an address names, or undefined when it names none: broken escapes, hidden files, and
 * all that would lead out of the folder.
 */
function fileFor(folder: string, url: string): string | undefined {
  const path = decoded(url.split(/[?#]/, 1)[0] ?? '/');
  if (path === undefined || /[\0\\]|(^|\/)\./.test(path)) return undefined;
  const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return file.startsWith(normalize(folder + sep)) ? file : undefined;
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}

function sizeOf(file: string): number | undefined {
  const found = statSync(file, { throwIfNoEntry: false });
  return found?.isFile() ? found.size : undefined;
}

function takesBrotli(request: IncomingMessage): boolean {
  return /\bbr\b(?!\s*;\s*q=0(?:\.0*)?\s*(?:,|$))/.test(String(request.headers['accept-encoding']));
}

/** Names with a hash in them never change their content; all others are asked for anew. */
function cacheRule(file: string): string {
  return /[/\\]assets[/\\]/.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache';
}

function sayStatus(response: ServerResponse, status: number, line: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${line}\n`);
}

const types: Readonly<Record<string, string>> = {
  '.bin': 'application/octet-stream',
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};
