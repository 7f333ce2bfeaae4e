import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SOON } from '../../ordering/choose-irregular-words.ts';
import { parseCommonWords } from '../../ordering/common-words.ts';
import type { CardId } from '../language/card-id.ts';
import { CORRESPONDENCES } from '../language/correspondences.ts';
import { HABITS } from '../language/taught.ts';
import { APART } from './apart.ts';
import { SEQUENCE } from './built-in.ts';
import { itemKey, makeItem, parseItem } from './item.ts';
import { GRADES, type Grade } from './sequence.ts';
import { stepOf } from './step-of.ts';
import { taughtUpTo, teach } from './teach.ts';

const { steps } = SEQUENCE;
const all = taughtUpTo(SEQUENCE, steps.length);
const words = parseCommonWords(
  readFileSync(new URL('../../ordering/common-words.tsv', import.meta.url), 'utf8'),
);
const step = (id: CardId): number => stepOf(SEQUENCE, { kind: 'card', id }) ?? Number.NaN;
const endOf = (grade: Grade): number => steps.findLast((one) => one.grade === grade)?.number ?? 0;
const fixture = (name: string): readonly string[] =>
  readFileSync(new URL(`../../test/fixtures/${name}`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1);

/** Clusters that may begin or end a word (st) are taught once for each. */
const atBothEnds: ReadonlySet<string> = new Set(
  CORRESPONDENCES.filter(({ kind, places }) => kind === 'cluster' && places.length === 2).map(
    ({ id }) => itemKey({ kind: 'card', id }),
  ),
);

/** The first step of everything that a word can need, by item key. */
const firstStep = new Map<string, number>();
for (const { items, number } of steps) {
  const { correspondences, habits } = teach(items);
  const cards = [...correspondences].map((id) => itemKey({ kind: 'card', id }));
  const keys = [...cards, ...[...habits].map((habit) => itemKey({ kind: 'habit', habit }))];
  for (const key of keys) if (!firstStep.has(key)) firstStep.set(key, number);
}
const wordByLetters = new Map(words.map((word) => [word.word, word]));

/** The step from which a word can be read by its rules; Infinity when never. */
function readableFrom(word: string): number {
  const found = wordByLetters.get(word);
  if (!found?.regular) return Number.POSITIVE_INFINITY;
  return Math.max(...found.needs.map((need) => firstStep.get(need) ?? Number.POSITIVE_INFINITY));
}

describe('our order', () => {
  test('has about 130 steps, in grades and stages that follow one another', () => {
    expect(steps.length).toBeGreaterThanOrEqual(120);
    expect(steps.length).toBeLessThanOrEqual(145);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, place) => place + 1));
    const grades = steps.map(({ grade }) => GRADES.indexOf(grade));
    expect(grades).toEqual([...grades].sort((left, right) => left - right));
    const turns = steps.filter(({ stage }, place) => stage !== steps[place - 1]?.stage);
    expect(new Set(turns.map(({ stage }) => stage)).size).toBe(turns.length);
  });

  test('teaches every card that a rule gives (tiers 1 to 3), and every habit', () => {
    const due = CORRESPONDENCES.filter(({ tier }) => tier <= 3);
    expect(due.filter(({ id }) => !all.correspondences.has(id)).map(({ id }) => id)).toEqual([]);
    expect(HABITS.filter((habit) => !all.habits.has(habit))).toEqual([]);
  });

  test('teaches nothing that no rule gives as a card, and nothing twice', () => {
    const items = steps.flatMap((one) => one.items);
    const keys = items.map(itemKey).filter((key) => !atBothEnds.has(key));
    expect(keys.filter((key, place) => keys.indexOf(key) !== place)).toEqual([]);
    const tierOf = new Map(CORRESPONDENCES.map(({ id, tier }) => [id, tier]));
    expect(items.filter((item) => item.kind === 'card' && (tierOf.get(item.id) ?? 4) > 3)).toEqual(
      [],
    );
  });

  test('has a reason at every step', () => {
    for (const { why } of steps) expect(why).toMatch(/^[A-Z].{7,}\.$/);
  });
});

describe('what looks or sounds alike', () => {
  test.each(APART.map(({ cards, steps: least }) => [...cards, least] as const))(
    '%s and %s begin at least %i steps apart',
    (left, right, least) => {
      expect(Math.abs(step(left) - step(right))).toBeGreaterThanOrEqual(least);
    },
  );

  // Pairs and "several steps" are common practice, without a published number.
  test.each<[CardId, CardId]>([
    ['b=B', 'd=D'],
    ['e=EH', 'i=IH'],
    ['m=M', 'n=N'],
    ['p=P', 'qu=K+W'],
    ['f=F', 'v=V'],
  ])('%s and %s are several steps apart', (left, right) => {
    expect(Math.abs(step(left) - step(right))).toBeGreaterThanOrEqual(4);
  });
});

describe('the first letters', () => {
  const first = steps.slice(0, 8).flatMap(({ items }) => items.map(makeItem));

  // Common practice: short words soon, from sounds that can be held and sounds that stop.
  test('hold two vowels, sounds that can be held, and sounds that stop', () => {
    const among = (letters: string): number =>
      first.filter((letter) => letter.length === 1 && letters.includes(letter)).length;
    expect(among('aeiou')).toBeGreaterThanOrEqual(2);
    expect(among('fhlmnrsvz')).toBeGreaterThanOrEqual(2);
    expect(among('bcdgkpt')).toBeGreaterThanOrEqual(2);
  });

  test('let a child read a word at the second or third step, and many by the eighth', () => {
    const readable = (number: number): number =>
      words.filter(({ word }) => readableFrom(word) <= number).length;
    expect(readable(3)).toBeGreaterThanOrEqual(2);
    expect(readable(8)).toBeGreaterThanOrEqual(20);
  });
});

describe('irregular words', () => {
  const taught = steps.flatMap((one) =>
    one.items.flatMap((item) =>
      item.kind === 'word' ? [{ word: item.word, number: one.number }] : [],
    ),
  );

  test('are never ones that can be read by rule then, or soon after', () => {
    const soon = taught.filter(({ word, number }) => readableFrom(word) <= number + SOON);
    expect(soon).toEqual([]);
  });

  test('come a few at a time', () => {
    for (const one of steps) {
      const count = one.items.filter(({ kind }) => kind === 'word').length;
      expect(count).toBeLessThanOrEqual(one.grade === 'K' ? 1 : 2);
    }
  });

  // RF.K.3.c of the Common Core standards names these ten as examples.
  test.each('the of to you she my is are do does'.split(' '))(
    '“%s” is known by the end of kindergarten',
    (word) => {
      const byHeart = taughtUpTo(SEQUENCE, endOf('K')).irregularWords.has(word);
      expect(byHeart || readableFrom(word) <= endOf('K')).toBe(true);
    },
  );

  // Dolch 1936, 1948: 220 words of beginning reading (three of its five levels from memory).
  test('with the rules cover all of Dolch’s words by the end of grade 2', () => {
    const byHeart = taughtUpTo(SEQUENCE, endOf('2')).irregularWords;
    const missing = fixture('dolch-220.tsv')
      .map((line) => (line.split('\t')[0] as string).toLowerCase())
      .filter((word) => !byHeart.has(word) && readableFrom(word) > endOf('2'));
    expect(missing).toEqual([]);
  });
});

describe('other published lists', () => {
  // National Curriculum in England, English Appendix 1 (DfE 2013), Year 1: ages 5 and 6.
  test('every spelling of its Year 1 is taught by the end of grade 2', () => {
    const known = new Set(
      [...taughtUpTo(SEQUENCE, endOf('2')).correspondences].map((id) => id.split('=')[0]),
    );
    const graphemes = fixture('nc-appendix1.tsv')
      .map((line) => line.split('\t'))
      .filter(([year, kind]) => year === '1' && kind === 'gpc')
      .flatMap((cells) => (cells[4] as string).split(' '))
      .map((grapheme) => grapheme.replace('-', '_'))
      .filter((grapheme) => grapheme !== '');
    expect(graphemes.length).toBeGreaterThan(30);
    expect(graphemes.filter((grapheme) => !known.has(grapheme))).toEqual([]);
  });

  // 19 TAC 110.12(b)(3)(A), 2008 adoption: the spellings that its grade 1 names, written out as ids.
  test('every spelling that Texas named for grade 1 is taught by the end of grade 2', () => {
    const named =
      'b c c=S d f g g=JH h j k l m n p qu r s s=Z t v w x y z a e i o u a_e e=IY i_e o_e u_e ' +
      'y=IY y=AY bl st ch tch sh th wh ng ck kn dge ph oo oo=UH ea ea=EH ee ow=AW ow ou ay ai aw ' +
      'au ew oa ie=IY ie=AY igh oy oi';
    const { correspondences } = taughtUpTo(SEQUENCE, endOf('2'));
    for (const text of named.split(' ') as CardId[]) {
      const read = parseItem(text);
      const id = 'item' in read && read.item.kind === 'card' ? read.item.id : text;
      expect(correspondences.has(id), id).toBe(true);
    }
  });
});
