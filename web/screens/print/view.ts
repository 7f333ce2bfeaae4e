import { outlinePath } from '../../../print/outline-path.ts';
import { box, type Page, type PageMark, pageSize } from '../../../print/page.ts';
import {
  type Deck,
  SLIDE_GROUND,
  type Slide,
  type SlideFormat,
  slideSize,
} from '../../../print/slide.ts';

/** What the preview draws: a page or a slide. Lengths are mm. */
export interface PaperView {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PageMark[];
  /** Turned by half a turn: the back of a sheet that is turned over its top. */
  readonly upsideDown?: boolean;
}

/** A page as it will be printed. */
export function viewOfPage(page: Page): PaperView {
  return { ...pageSize(page), ...page };
}

/** All slides of a deck; none where there is no deck. */
export function viewsOfDeck(deck: Deck | null): readonly PaperView[] {
  return deck === null ? [] : deck.slides.map((slide) => viewOfSlide(slide, deck.format));
}

/** A slide as it will be shown, everything on it that a click brings. */
function viewOfSlide({ things }: Slide, format: SlideFormat): PaperView {
  const size = slideSize[format];
  return {
    ...size,
    marks: [
      box(0, 0, size, { fill: SLIDE_GROUND }),
      ...things
        .flatMap(({ shapes }) => shapes)
        .map(
          ({ steps, fill, stroke, line = 0, dashed }): PageMark => ({
            kind: 'shape',
            path: outlinePath(steps),
            line,
            ...(fill ? { fill } : {}),
            ...(stroke ? { stroke } : {}),
            ...(dashed ? { dash: [line * 4, line * 3] as const } : {}),
          }),
        ),
    ],
  };
}
