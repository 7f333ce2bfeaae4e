import { lstatSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, sep } from 'node:path';
import type { Readable } from 'node:stream';
import sirv from 'sirv';
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

/** The one name under which the app is had: a browser keeps what is entered by the address. */
const HOST = '127.0.0.1';

/**
 * Serves a folder of built files to this computer only, with the app's security headers, and brotli copies
 * (`x.js.br`) to browsers that take them. Nothing outside the folder can be had, no link out of it is
 * followed, and no request ends the server. `localhost` would be another, empty app, so it is led to the one
 * address; whoever asks for another host is refused, since a page from elsewhere may have named this
 * computer so. Rejects when the port is taken (`EADDRINUSE`).
 */
export async function serve({ folder, port }: ServingSpec): Promise<Serving> {
  const server = createServer((request, response) => {
    if (!isElsewhere(request, response)) answerWithFile(folder, request, response);
  });
  await listening(server, port);
  const address = server.address() as AddressInfo;
  return {
    url: `http://${HOST}:${address.port}/`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

type Files = ReturnType<typeof sirv>;

/** The files of a folder; they are listed again when the app was built again. */
function filesOf(folder: string): () => Files {
  let listed: { readonly at: number; readonly files: Files } | null = null;
  return () => {
    const at = statSync(join(folder, 'index.html'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
    if (listed?.at !== at) listed = { at, files: list(folder) };
    return listed.files;
  };
}

function list(folder: string): Files {
  const links = linksOut(folder);
  return sirv(folder, {
    brotli: true,
    extensions: ['html'],
    setHeaders(response, path, { dev, ino }) {
      if (links.has(`${dev} ${ino}`)) throw new Error('A link out of the folder.');
      response.setHeader('Cache-Control', cacheRule(path));
    },
  });
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, HOST, () => resolve());
  });
}

/** Whether a request asks for another host than the one address; then it is answered. */
function isElsewhere(request: IncomingMessage, response: ServerResponse): boolean {
  const path = request.url ?? '/';
  const asked = (request.headers.host ?? '').toLowerCase();
  const here = `${HOST}:${request.socket.localPort}`;
  if (asked === here) return false;
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  if (/^(localhost|\[::1\])(:|$)/.test(asked) && path.startsWith('/')) {
    response.setHeader('Location', `http://${here}${path}`);
    sayStatus(response, 307, `Sweepline is at http://${here}/.`);
  } else sayStatus(response, 421, `Sweepline is at http://${here}/ and nowhere else.`);
  return true;
}

const filesByFolder = new Map<string, () => Files>();

/**
 * Answers a request with a file of the folder, with the app's security headers; 404 when there is none. Never
 * throws, whatever was asked.
 */
export function answerWithFile(
  folder: string,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  const files = filesByFolder.get(folder) ?? filesOf(folder);
  filesByFolder.set(folder, files);
  try {
    answer(request, response, files());
  } catch {
    response.destroy();
  }
}

function answer(request: IncomingMessage, response: ServerResponse, files: Files): void {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    sayStatus(response, 405, 'Only reading is possible here.');
    return;
  }
  // Parts of files are never asked for, and a wrong part could not be given.
  delete request.headers.range;
  if (!takesBrotli(request)) request.headers['accept-encoding'] = '';
  response.on('pipe', (file: Readable) => {
    file.on('error', () => response.destroy());
    response.on('close', () => file.destroy());
  });
  files(request, response, () => sayStatus(response, 404, 'There is no such page.'));
}

function takesBrotli(request: IncomingMessage): boolean {
  return /\bbr\b(?!\s*;\s*q=0(?:\.0*)?\s*(?:,|$))/.test(String(request.headers['accept-encoding']));
}

/** Names with a hash in them never change their content; all others are asked for again. */
function cacheRule(path: string): string {
  return path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
}

function sayStatus(response: ServerResponse, status: number, line: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${line}\n`);
}

/** The files to which links lead out of a folder, as `device inode`. */
function linksOut(folder: string): ReadonlySet<string> {
  const root = realpathSync(folder) + sep;
  const found = new Set<string>();
  visit(folder, false);
  return found;

  /** `isOut`: the folder is itself reached by a link that leads out. */
  function visit(place: string, isOut: boolean): void {
    for (const name of readdirSync(place)) {
      const path = join(place, name);
      const isLink = lstatSync(path).isSymbolicLink();
      const target = statSync(path, { throwIfNoEntry: false });
      if (target === undefined) continue;
      const leadsOut = isOut || (isLink && !realpathSync(path).startsWith(root));
      if (target.isDirectory() && (leadsOut || !isLink)) visit(path, leadsOut);
      else if (leadsOut) found.add(`${target.dev} ${target.ino}`);
    }
  }
}
