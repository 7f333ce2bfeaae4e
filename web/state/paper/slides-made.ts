import type { Slide } from '../../../print/slide.ts';
import type { MadeFile } from './made-file.ts';

/** Slides as a file for any presentation program; what writes it is fetched then. */
export async function slidesMade(slides: readonly Slide[]): Promise<MadeFile> {
  const { slideFile } = await import('../../../print/slide-file.ts');
  return {
    name: 'slides.pptx',
    type: 'application/vnd.openxmlformats-officedocument.presentationml.presentation',
    bytes: await slideFile(slides, 'Blending drill'),
  };
}
