/** How much one device or address may ask for. */
export interface Limit {
  /** Takes so much, or says after how many milliseconds it may. */
  take(name: string, much?: number): number;
}

/**
 * A bucket for each name that fills with `perSecond` and holds `most`. Names not heard of for a minute are
 * forgotten. `now` is milliseconds.
 */
export function createLimit(perSecond: number, most: number, now: () => number): Limit {
  const buckets = new Map<string, { left: number; at: number }>();
  let swept = now();
  return {
    take(name, much = 1) {
      const at = now();
      if (at - swept > 60_000) {
        for (const [other, bucket] of buckets) if (at - bucket.at > 60_000) buckets.delete(other);
        swept = at;
      }
      const before = buckets.get(name) ?? { left: most, at };
      const left = Math.min(most, before.left + ((at - before.at) / 1000) * perSecond);
      const isEnough = left >= much;
      buckets.set(name, { left: isEnough ? left - much : left, at });
      return isEnough ? 0 : Math.ceil(((much - left) / perSecond) * 1000);
    },
  };
}
