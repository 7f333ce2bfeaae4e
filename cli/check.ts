import {
  CHECK_KINDS,
  type CheckItem,
  type CheckKind,
  type MadeForm,
  rowsOf,
} from '../core/checks/check-form.ts';
import { type Comparison, compareScores, comparisonSaid } from '../core/checks/difference.ts';
import { makeForm } from '../core/checks/make-form.ts';
import { parseReading } from '../core/checks/parse-reading.ts';
import {
  type CheckReading,
  type CheckScore,
  ROW_RULES,
  type RowRule,
  scoreCheck,
} from '../core/checks/score-check.ts';
import { graphemeShown, isSightId } from '../core/language/card-id.ts';
import { makeSounds } from '../core/language/phonemes.ts';
import { loadHere, readTaught, readTextFile } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions, type Typed } from './options.ts';

const NOTE = 'Practice monitoring, not a diagnosis. Ask your school’s licensed specialist.';
const MOST_ITEMS = 300;

/** `check make` and `check score FILE`: a short check of one child. */
export function check(args: readonly string[]): string {
  const [what, ...rest] = args;
  if (what === 'make') return make(rest);
  if (what === 'score') return score(rest);
  return fail(
    'Say what to do: check make --taught step:24 --seed 7 --items 30, or check score FILE.',
  );
}

function make(args: readonly string[]): string {
  const typed = readOptions(args, {
    taught: 'text',
    seed: 'text',
    items: 'text',
    kind: 'text',
    accent: 'text',
  });
  if (typed.words.length > 0) fail(`check make takes options only; “${typed.words[0]}” is none.`);
  const here = loadHere(typed);
  const taught = readTaught(typed.text('taught'), here);
  if (typed.text('seed') === null)
    fail('Give a seed: --seed 7. The same seed gives the same form.');
  const seed = typed.whole('seed', 0, 0, Number.MAX_SAFE_INTEGER);
  const kind = oneOf(typed, 'kind', CHECK_KINDS, 'nonsense-words');
  const count = typed.whole('items', kind === 'nonsense-words' ? 30 : 60, 1, MOST_ITEMS);
  const made = makeForm(kind, { taught, ...here }, seed, count);
  return typed.flag('json') ? JSON.stringify(formJson(made)) : formText(made);
}

function formJson({ form, shortfall }: MadeForm) {
  const { kind, seed, items, hardness, offBy } = form;
  return {
    kind,
    seed,
    items: items.map(itemJson),
    hardness,
    offBy,
    ...(shortfall ? { shortfall: shortfall.message } : {}),
  };
}

function itemJson({ text, cards, answers }: CheckItem) {
  return { text, cards, sounds: answers.map(makeSounds) };
}

function formText({ form, shortfall }: MadeForm): string {
  const rows = rowsOf(form).map((row) =>
    row.map(({ item }) => graphemeShown(item.text)).join('  '),
  );
  return [...rows, ...(shortfall ? ['', shortfall.message] : []), '', NOTE].join('\n');
}

function score(args: readonly string[]): string {
  const typed = readOptions(args, { rows: 'text', before: 'text' });
  const [file, ...more] = typed.words;
  if (file === undefined || more.length > 0) {
    return fail('Name one file: sweepline check score reading.json');
  }
  const rows = oneOf(typed, 'rows', ROW_RULES, 'each');
  const reading = readReading(file);
  const scored = scoreCheck(reading, rows);
  const earlier = typed.text('before');
  const compared = earlier === null ? null : compare(reading, scored, readReading(earlier), rows);
  return typed.flag('json')
    ? JSON.stringify(scoreJson(scored, compared))
    : scoreText(scored, compared);
}

function readReading(file: string): CheckReading {
  const parsed = parseReading(readJson(file));
  return 'error' in parsed ? fail(parsed.error) : parsed.reading;
}

/** Compares two checks, which must be of one kind. */
function compare(
  reading: CheckReading,
  now: CheckScore,
  earlier: CheckReading,
  rows: RowRule,
): Comparison | null {
  const kind = kindOf(reading);
  if (kindOf(earlier) !== kind) {
    return fail(
      'Two checks are compared when both are of one kind: letter sounds, nonsense words or words at sight.',
    );
  }
  return compareScores(kind, now, scoreCheck(earlier, rows));
}

function kindOf({ items }: CheckReading): CheckKind {
  if (items.some(({ cards }) => cards.some(isSightId))) return 'sight-words';
  return items.every(({ cards }) => cards.length === 1) ? 'letter-sounds' : 'nonsense-words';
}

function scoreJson({ missed, ...score }: CheckScore, compared: Comparison | null) {
  return {
    ...score,
    ...(compared === null ? {} : { comparison: compared }),
    missed: missed.map(({ item, at, kind, cards, said }) => ({
      at,
      text: item.text,
      kind,
      ...(cards ? { cards } : {}),
      ...(said === undefined ? {} : { said }),
    })),
    note: NOTE,
  };
}

function scoreText(score: CheckScore, compared: Comparison | null): string {
  const { asked, right, accuracy, soundsAsked, soundsRight, rightPerMinute, soundsPerMinute } =
    score;
  const share = accuracy === null ? '' : ` (${Math.round(accuracy * 100)}%)`;
  return [
    `${right} of ${asked} right${share}, ${soundsRight} of ${soundsAsked} sounds.`,
    ...(rightPerMinute === null || soundsPerMinute === null
      ? []
      : [`${rightPerMinute.toFixed(1)} a minute, ${soundsPerMinute.toFixed(1)} sounds a minute.`]),
    ...(compared === null ? [] : [comparisonSaid(compared)]),
    ...score.missed.map(
      ({ item, kind, said }) => `  ${item.text}  ${kind}${said === undefined ? '' : `: ${said}`}`,
    ),
    '',
    NOTE,
  ].join('\n');
}

function readJson(file: string): unknown {
  try {
    return JSON.parse(readTextFile(file));
  } catch (error) {
    if (error instanceof SyntaxError) return fail(`“${file}” is not JSON: ${error.message}`);
    throw error;
  }
}

function oneOf<const Choice extends string>(
  typed: Typed,
  name: string,
  choices: readonly Choice[],
  otherwise: Choice,
): Choice {
  const text = typed.text(name);
  if (text === null) return otherwise;
  return (
    choices.find((choice) => choice === text) ??
    fail(`--${name} is one of ${choices.join(', ')}; “${text}” is none.`)
  );
}
