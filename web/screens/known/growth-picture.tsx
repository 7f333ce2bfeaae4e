import { areaY, axisX, axisY, gridY, lineY, plot, ruleY } from '@observablehq/plot';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { GrowthPoint } from '../../../core/learners/growth.ts';

/** What is drawn. */
export interface GrowthPictureProps {
  readonly points: readonly GrowthPoint[];
  /** Of one sound, a share; else how many sounds. */
  readonly single: boolean;
  /** Shares at which a dashed line stands. */
  readonly lines: readonly number[];
}

const dayLength = 86_400_000;

/** Growth drawn: a line in its band of uncertainty. For eyes only; the numbers stand beside it as a table. */
export function GrowthPicture({ points, single, lines }: GrowthPictureProps) {
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);

  useLayoutEffect(() => {
    const element = frame.current as HTMLDivElement;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);

  useLayoutEffect(() => {
    if (width === 0) return;
    const drawn = draw(points, single, lines, width);
    frame.current?.replaceChildren(drawn);
  }, [points, single, lines, width]);

  return <div ref={frame} class="growth-picture" aria-hidden="true" />;
}

function draw(
  points: readonly GrowthPoint[],
  single: boolean,
  lines: readonly number[],
  width: number,
): Element {
  const met = points.filter((point) => point.met > 0);
  const most = Math.max(...met.map((point) => point.met));
  const x = ({ day }: GrowthPoint) => new Date(day * dayLength);
  const drawn = plot({
    width,
    height: Math.min(320, Math.max(220, width * 0.4)),
    marginLeft: 48,
    marginRight: 20,
    marginBottom: 36,
    x: { type: 'utc' },
    y: {
      domain: [0, single ? 1 : most],
    },
    marks: [
      gridY({ className: 'growth-grid', ticks: 5 }),
      areaY(met, { x, y1: 'low', y2: 'high', className: 'growth-band' }),
      ...(single
        ? [ruleY(lines, { className: 'growth-threshold' })]
        : [lineY(met, { x, y: 'met', className: 'growth-met' })]),
      lineY(met, { x, y: 'known', className: 'growth-line' }),
      axisX({ ticks: Math.max(2, Math.floor(width / 120)), tickSize: 0, label: null }),
      axisY({
        ticks: single ? 5 : Math.min(5, most),
        tickSize: 0,
        label: null,
        tickFormat: (value: number) => (single ? `${Math.round(value * 100)}%` : `${value}`),
      }),
    ],
  });
  // Its own style sheet is against the page's policy; known.css has what it needs.
  drawn.querySelector('style')?.remove();
  return drawn;
}
