import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { build } from 'vite';
import { headers } from '../../house/headers.ts';
import { fromRoot } from '../../house/root.mjs';

/** A site of one page, on which the log's modules can be tried; see log-page.ts. */
export interface LogSite {
  /** Its address, such as `http://127.0.0.1:40123/`. */
  readonly url: string;
  stop(): Promise<void>;
}

/** Builds the page and serves it to this computer; `told` is given what the page posts, and where. */
export async function openLogSite(
  told: (what: string, value: unknown) => void = () => {},
): Promise<LogSite> {
  const scripts = await pageScripts();
  const server = createServer(async (request, response) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    if (request.method === 'POST') {
      const text = await bodyOf(request);
      if (text !== null) told((request.url ?? '').slice(1), JSON.parse(text));
      response.end();
    } else if (scripts.has(request.url ?? '')) {
      response.setHeader('Content-Type', 'text/javascript; charset=utf-8');
      response.end(scripts.get(request.url ?? ''));
    } else {
      response.setHeader('Content-Type', 'text/html; charset=utf-8');
      response.end(
        '<!doctype html><title>Log</title><script type="module" src="/log.js"></script>',
      );
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** The page's script, and that of the worker beside it, by their paths. */
async function pageScripts(): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    base: './',
    build: {
      write: false,
      minify: false,
      lib: { entry: fromRoot('test/browser/log-page.ts'), formats: ['es'], fileName: 'log' },
    },
  });
  const output = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  return new Map(
    output.map((one) => [`/${one.fileName}`, one.type === 'chunk' ? one.code : one.source]),
  );
}

/** The whole body, or null when the sender was gone before its end. */
async function bodyOf(request: IncomingMessage): Promise<string | null> {
  try {
    let text = '';
    for await (const piece of request.setEncoding('utf8')) text += piece;
    return text;
  } catch {
    return null;
  }
}
