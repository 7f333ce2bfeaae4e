import { readFileSync, statSync } from 'node:fs';
import {
  ACCENT_HABITS,
  type Accent,
  AMERICAN,
  parseAccent,
} from '../core/language/accent/accent.ts';
import { textHere } from '../core/language/accent/text-here.ts';
import type { CardId } from '../core/language/card-id.ts';
import type { Taught } from '../core/language/taught.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { parseTaught, parseTaughtJson } from '../core/sequence/taught-text.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { lexiconHere } from '../core/words/lexicon-here.ts';
import { decodeMeanings, type Meanings } from '../core/words/meanings.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { screenHere } from '../core/words/screen-here.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { Failure, fail } from './failure.ts';
import type { Typed } from './options.ts';
import { namedFile, type OwnOrder, readOwnOrder } from './own-order.ts';
import { complain } from './shown.ts';

/** The word list that the build step made. */
export function loadLexicon(): Lexicon {
  return decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url)));
}

/** How a class speaks, and the word list and the screen as it hears them. */
export interface Here {
  readonly accent: Accent;
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

/** What `--accent` says of a class, for every command that takes it; American when it was not typed. */
export function loadHere(typed: Typed): Here {
  const accent = readAccent(typed.text('accent'));
  const lexicon = lexiconHere(loadLexicon(), accent);
  return { accent, lexicon, screen: screenHere(loadScreen(), lexicon, accent) };
}

/** The short meanings that the build step made. */
export function loadMeanings(): Meanings {
  const file = new URL('../lexicon/dist/meanings.json', import.meta.url);
  return decodeMeanings(JSON.parse(readFileSync(file, 'utf8')));
}

/** The word screen, from its reviewed and hashed list. */
export function loadScreen(): WordScreen {
  return createWordScreen(SCREEN_DATA);
}

/**
 * What was taught, from `step:24`, a list such as `a,m,s,t,sh,ea=EH`, `@file.json`, or an order of one's own:
 * `@order.csv`, `@order.csv:12`. Words known by heart are spelled as the class spells them. Ends the command when an item is unknown.
 */
export function readTaught(text: string | null, here: Speaks = AMERICANS): Taught {
  if (text === null) {
    return fail(
      'Say what was taught: --taught step:24, --taught a,m,s,t, --taught @file.json or --taught @order.csv',
    );
  }
  const own = ownOrder(text);
  if (own) return taughtHere(own.taught, here);
  const parsed = text.startsWith('@')
    ? parseTaughtJson(readTextFile(text.slice(1)), SEQUENCE)
    : parseTaught(text, SEQUENCE);
  return 'taught' in parsed ? taughtHere(parsed.taught, here) : fail(parsed.error.message);
}

type Speaks = Pick<Here, 'accent'>;
const AMERICANS: Speaks = { accent: AMERICAN };

/** Words known by heart as the class spells them. */
export function taughtHere(taught: Taught, { accent }: Speaks): Taught {
  const irregularWords = [...taught.irregularWords].map((word) => textHere(word, accent));
  return { ...taught, irregularWords: new Set(irregularWords) };
}

/** The cards of the step that `step:24` or an order of one's own names last, as the newest; none for a list. */
export function readNewest(text: string | null): readonly CardId[] {
  const number = Number(/^step\s*[:=]\s*(\d+)$/i.exec(text?.trim() ?? '')?.[1] ?? 0);
  const items = (text && ownOrder(text, true)?.newest) || (SEQUENCE.steps[number - 1]?.items ?? []);
  return items.flatMap((item) => (item.kind === 'card' ? [item.id] : []));
}

/** The order in the file that the text names, or null when it names none, or one in JSON. */
function ownOrder(text: string, quiet = false): OwnOrder | null {
  if (!text.startsWith('@')) return null;
  const named = namedFile(text.slice(1));
  const content = readTextFile(named.path);
  return /^\uFEFF?\s*[[{]/.test(content)
    ? null
    : readOwnOrder(content, named, loadLexicon(), quiet ? () => {} : complain);
}

/** How a class speaks, from `--accent pin-pen,r-dropped`; American when it is left out. Ends the command on an unknown habit. */
function readAccent(text: string | null): Accent {
  if (text === null) return AMERICAN;
  return (
    parseAccent(text) ??
    fail(
      `--accent takes american, or some of these with commas between: ${ACCENT_HABITS.join(', ')}.`,
    )
  );
}

/** The id of a card as typed: `sh`, `ea=EH`. Ends the command when it is unknown. */
export function readCard(text: string): CardId {
  const parsed = parseTaught(text, SEQUENCE);
  if ('error' in parsed) return fail(parsed.error.message);
  const [id] = parsed.taught.correspondences;
  return id ?? fail(`“${text}” is not a card.`);
}

/** The text of a file that the person named. */
export function readTextFile(path: string): string {
  try {
    if (statSync(path).size > LARGEST) {
      return fail(
        `“${path}” is larger than 50 MB, far more than a class makes. Take a part of it.`,
      );
    }
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Failure) throw error;
    return fail(`Cannot read “${path}”: ${(error as NodeJS.ErrnoException).code ?? 'unknown'}.`);
  }
}

/** The largest file that is read, in bytes. */
const LARGEST = 50_000_000;
