import { useEffect, useMemo, useState } from 'preact/hooks';
import { pieceKey } from '../../../core/boards/shapes/pieces.ts';
import { layOut, type RowLayout, type Space } from '../../../core/boards/shapes/row-layout.ts';
import type { Moment } from '../../../core/warm-up/moments.ts';
import { besideEdge, type Edge } from './edge-space.ts';
import { measurePieces } from './measure.tsx';

/**
 * The layout of every moment's row, computed before it is shown and again only
 * when the screen changes its size; null until the letters are at hand.
 */
export function useLayouts(
  moments: readonly Moment[],
  piles: number,
  edge: Edge,
): { readonly layouts: readonly RowLayout[]; readonly space: Space } | null {
  const [widths, setWidths] = useState<ReadonlyMap<string, number>>();
  const [screen, setScreen] = useState<Space>(screenSpace);

  useEffect(() => {
    let wanted = true;
    measurePieces(moments.flatMap(({ pieces }) => pieces)).then((measured) => {
      if (wanted) setWidths(measured);
    });
    return () => {
      wanted = false;
    };
  }, [moments]);

  useEffect(() => {
    const onResize = () => setScreen(screenSpace());
    addEventListener('resize', onResize);
    return () => removeEventListener('resize', onResize);
  }, []);

  return useMemo(() => {
    if (!widths) return null;
    const space = besideEdge(screen, edge);
    const widthsOf = ({ pieces }: Moment) =>
      pieces.map((piece) => widths.get(pieceKey(piece)) ?? 1);
    const together = (part: Moment['part'], count: number) =>
      layOut(moments.filter((moment) => moment.part === part).map(widthsOf), count, space).rows;
    const single = moments
      .filter(({ part }) => part === 'auditory')
      .flatMap((moment) => layOut([widthsOf(moment)], moment.pieces.length, space).rows);
    const layouts = [...together('visual', 1), ...single, ...together('blending', piles)];
    return { layouts, space };
  }, [moments, piles, widths, screen, edge]);
}

function screenSpace(): Space {
  return { width: innerWidth, height: innerHeight };
}
