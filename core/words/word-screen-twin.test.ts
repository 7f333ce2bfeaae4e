import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { screenKeys } from '../../lexicon/screen/keys.ts';
import { parseHarmlessList, parseScreenList } from '../../lexicon/screen/list.ts';
import { PHONEMES, type Phoneme } from '../language/phonemes.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { heard } from './screen-ear.ts';
import { encodeMark, isStopMark, reachOf } from './screen-format.ts';
import type { HashSpace } from './screen-hash.ts';
import { isVowelLetter, lettersExactly, lettersSeen } from './screen-letters.ts';
import { closesSyllable, LOOSE, letterStems, opensSyllable, soundStems } from './screen-stems.ts';
import { createWordScreen } from './word-screen.ts';

/**
 * A naive twin of the screen: keys in plain text instead of hashes, every part
 * of a word instead of the likely ones. It shares only the codes and the bases.
 */
const read = (name: string) =>
  readFileSync(new URL(`../../lexicon/screen/${name}`, import.meta.url), 'utf8');
const rows = parseScreenList(read('list.tsv'));
const harmless = parseHarmlessList(read('harmless.tsv'));
const marks = new Map<string, number>();
const rank = (mark: number) => (isStopMark(mark) ? 10 : 0) + (mark > 0 ? reachOf(mark) : -1);
for (const { space, codes, mark } of screenKeys(rows, harmless)) {
  const key = `${space}:${codes.join(' ')}`;
  const number = mark ? encodeMark(mark) : 0;
  if (rank(number) >= rank(marks.get(key) ?? 0)) marks.set(key, number);
}

type Codes = readonly number[];
const markOf = (space: HashSpace, codes: Codes) => marks.get(`${space}:${codes.join(' ')}`);

function twin(word: string, sounds: readonly Phoneme[]): 'stop' | 'ask' | 'clear' {
  const exact = codesOf(lettersExactly, word);
  if (exact.length > 0 && markOf('harmless-letters', exact) !== undefined) return 'clear';
  const letters = codesOf(lettersSeen, word);
  const own = letters.length > 0 ? markOf('letters', letters) : undefined;
  if (own !== undefined) return isStopMark(own) ? 'stop' : 'ask';
  const plain = codesOf(heard.plain, sounds);
  const ed = /ed$/i.test(word) && word.length > 2;
  const letterEnds = basesOf(letters, (codes, out) => letterStems(codes, letters.length, out));
  const soundEnds = (codes: Codes) =>
    basesOf(codes, (bytes, out) => soundStems(bytes, codes.length, ed, out));
  const seen = whole('letters', letters, letterEnds);
  const found = [...seen, ...whole('plain', plain, soundEnds(plain))];
  if (seen.length === 0) {
    found.push(...halves('letter-halves', letters, letterEnds));
    if (plain.length > 0 && markOf('harmless-sounds', plain) === undefined) {
      const full = codesOf(heard.full, sounds);
      found.push(
        ...whole('slips', plain, soundEnds(plain)),
        ...halves('halves', full, soundEnds(full)),
      );
    }
  }
  if (found.some(isStopMark)) return 'stop';
  return found.length > 0 ? 'ask' : 'clear';
}

function whole(space: HashSpace, codes: Codes, bases: Codes): readonly number[] {
  return bases.flatMap((base, place) => {
    const end = base % LOOSE;
    const mark = markOf(space, codes.slice(0, end));
    if (mark === undefined || (place > 0 && reachOf(mark) === 0)) return [];
    if (!isStopMark(mark) && base >= LOOSE) return [];
    const fit = space === 'slips' && markOf('harmless-sounds', codes.slice(0, end)) !== undefined;
    return fit ? [] : [mark];
  });
}

function halves(space: HashSpace, codes: Codes, bases: Codes): readonly number[] {
  const letters = space === 'letter-halves';
  const isVowel = (code: number) => (letters ? isVowelLetter(code) : code <= 16);
  const bytes = Uint8Array.from([...codes, 0]);
  const sizes = letters ? [4, 5, 6] : [3, 4, 5];
  const behind = bases.flatMap((base) =>
    sizes.map((size) => [(base % LOOSE) - size, base % LOOSE] as const),
  );
  return [
    ...behind
      .filter(([from]) => from > 0 && codes.slice(0, from).some(isVowel))
      .filter(([from]) => letters || opensSyllable(bytes, from))
      .flatMap(([from, to]) => markOf(space, codes.slice(from, to)) ?? []),
    ...sizes
      .filter((size) => size < codes.length && codes.slice(size).some(isVowel))
      .filter((size) => letters || closesSyllable(bytes, size))
      .flatMap((size) => markOf(space, codes.slice(0, size)) ?? []),
  ];
}

function codesOf<Word>(readInto: (word: Word, out: Uint8Array) => number, word: Word): Codes {
  const out = new Uint8Array(64);
  return [...out.subarray(0, readInto(word, out))];
}

function basesOf(codes: Codes, find: (bytes: Uint8Array, out: Uint8Array) => number): Codes {
  const out = new Uint8Array(8);
  return [...out.subarray(0, find(Uint8Array.from(codes), out))];
}

const screen = createWordScreen(SCREEN_DATA);
const listed = fc.constantFrom(...rows.filter(({ sounds }) => sounds.length > 0));
const some = fc.array(fc.constantFrom(...PHONEMES), { maxLength: 5 });
const letters = fc.stringMatching(/^[a-z]{0,6}$/);

test('the screen judges as its naive twin does, on any letters and sounds', () => {
  fc.assert(
    fc.property(letters, some, some, (word, first, second) => {
      const sounds = [...first, ...second];
      expect(screen.judge(word, sounds).verdict).toBe(twin(word, sounds));
    }),
    { numRuns: 2000 },
  );
});

test('and on listed words with something before and behind', () => {
  fc.assert(
    fc.property(letters, letters, some, some, listed, (head, tail, before, behind, row) => {
      const sounds = [...before, ...(row.sounds[0] as readonly Phoneme[]), ...behind];
      const word = head + row.spelling + tail;
      expect(screen.judge(word, sounds).verdict).toBe(twin(word, sounds));
      expect(screen.judge('', sounds).verdict).toBe(twin('', sounds));
    }),
    { numRuns: 3000 },
  );
});
