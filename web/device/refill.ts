/**
 * Fills what is put aside for days without a network again, when it was emptied and the worker that put it
 * aside is still there: a worker that is installed already never does so of itself. It is registered under
 * its other address, which the browser takes for a new worker: that one fetches whatever is missing.
 */
export async function refillOffline(): Promise<void> {
  try {
    const registration = await navigator.serviceWorker?.getRegistration();
    if (!registration?.active || !(await isEmptied())) return;
    const { installing, waiting, active } = registration;
    const newest = new URL((installing ?? waiting ?? active).scriptURL);
    newest.search = newest.search === '' ? '?again' : '';
    await navigator.serviceWorker.register(newest, { scope: registration.scope });
  } catch {
    // Not now, as without a network or where the browser keeps nothing: the next visit tries again.
  }
}

async function isEmptied(): Promise<boolean> {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    if ((await cache.keys()).length > 0) return false;
  }
  return true;
}
