import { memo } from 'preact/compat';
import { type Mark, type Page, pageSize } from './engine.ts';

interface PagePreviewProps {
  readonly page: Page;
  readonly name: string;
}

/** A page as it will be printed, drawn from the same marks as the PDF. */
export const PagePreview = memo(function PagePreview({ page, name }: PagePreviewProps) {
  const { width, height } = pageSize(page);
  return (
    <svg class="paper" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <g transform={page.upsideDown ? `rotate(180 ${width / 2} ${height / 2})` : undefined}>
        {page.marks.map(drawn)}
      </g>
    </svg>
  );
});

const anchors = { left: 'start', center: 'middle', right: 'end' } as const;

function drawn(mark: Mark, key: number) {
  if (mark.kind === 'text') {
    const { text, x, y, size, ink, weight, align = 'left' } = mark;
    return (
      <text
        key={key}
        x={x}
        y={y}
        font-size={size}
        font-weight={weight === 'bold' ? 700 : 400}
        fill={ink}
        text-anchor={anchors[align]}
      >
        {text}
      </text>
    );
  }
  const { path, x = 0, y = 0, scale = 1, fill, stroke, line = 0.2, dash, opacity, evenOdd } = mark;
  return (
    <path
      key={key}
      d={path}
      transform={
        x !== 0 || y !== 0 || scale !== 1 ? `translate(${x} ${y}) scale(${scale})` : undefined
      }
      fill={fill ?? 'none'}
      fill-rule={evenOdd ? 'evenodd' : undefined}
      opacity={opacity}
      stroke={stroke}
      stroke-width={stroke ? line / scale : undefined}
      stroke-dasharray={dash ? dash.map((length) => length / scale).join(' ') : undefined}
    />
  );
}
