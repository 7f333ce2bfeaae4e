/**
 * What the word list holds, in numbers: a golden file that is read by eye when
 * it changes, and the summary that the build prints.
 */
import { createHash } from 'node:crypto';
import { brotliCompressSync, constants } from 'node:zlib';
import type { LexiconWord } from './build-words.ts';

/** A file as built, and its bytes after brotli at its best, as a server sends it. */
export interface BuiltFile {
  readonly bytes: Uint8Array;
  readonly brotli: number;
}

/** The files that ship. */
export interface BuiltFiles {
  readonly words: BuiltFile;
  readonly meanings: BuiltFile;
}

/** Ranks up to which the share of words with a guess is told. */
const REACHES = [300, 1000, 5000, 20_000] as const;

/** Cards shown at either end of the frequency table. */
const CARDS_SHOWN = 40;

/** The whole report, plain text. Deterministic. */
export function makeReport(
  words: readonly LexiconWord[],
  files: BuiltFiles,
  meanings: number,
): string {
  return [
    'The word list in numbers',
    '',
    ...sizeLines(words, files, meanings),
    '',
    'Words by band (1 commonest)',
    ...countLines(words, ({ band }) => String(band)),
    '',
    'Words by syllables',
    ...countLines(words, ({ readings }) => String(readings[0]?.syllables.length)),
    '',
    'Words whose ordinary reading needs a guess (no row of the table fits)',
    ...guessLines(words),
    '',
    ...cardLines(words),
    '',
  ].join('\n');
}

/** One line for the terminal. */
export function makeSummary(words: readonly LexiconWord[], files: BuiltFiles): string {
  const guessed = words.filter(needsGuess).length;
  return `${words.length} words, ${kilobytes(files.words)} brotli; meanings ${kilobytes(files.meanings)}; ${guessed} with a guessed card`;
}

/** Measures a file. */
export function measureFile(bytes: Uint8Array): BuiltFile {
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: 11,
    [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
  };
  return { bytes, brotli: brotliCompressSync(bytes, { params }).length };
}

function kilobytes({ brotli }: BuiltFile): string {
  return `${(brotli / 1024).toFixed(1)} KB`;
}

function sizeLines(words: readonly LexiconWord[], files: BuiltFiles, meanings: number): string[] {
  const several = words.filter(({ readings }) => readings.length > 1).length;
  return [
    `words                      ${words.length}`,
    `with more than one reading ${several}`,
    `meanings                   ${meanings}`,
    `words.bin                  ${files.words.bytes.length} bytes, ${kilobytes(files.words)} brotli`,
    `meanings.json              ${files.meanings.bytes.length} bytes, ${kilobytes(files.meanings)} brotli`,
    `words.bin sha256           ${createHash('sha256').update(files.words.bytes).digest('hex')}`,
  ];
}

function countLines(words: readonly LexiconWord[], key: (word: LexiconWord) => string): string[] {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(key(word), (counts.get(key(word)) ?? 0) + 1);
  return [...counts]
    .sort((a, b) => Number(a[0]) - Number(b[0]))
    .map(([name, n]) => `${name}\t${n}`);
}

function needsGuess({ readings }: LexiconWord): boolean {
  return readings[0]?.fallback ?? false;
}

function guessLines(words: readonly LexiconWord[]): string[] {
  const lines = [...REACHES, words.length].map((reach) => {
    const count = words.slice(0, reach).filter(needsGuess).length;
    return `commonest ${reach}\t${count}\t${((100 * count) / reach).toFixed(2)}%`;
  });
  const guessed = words.filter(needsGuess).map(({ word }) => word);
  return [...lines, `all of them: ${guessed.sort().join(' ')}`];
}

function cardLines(words: readonly LexiconWord[]): string[] {
  const counts = new Map<string, number>();
  for (const { readings } of words) {
    for (const { id } of readings[0]?.cards ?? []) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  const sorted = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const line = ([id, count]: readonly [string, number]) => `${id}\t${count}`;
  return [
    `Cards in use: ${sorted.length}. The commonest`,
    ...sorted.slice(0, CARDS_SHOWN).map(line),
    '',
    'The rarest',
    ...sorted.slice(-CARDS_SHOWN).map(line),
  ];
}
