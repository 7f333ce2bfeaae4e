import { memo } from 'preact/compat';
import type { PageMark } from '../../../print/page.ts';
import type { PaperView } from './view.ts';

interface PagePreviewProps {
  readonly view: PaperView;
  readonly name: string;
}

/** A page or slide as it will be printed or shown, drawn from the same values as the file. */
export const PagePreview = memo(function PagePreview({ view, name }: PagePreviewProps) {
  const { width, height, marks, upsideDown } = view;
  return (
    <svg class="paper" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <g transform={upsideDown ? `rotate(180 ${width / 2} ${height / 2})` : undefined}>
        {marks.map(drawn)}
      </g>
    </svg>
  );
});

const anchors = { left: 'start', center: 'middle', right: 'end' } as const;

function drawn(mark: PageMark, key: number) {
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
  const { path, x = 0, y = 0, scale = 1, fill, stroke, line = 0.2, dash, opacity } = mark;
  return (
    <path
      key={key}
      d={path}
      transform={
        x !== 0 || y !== 0 || scale !== 1 ? `translate(${x} ${y}) scale(${scale})` : undefined
      }
      fill={fill ?? 'none'}
      fill-rule={mark.evenOdd ? 'evenodd' : undefined}
      opacity={opacity}
      stroke={stroke}
      stroke-width={stroke ? line / scale : undefined}
      stroke-linejoin={stroke ? 'round' : undefined}
      stroke-linecap={mark.round ? 'round' : undefined}
      stroke-dasharray={dash ? dash.map((length) => length / scale).join(' ') : undefined}
    />
  );
}
