import type { Drawer } from './second-copy.ts';

/**
 * A drawer in the browser's cache storage (Service Workers, W3C), which keeps each text in a file of its
 * own, apart from its databases. Every promise rejects where there is no such storage.
 */
export function createCacheDrawer(name = 'sweepline-second-copy'): Drawer {
  let opened: Promise<Cache> | null = null;
  const open = async () => {
    opened ??= globalThis.caches.open(name);
    return opened;
  };
  const addressOf = (text: string) => new URL(`/${name}/${text}`, location.origin);
  return {
    async names() {
      const requests = await (await open()).keys();
      return requests.map(({ url }) => new URL(url).pathname.slice(name.length + 2));
    },
    async read(text) {
      const found = await (await open()).match(addressOf(text));
      return found ? found.text() : null;
    },
    async write(text, content) {
      await (await open()).put(addressOf(text), new Response(content));
    },
    async remove(text) {
      await (await open()).delete(addressOf(text));
    },
  };
}
