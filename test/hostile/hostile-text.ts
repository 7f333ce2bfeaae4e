import type { Random } from '../../core/random.ts';

/** The most signs that a hostile text has. */
const MOST_SIGNS = 20_000;

/**
 * Texts made from valid ones as an attacker or a bad day would: cut off, with signs flipped, pieces repeated,
 * taken out or taken from another text, wrapped deep, numbers made huge, and marks that no one sees put in.
 * Most are small; one in twenty is long.
 */
export function hostileText(samples: readonly string[], random: Random): string {
  let text = pick(samples, random).slice(0, random.below(20) === 0 ? MOST_SIGNS : 1500);
  for (let harms = 1 + random.below(4); harms > 0; harms--) {
    const harm = HARMS[random.below(HARMS.length)] as Harm;
    text = harm(text, random, samples).slice(0, MOST_SIGNS);
  }
  return text;
}

/**
 * Values made from valid ones in the same way: JSON with a part replaced, repeated, or wrapped deep; what is
 * no JSON any more stays a text. Some hold what JSON cannot say: NaN, undefined, numbers beyond all.
 */
export function hostileValue(samples: readonly string[], random: Random): unknown {
  if (random.below(3) === 0) return jsonOf(hostileText(samples, random));
  const value = jsonOf(pick(samples, random));
  return replaced(value, random, 1 + random.below(3));
}

type Harm = (text: string, random: Random, samples: readonly string[]) => string;

const HARMS: readonly Harm[] = [
  (text, random) => text.slice(0, random.below(text.length + 1)),
  (text, random) => text.slice(random.below(text.length + 1)),
  (text, random) => without(text, random),
  (text, random) => spliced(text, random, pick(MARKS, random)),
  (text, random) => spliced(text, random, String.fromCharCode(random.below(0x10000))),
  (text, random) => spliced(text, random, pieceOf(text, random).repeat(1 + random.below(400))),
  (text, random, samples) => spliced(text, random, pieceOf(pick(samples, random), random)),
  (text, random) => spliced(text, random, pick(MARKS, random).repeat(1 + random.below(3000))),
  (text, random) => {
    const [open, close] = pick(PAIRS, random);
    const depth = 1 + random.below(random.below(6) === 0 ? 9000 : 90);
    return open.repeat(depth) + text + close.repeat(random.below(2) * depth);
  },
  (text, random) =>
    text.replace(/\d+/g, (digits) => (random.below(3) ? digits : pick(NUMBERS, random))),
  (text, random) =>
    text.replace(/[a-z]+/gi, (word) => (random.below(9) ? word : pick(WORDS, random))),
  (text, random) => text.replaceAll('\n', pick(['\r', '\r\n', '\u2028', '', '\n\n'], random)),
  (text) => text + text,
];

/** Signs that nobody sees, that turn the direction of writing, that end or open something. */
const MARKS = [
  '\0',
  '\u0007',
  '\u001b[2J',
  '\u00ad',
  '\u200b',
  '\u200d',
  '\u202e',
  '\u2066',
  '\ufeff',
  '\ufffd',
  '\ud83d',
  '\udc00',
  '\u0301',
  '👩‍👩‍👧',
  'ﬃ',
  'İ',
  '"',
  "'",
  '\\',
  '","',
  '\t',
  ',',
  ';',
  '=',
  '-',
  '.',
  '~',
  '%',
  '%zz',
  '&',
  '?',
  '#',
  '\n',
];

const PAIRS: readonly (readonly [string, string])[] = [
  ['[', ']'],
  ['{"a":', '}'],
  ['{"body":', '}'],
  ['"', '"'],
  ['(', ')'],
];

const NUMBERS = [
  '-1',
  '1e308',
  '9'.repeat(400),
  '8640000000000001',
  '0.1',
  '-0',
  '1e-7',
  'NaN',
  '0x10',
];

const WORDS = ['__proto__', 'constructor', 'toString', 'null', 'true', 'ș', 'ß', '', 'length'];

/** What a value may be replaced with. */
const VALUES: readonly unknown[] = [
  null,
  true,
  '',
  0,
  -1,
  1.5,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  8.64e15 + 1,
  1e308,
  undefined,
  [],
  {},
  [[]],
  '__proto__',
  '\u202e\0',
  'x'.repeat(5000),
];

function replaced(value: unknown, random: Random, times: number): unknown {
  if (times === 0) return value;
  return replaced(replaceOnce(value, random), random, times - 1);
}

function replaceOnce(value: unknown, random: Random): unknown {
  const isInside = typeof value === 'object' && value !== null && random.below(4) > 0;
  if (!isInside) return nasty(value, random);
  if (Array.isArray(value)) {
    if (value.length === 0) return nasty(value, random);
    const at = random.below(value.length);
    return value.map((one, place) => (place === at ? replaceOnce(one, random) : one));
  }
  const fields = Object.entries(value);
  if (fields.length === 0) return nasty(value, random);
  const at = random.below(fields.length);
  return Object.fromEntries(
    fields.flatMap(([name, held], place) => {
      if (place !== at) return [[name, held]];
      return random.below(6) === 0 ? [] : [[name, replaceOnce(held, random)]];
    }),
  );
}

function nasty(value: unknown, random: Random): unknown {
  const way = random.below(4);
  if (way === 0) {
    const most = Math.ceil(MOST_SIGNS / (1 + sizeOf(value)));
    return Array.from({ length: random.below(Math.min(300, most) + 1) }, () => value);
  }
  if (way === 1) {
    let deep = value;
    for (let depth = random.below(2000); depth > 0; depth--) deep = depth % 2 ? [deep] : { deep };
    return deep;
  }
  return VALUES[random.below(VALUES.length)];
}

/** How long a value is as JSON; one that is nested too deep for it is as long as may be. */
function sizeOf(value: unknown): number {
  try {
    return JSON.stringify(value)?.length ?? 0;
  } catch {
    return MOST_SIGNS;
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

function pick<One>(all: readonly One[], random: Random): One {
  return all[random.below(all.length)] as One;
}

function pieceOf(text: string, random: Random): string {
  const from = random.below(text.length + 1);
  return text.slice(from, from + 1 + random.below(40));
}

function spliced(text: string, random: Random, piece: string): string {
  const at = random.below(text.length + 1);
  return text.slice(0, at) + piece + text.slice(at);
}

function without(text: string, random: Random): string {
  const from = random.below(text.length + 1);
  return text.slice(0, from) + text.slice(from + random.below(60));
}
