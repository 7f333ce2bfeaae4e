import { useEffect, useMemo, useState } from 'preact/hooks';
import { pieceKey } from '../../../core/boards/shapes/pieces.ts';
import { layOut, type RowLayout, type Space } from '../../../core/boards/shapes/row-layout.ts';
import { isSightMoment, type Moment } from '../../../core/warm-up/moments.ts';
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
    const layouts = new Map<Moment, RowLayout>();
    const together = (those: readonly Moment[], count: number) =>
      layOut(those.map(widthsOf), count, space, openingsOf(those)).rows.forEach((row, at) => {
        layouts.set(those[at] as Moment, row);
      });
    // A word known by sight is as wide as it is: it has its own size, and the cards keep theirs.
    const isAlone = (moment: Moment) => moment.part === 'auditory' || isSightMoment(moment);
    for (const moment of moments.filter(isAlone)) together([moment], moment.pieces.length);
    together(
      moments.filter((moment) => moment.part === 'visual' && !isAlone(moment)),
      1,
    );
    together(
      moments.filter(({ part }) => part === 'blending'),
      piles,
    );
    return { layouts: moments.flatMap((moment) => layouts.get(moment) ?? []), space };
  }, [moments, piles, widths, screen, edge]);
}

/** Which pieces of each row begin a later syllable; nothing where no word was laid in syllables. */
function openingsOf(moments: readonly Moment[]): readonly (readonly number[])[] {
  const all = moments.map(({ pieces }) =>
    pieces.flatMap(({ opens }, place) => (opens ? [place] : [])),
  );
  return all.some(({ length }) => length > 0) ? all : [];
}

function screenSpace(): Space {
  return { width: innerWidth, height: innerHeight };
}
