/** A share as she reads it: `87%`, and `99.6%` near the whole, so that nothing is rounded up to all. */
export function percent(share: number): string {
  const value = share * 100;
  if (value > 99 && value < 100) return `${Math.floor(value * 10) / 10}%`;
  return `${Math.floor(value + 1e-9)}%`;
}
