import { outlinePath } from '../../../print/outline-path.ts';
import { box, type Page, type PageMark, pageSize } from '../../../print/page.ts';
import { SLIDE, SLIDE_GROUND, type Slide } from '../../../print/slide.ts';

/** What the preview draws: a page or a slide. Lengths are mm. */
export interface View {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PageMark[];
  /** Turned by half a turn: the back of a sheet that is turned over its top. */
  readonly upsideDown?: boolean;
}

/** A page as it will be printed. */
export function viewOfPage(page: Page): View {
  return { ...pageSize(page), ...page };
}

/** A slide as it will be shown. */
export function viewOfSlide({ shapes }: Slide): View {
  return {
    ...SLIDE,
    marks: [
      box(0, 0, SLIDE, { fill: SLIDE_GROUND }),
      ...shapes.map(
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
