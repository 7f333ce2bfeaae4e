/** A short buzz under the thumb, so that she need not look; nothing where the device or browser has none. */
export function vibrate(): void {
  navigator.vibrate?.(15);
}
