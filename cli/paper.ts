/** What printing commands share: the typeface and pictures from disk, the paper, the file to write. */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { PAPERS, type Paper } from '../print/paper.ts';
import type { Picture, Pictures } from '../print/picture.ts';
import { openTypeface, type Typeface } from '../print/typeface.ts';
import { ANDIKA } from '../print/typeface-files.ts';
import { fail } from './failure.ts';
import type { Typed } from './options.ts';

/** Andika, as installed with this program. */
export function loadTypeface(): Typeface {
  const { resolve } = createRequire(import.meta.url);
  const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
  return openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
}

/** The pictures of keywords. */
export function loadPictures(): Pictures {
  const text = readFileSync(new URL('../print/pictures/pictures.json', import.meta.url), 'utf8');
  return new Map(Object.entries(JSON.parse(text) as Record<string, Picture>));
}

/** `--paper letter|a4`, in small letters or large; letter when it was not typed. */
export function readPaper(typed: Typed): Paper {
  return readOneOf(typed, 'paper', PAPERS, 'letter');
}

/** An option that takes one of a few words, in small letters or large. Ends the command when it is another. */
export function readOneOf<Word extends string>(
  typed: Typed,
  name: string,
  words: readonly Word[],
  otherwise: Word,
): Word {
  const text = typed.text(name) ?? otherwise;
  const known = words.find((word) => word === text.toLowerCase());
  return known ?? fail(`--${name} takes ${words.join(', ')}; “${text}” is none of them.`);
}

/** The file that `-o` names. Ends the command when there is none. */
export function readOut(typed: Typed, example: string): string {
  return typed.text('out') ?? fail(`Say where to write it: -o ${example}`);
}

/** Writes a file that the person named. */
export function writeOut(path: string, bytes: Uint8Array): void {
  try {
    writeFileSync(path, bytes);
  } catch (error) {
    fail(`Cannot write “${path}”: ${(error as NodeJS.ErrnoException).code ?? 'unknown'}.`);
  }
}
