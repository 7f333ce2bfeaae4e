/**
 * Asks the browser to keep what is stored here even when the device runs short
 * of room (Storage Standard, persistence). `granted`: it will; `denied`: it may
 * clear it, and a copy as a file is the safe thing; `unknown`: it cannot say,
 * as over plain http.
 */
export async function askToPersist(): Promise<'granted' | 'denied' | 'unknown'> {
  const { storage } = navigator;
  if (typeof storage?.persist !== 'function') return 'unknown';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'granted' : 'denied';
  } catch {
    return 'unknown';
  }
}
