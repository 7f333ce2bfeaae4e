/** The size of the picture in its own units. */
export const CHART = { width: 600, height: 160 } as const;

/** Where a step and a share stand in the picture. */
export function pointOf(
  step: number,
  share: number,
  steps: number,
): { readonly x: number; readonly y: number } {
  return {
    x: steps === 0 ? 0 : (step / steps) * CHART.width,
    y: (1 - share) * CHART.height,
  };
}

/** The outline of the shares by step, a stair that rises at each step, as an SVG path. */
export function stairPath(shares: readonly number[]): string {
  const last = shares.length - 1;
  const parts = shares.map((share, step) => {
    const { x, y } = pointOf(step, share, last);
    return step === 0 ? `M${round(x)} ${round(y)}` : `H${round(x)}V${round(y)}`;
  });
  return parts.join('');
}

/** The steps at which the share rises, with the share from there on; the first is what needs no step. */
export function rises(
  shares: readonly number[],
): readonly { readonly step: number; readonly share: number }[] {
  return shares
    .map((share, step) => ({ step, share }))
    .filter(({ step, share }) => step === 0 || share > (shares[step - 1] ?? 0));
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
