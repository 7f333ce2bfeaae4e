import { existsSync } from 'node:fs';
import type { Taught } from '../core/language/taught.ts';
import { type OrderLine, readOrder } from '../core/sequence/plain/read-order.ts';
import { makeVocabulary } from '../core/sequence/plain/vocabulary.ts';
import type { Item, Sequence } from '../core/sequence/sequence.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { fail } from './failure.ts';

/** A file named in `--taught`: `order.csv` is all of it, `order.csv:12` its first twelve steps. */
export interface NamedFile {
  readonly path: string;
  readonly upTo: number | null;
}

/** Reads the name behind the `@`. A colon and a number are a step, unless a file is called so. */
export function namedFile(text: string): NamedFile {
  const numbered = /^(.+):(\d+)$/.exec(text);
  if (!numbered || existsSync(text)) return { path: text, upTo: null };
  return { path: numbered[1] as string, upTo: Number(numbered[2]) };
}

/** What an order has taught up to a step, and the items of that step. */
export interface OwnOrder {
  readonly taught: Taught;
  readonly newest: readonly Item[];
}

/**
 * What was taught by an order of one's own, and the items of its last step. Ends the command at a piece that
 * nobody can read, with its line; letters that may mean several sounds are taken in the first of them, which
 * is said.
 */
export function readOwnOrder(
  text: string,
  { path, upTo }: NamedFile,
  lexicon: Lexicon,
  say: (line: string) => void,
): OwnOrder {
  const vocabulary = makeVocabulary(lexicon);
  const { lines, sequence } = readOrder(text, { name: path, vocabulary, firstSense: true });
  lines.forEach(refuse);
  const step = stepAsked(sequence, upTo, path);
  for (const line of lines) {
    if (line.step !== null && line.step <= step) sayFirstSense(line, say);
  }
  return {
    taught: taughtUpTo(sequence, step),
    newest: sequence.steps[step - 1]?.items ?? [],
  };
}

function stepAsked({ steps }: Sequence, upTo: number | null, path: string): number {
  if (steps.length === 0)
    fail(`“${path}” teaches nothing. Write what a step teaches on each line: m`);
  if (upTo === null) return steps.length;
  return upTo <= steps.length
    ? upTo
    : fail(`“${path}” has steps 1 to ${steps.length}; there is no step ${upTo}.`);
}

function refuse({ line, pieces }: OrderLine): void {
  for (const piece of pieces) {
    if (piece.kind !== 'unknown') continue;
    const near = piece.nearMisses.length > 0 ? ` Did you mean ${piece.nearMisses.join(', ')}?` : '';
    fail(`Line ${line}: we know no card or word “${piece.written}”.${near}`);
  }
}

function sayFirstSense({ line, pieces }: OrderLine, say: (line: string) => void): void {
  for (const piece of pieces) {
    if (piece.kind !== 'asks') continue;
    const [first, second] = piece.question.answers;
    say(
      `Line ${line}: ${piece.question.asks} Taken as ${first?.writes}; if not, write ${second?.writes}.`,
    );
  }
}
