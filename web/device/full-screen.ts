/** Goes full screen where the browser can; must be called from a press or key. Refusal is no trouble. */
export function enterFullScreen(): void {
  onPurpose = false;
  if (document.fullscreenElement) return;
  document.documentElement.requestFullscreen?.().catch(() => {});
}

/** Leaves full screen if it is on, going where the caller goes. */
export function leaveFullScreen(): void {
  if (!document.fullscreenElement) return;
  onPurpose = true;
  document.exitFullscreen().catch(() => {});
}

/** Full screen on or off, staying where one is. */
export function toggleFullScreen(): void {
  if (document.fullscreenElement) leaveFullScreen();
  else enterFullScreen();
}

/**
 * Calls back when full screen was left by the browser's own key, which most
 * browsers keep from the page; not after `toggleFullScreen` or `leaveFullScreen`. Returns how to stop.
 */
export function onFullScreenLeft(left: () => void): () => void {
  const onChange = () => {
    if (!document.fullscreenElement && !onPurpose) left();
    onPurpose = false;
  };
  document.addEventListener('fullscreenchange', onChange);
  return () => document.removeEventListener('fullscreenchange', onChange);
}

let onPurpose = false;

/** Keeps the screen from going dark while the stage is open; returns how to let go. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let over = false;
  const ask = async () => {
    if (document.visibilityState !== 'visible') return;
    try {
      const got = await navigator.wakeLock.request('screen');
      if (over) await got.release();
      else lock = got;
    } catch {
      // A screen that sleeps is a nuisance, not an error: low battery or an old browser.
    }
  };
  void ask();
  document.addEventListener('visibilitychange', ask);
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', ask);
    lock?.release().catch(() => {});
  };
}
