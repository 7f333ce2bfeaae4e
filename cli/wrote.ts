import { readFileSync } from 'node:fs';
import { graphemeOf } from '../core/language/card-id.ts';
import { makeSounds } from '../core/language/phonemes.ts';
import { asSaidHere } from '../core/spelling/as-said-here.ts';
import type { AttemptReading, ReadWith } from '../core/spelling/attempt.ts';
import { inPlainWords } from '../core/spelling/plain-words.ts';
import { readAttempt } from '../core/spelling/read-attempt.ts';
import { isFamiliarIn, saidWord } from '../core/spelling/said-word.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { loadHere, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';
import { complain } from './shown.ts';

/**
 * `wrote WORD=ATTEMPT…`: what children wrote for words that were said, card by card. Without a word the
 * attempts are read from standard input, one a line; a line that cannot be read is reported with its
 * number, and the others are read.
 */
export function wrote(args: readonly string[]): string {
  const typed = readOptions(args, { taught: 'text', accent: 'text' });
  const here = loadHere(typed);
  const { accent, lexicon } = here;
  const given = typed.text('taught');
  const known: ReadWith = {
    taught: given === null ? null : readTaught(given, here),
    isFamiliar: isFamiliarIn(lexicon),
  };
  const isJson = typed.flag('json');
  const read = (attempt: AttemptReading) => asSaidHere(attempt, accent);
  const show = (attempt: AttemptReading) =>
    isJson ? attemptJson(read(attempt)) : attemptLine(read(attempt));
  const shown =
    typed.words.length > 0
      ? typed.words.map((text) => {
          const one = readLine(text, lexicon, known);
          return typeof one === 'string' ? fail(one) : show(one);
        })
      : readLines(readFileSync(0, 'utf8'), lexicon, known, show);
  return isJson ? `[${shown.join(',')}]` : shown.join('\n');
}

/** Each line's attempt as it is shown; only the text of it is kept, since there may be very many. */
function readLines(
  text: string,
  lexicon: Lexicon,
  known: ReadWith,
  show: (attempt: AttemptReading) => string,
): readonly string[] {
  const found: string[] = [];
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const one = readLine(line, lexicon, known);
    if (typeof one !== 'string') {
      found.push(show(one));
      continue;
    }
    complain(`Line ${index + 1}: ${one}`);
    process.exitCode = 2;
  }
  return found;
}

/** The attempt of one line, or why it cannot be read. */
function readLine(line: string, lexicon: Lexicon, known: ReadWith): AttemptReading | string {
  const at = line.indexOf('=');
  if (at < 0) return `“${line}” has no attempt. Write the word said and what was written: ship=sip`;
  const word = line.slice(0, at);
  const readings = saidWord(word, lexicon);
  if (!readings) {
    return `“${word}” is not in the word list, and its letters give no guess. Check the word that was said.`;
  }
  return readAttempt(readings, line.slice(at + 1).trim(), known);
}

function attemptJson({
  word,
  wrote,
  reading,
  cards,
  added,
  sequences,
  wordRight,
}: AttemptReading): string {
  return JSON.stringify({
    word,
    wrote,
    sounds: makeSounds(reading.sounds),
    cards: cards.map(({ id, letters, verdict, heard, taught, habit }) => ({
      id,
      letters,
      verdict,
      heard,
      taught,
      habit,
    })),
    added,
    sequences,
    wordRight,
  });
}

function attemptLine(attempt: AttemptReading): string {
  const { right, of } = attempt.sequences;
  const shown = attempt.cards.map(({ id, letters, verdict }) => {
    const grapheme = graphemeOf(id);
    if (verdict === 'same') return grapheme;
    return `${grapheme}→${letters === '' ? '–' : letters}`;
  });
  const written = attempt.wrote === '' ? '–' : attempt.wrote;
  return `${attempt.word}  ${written}  ${shown.join(' ')}  ${inPlainWords(attempt)}  (${right} of ${of} letter sequences)`;
}
