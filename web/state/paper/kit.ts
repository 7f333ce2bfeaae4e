import regular from '@fontsource/andika/files/andika-latin-400-normal.woff?url';
import bold from '@fontsource/andika/files/andika-latin-700-normal.woff?url';
import regularMarks from '@fontsource/andika/files/andika-latin-ext-400-normal.woff?url';
import boldMarks from '@fontsource/andika/files/andika-latin-ext-700-normal.woff?url';
import { signal } from '@preact/signals';
import type { Picture, Pictures } from '../../../print/picture.ts';
import picturesUrl from '../../../print/pictures/pictures.json?url';
import { openTypeface, type Typeface } from '../../../print/typeface.ts';

/** What printing needs beside its code: letters and pictures. */
export interface Kit {
  readonly typeface: Typeface;
  readonly pictures: Pictures;
}

/** Null while it is fetched, `failed` when it could not be had. */
export const kit = signal<Kit | 'failed' | null>(null);

/** Fetches letters and pictures once; may be called again after a failure. */
export async function fetchKit(): Promise<void> {
  if (kit.peek() !== null && kit.peek() !== 'failed') return;
  kit.value = null;
  try {
    const [files, pictures] = await Promise.all([
      Promise.all([regular, regularMarks, bold, boldMarks].map(bytesAt)),
      fetch(picturesUrl).then((answer) => answer.json() as Promise<Record<string, Picture>>),
    ]);
    const [latin, latinMarks, latinBold, marksBold] = files as [
      Uint8Array,
      Uint8Array,
      Uint8Array,
      Uint8Array,
    ];
    kit.value = {
      typeface: openTypeface({ regular: [latin, latinMarks], bold: [latinBold, marksBold] }),
      pictures: new Map(Object.entries(pictures)),
    };
  } catch {
    kit.value = 'failed';
  }
}

async function bytesAt(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
