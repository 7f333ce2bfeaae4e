/**
 * Fills what is put aside for days without a network again, when some of it or all is gone and the worker
 * that put it aside is still there: a worker that is installed already never does so of itself. It is
 * registered under its other address, which the browser takes for a new worker: that one fetches whatever is
 * missing.
 */
export async function refillOffline(): Promise<void> {
  try {
    const registration = await navigator.serviceWorker?.getRegistration();
    if (!registration?.active || (await isAllThere(registration.scope))) return;
    const { installing, waiting, active } = registration;
    const newest = new URL((installing ?? waiting ?? active).scriptURL);
    newest.search = newest.search === '' ? '?again' : '';
    await navigator.serviceWorker.register(newest, { scope: registration.scope });
  } catch {
    // Not now, as without a network or where the browser keeps nothing: the next visit tries again.
  }
}

/** Whether all that the build lists is put aside; each of these addresses may have a revision behind it. */
async function isAllThere(scope: string): Promise<boolean> {
  const there = new Set<string>();
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const { url } of await cache.keys()) there.add(url.split('?', 1)[0] ?? url);
  }
  const listed: readonly string[] = await (await fetch(new URL('put-aside.json', scope))).json();
  return listed.every((path) => there.has(new URL(path, scope).href));
}
