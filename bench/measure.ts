/** What was measured, in the unit it was measured in. */
export interface Measurement {
  readonly name: string;
  readonly unit: 'ms' | 'KB';
  /** Half of the runs were at or below this. */
  readonly median: number;
  /** 95 of 100 runs were at or below this. */
  readonly p95: number;
  /** How many runs counted. */
  readonly runs: number;
  /** What its p95 should not exceed, in the same unit; without one it is only watched. */
  readonly aim?: number;
}

/** What to measure and how often; runs to warm up do not count. */
export interface MeasureSpec {
  readonly name: string;
  readonly aim?: number;
  readonly run: () => unknown;
  readonly warmUps?: number;
  readonly runs?: number;
}

/**
 * Times a piece of work, in milliseconds, after warming up: a program that has just started is slow
 * for reasons that are not its own. Work that answers with a promise is waited for.
 */
export async function measure(spec: MeasureSpec): Promise<Measurement> {
  const { name, aim, run, warmUps = 10, runs = 50 } = spec;
  for (let i = 0; i < warmUps; i++) await run();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const started = performance.now();
    await run();
    times.push(performance.now() - started);
  }
  return summary({ name, unit: 'ms', aim, values: times });
}

/** Sums up values that were measured elsewhere, in a browser for example. At least one is needed. */
export function summary(spec: {
  readonly name: string;
  readonly unit: Measurement['unit'];
  readonly aim?: number;
  readonly values: readonly number[];
}): Measurement {
  const { values, ...rest } = spec;
  const sorted = [...values].sort((a, b) => a - b);
  return {
    ...rest,
    median: quantile(sorted, 0.5),
    p95: quantile(sorted, 0.95),
    runs: sorted.length,
  };
}

/**
 * The smallest value that at least the given share of all values do not exceed (nearest rank: no
 * value is invented between two that were seen). Definition 1 of Hyndman & Fan, Sample Quantiles in
 * Statistical Packages, The American Statistician 50 (1996).
 */
function quantile(sorted: readonly number[], share: number): number {
  const value = sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
  if (value === undefined) throw new Error('Nothing was measured.');
  return value;
}
