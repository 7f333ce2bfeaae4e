import { afterAll, describe, expect, it, vi } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { CardId } from '../language/card-id.ts';
import { ROWS } from '../language/correspondences.ts';
import type { Reading } from '../language/reading.ts';
import type { TableRow } from '../language/row.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import type { ReadWith } from './attempt.ts';
import { mayStand } from './may-stand.ts';
import { readAttempt } from './read-attempt.ts';
import { isFamiliarIn, saidWord } from './said-word.ts';

const known: ReadWith = { taught: null, isFamiliar: isFamiliarIn(builtLexicon) };
const read = (word: string, wrote: string, by: ReadWith = known) =>
  readAttempt(saidWord(word, builtLexicon)!, wrote, by);
const verdicts = (word: string, wrote: string) =>
  read(word, wrote)
    .cards.map(({ letters, verdict, heard }) => `${letters} ${verdict}${heard ? '' : ' –'}`.trim())
    .join(', ');

describe('what was written', () => {
  // Four needs: a digraph not known, a sound not heard, a spelling not known, good hearing.
  it.each([
    ['ship', 'sip', 's other-sound –, i same, p same'],
    ['jumped', 'jupt', 'j same, u same, left-out –, p same, t same-sound'],
    ['rain', 'rane', 'r same, a_e same-sound, n same'],
    ['rain', 'ran', 'r same, a other-sound –, n same'],
    ['train', 'chran', 'ch same-sound, r same, a same-sound, n same'],
    ['train', 'hran', 'h same-sound, r same, a same-sound, n same'],
    ['dragon', 'jragon', 'j same-sound, r same, a same, g same, o same, n same'],
    ['are', 'r', 'r same-sound'],
    ['girl', 'gril', 'g same, ri order, l same'],
    ['stop', 'sotp', 's same, t order, o order, p same'],
    ['was', 'saw', 'w order, a order, s order'],
    ['bed', 'ded', 'd turned, e same, d same'],
    ['bed', 'bad', 'b same, a other-sound –, d same'],
    ['think', 'thik', 'th same, i same, left-out –, k same'],
    ['socks', 'sox', 's same, o same, x same-sound, x same-sound'],
    ['box', 'boks', 'b same, o same, ks same-sound'],
  ])('%s as %s', (word, wrote, expected) => {
    expect(verdicts(word, wrote)).toBe(expected);
  });

  it.each([
    ['lake', 'lak', 1, 'silent-e'],
    ['have', 'hav', 2, 'silent-e'],
    ['rabbit', 'rabit', 2, 'doubling'],
    ['hill', 'hil', 2, 'ff-ll-ss-zz'],
    ['bus', 'buss', 2, 'ff-ll-ss-zz'],
    ['sock', 'sok', 2, 'c-k-ck'],
    ['kit', 'cit', 0, 'c-k-ck'],
    ['jumped', 'jumpt', 4, 'ed'],
    ['match', 'mach', 2, 'tch-dge'],
    ['rain', 'rane', 1, null],
  ])('%s as %s: a habit missed, the sound heard', (word, wrote, card, habit) => {
    expect(read(word, wrote).cards[card]).toMatchObject({ heard: true, habit });
  });

  it.each([
    ['train', 'chran', 0, 'affricated'],
    ['stop', 'sdop', 1, 'after-s'],
    ['water', 'wader', 2, 'flapped'],
    ['are', 'r', 0, 'letter-name'],
    ['bird', 'brd', 1, 'syllabic'],
    ['jump', 'jup', 2, 'nasal-lost'],
    ['help', 'hep', 2, 'liquid-lost'],
    ['stop', 'sop', 1, 'cluster-part'],
    ['bed', 'bad', 1, 'next-door-vowel'],
    ['van', 'fan', 0, 'voice'],
    ['sun', 'sum', 2, 'place'],
  ])('%s as %s: why', (word, wrote, card, fact) => {
    expect(read(word, wrote).cards[card]?.fact).toBe(fact);
  });

  it('says where letters were added', () => {
    expect(read('plate', 'palate').added).toEqual([{ letters: 'a', before: 1 }]);
    expect(read('bed', 'bede').added).toEqual([{ letters: 'e', before: 3 }]);
  });

  it('says whether another spelling may stand there, and whether it was taught', () => {
    const taught = taughtUpTo(SEQUENCE, 40);
    const [, ai] = read('rain', 'rane', { ...known, taught }).cards;
    const teaches = (id: CardId) => taught.correspondences.has(id);
    expect(ai).toMatchObject({ taught: teaches('ai=EY'), insteadTaught: teaches('a_e=EY') });
    expect(read('rain', 'rane').cards[1]).toMatchObject({ taught: null, mayStand: true });
    expect(read('sock', 'sok').cards[2]).toMatchObject({ instead: 'k=K', mayStand: false });
    expect(read('cat', 'kat').cards[0]).toMatchObject({ instead: 'k=K', mayStand: false });
    expect(read('seat', 'seet').cards[1]).toMatchObject({ instead: 'ee=IY', mayStand: true });
  });

  it('knows a blank, what cannot be read and another word', () => {
    expect(read('ship', '').answer).toBe('blank');
    expect(read('ship', ' – ').answer).toBe('blank');
    expect(read('ship', '??').answer).toBe('illegible');
    expect(read('ship', 'dog').answer).toBe('another-word');
    expect(read('ship', 'sip').answer).toBe('attempt');
  });

  it('takes the pronunciation that fits best', () => {
    expect(read('wind', 'wighnd').reading.sounds.join(' ')).toBe('W AY N D');
    expect(read('wind', 'wind').reading.sounds.join(' ')).toBe('W IH N D');
  });

  it('reads capitals and stray signs as the letters they are', () => {
    expect(read('ship', 'SHIP.').wordRight).toBe(true);
  });
});

/** The word list as far as children write it. */
const listed = Array.from({ length: builtLexicon.size }, (_, index) => index)
  .filter((index) => /^[a-z]+$/.test(builtLexicon.word(index)))
  .map((index) => builtLexicon.readings(index)[0] as Reading);

describe('laws', () => {
  it('a right spelling is the same card by card', () => {
    for (const reading of listed) {
      const { cards, added, wordRight } = readAttempt([reading], reading.word, known);
      if (!wordRight || added.length > 0 || cards.some(({ verdict }) => verdict !== 'same')) {
        throw new Error(reading.word);
      }
    }
  });

  it('without the letters of one card, that one is left out and nothing else changes', () => {
    const { broken } = withoutOne(listed.filter(({ syllables }) => syllables.length === 1));
    expect(broken).toEqual([]);
  });

  it('the same in longer words, but for a few that letters alone do not tell (pla·y·ng)', () => {
    const longer = listed.filter(({ syllables }) => syllables.length > 1).slice(0, 5000);
    const { tried, broken } = withoutOne(longer);
    expect(tried).toBeGreaterThan(5000);
    expect(broken.length / tried).toBeLessThan(0.001);
  });

  it('with another spelling that may stand there, every sound is heard', () => {
    const broken: string[] = [];
    const short = listed.filter(({ syllables }) => syllables.length === 1).slice(0, 2000);
    for (const reading of short) {
      reading.cards.forEach((card, at) => {
        for (const row of spellingsOf.get(card.phonemes.join(' ')) ?? []) {
          const wrote = replaced(reading, at, row);
          if (row.id === card.id || !mayStand(reading, at, row) || wrote === null) continue;
          const { cards } = readAttempt([reading], wrote, known);
          if (!cards.every(({ heard }) => heard)) broken.push(`${reading.word} ${wrote}`);
        }
      });
    }
    expect(broken).toEqual([]);
  });
});

describe('with the tables in another order', () => {
  afterAll(() => {
    vi.doUnmock('../language/correspondences.ts');
    vi.resetModules();
  });

  it('every attempt is read the same', async () => {
    const attempts = listed.slice(0, 600).flatMap((reading) => slipsOf(reading));
    const plain = attempts.map(([reading, wrote]) => shown(readAttempt([reading], wrote, known)));
    vi.resetModules();
    vi.doMock('../language/correspondences.ts', async (load) => {
      const tables = await load<typeof import('../language/correspondences.ts')>();
      return {
        ...tables,
        ROWS: tables.ROWS.toReversed(),
        correspondencesByGrapheme: new Map(
          [...tables.correspondencesByGrapheme].reverse().map(([letters, cards]) => {
            return [letters, cards.toReversed()] as const;
          }),
        ),
      };
    });
    const other = await import('./read-attempt.ts');
    expect(other.readAttempt).not.toBe(readAttempt);
    attempts.forEach(([reading, wrote], at) => {
      expect(shown(other.readAttempt([reading], wrote, known)), wrote).toBe(plain[at]);
    });
  });
});

function without(word: string, letters: readonly number[]): string {
  return [...word].filter((_, at) => !letters.includes(at)).join('');
}

/** Every word without each of its cards: how many attempts, and those read otherwise. */
function withoutOne(readings: readonly Reading[]) {
  const broken: string[] = [];
  let tried = 0;
  for (const reading of readings) {
    reading.cards.forEach((card, at) => {
      const wrote = without(reading.word, card.letters);
      if (wrote === '' || isAmbiguous(reading, at)) return;
      tried++;
      const { cards, added } = readAttempt([reading], wrote, known);
      const isRight = cards.every(
        ({ verdict }, other) => verdict === (other === at ? 'left-out' : 'same'),
      );
      if (!isRight || added.length > 0) broken.push(`${reading.word} ${card.id} ${wrote}`);
    });
  }
  return { tried, broken };
}

/** Where two cards side by side share a letter or a sound, it cannot be told which of them is there. */
function isAmbiguous({ cards }: Reading, at: number): boolean {
  const { grapheme, phonemes } = cards[at] as Reading['cards'][number];
  return [cards[at - 2], cards[at - 1], cards[at + 1], cards[at + 2]].some(
    (other) =>
      other &&
      ([...other.grapheme].some((letter) => grapheme.includes(letter)) ||
        other.phonemes.some((phoneme) => phonemes.includes(phoneme)) ||
        other.phonemes.length === 0),
  );
}

const spellingsOf = new Map<string, TableRow[]>();
for (const row of ROWS.filter(({ tier }) => tier < 4)) {
  const key = row.phonemes.join(' ');
  spellingsOf.set(key, [...(spellingsOf.get(key) ?? []), row]);
}

/** The word with another row in place of a card; null where its context does not hold. */
function replaced({ word, cards }: Reading, at: number, row: TableRow): string | null {
  const letters: string[] = [...word];
  const place = cards[at]?.letters ?? [];
  const [head = '', tail] = row.grapheme.split('_');
  place.forEach((letter, n) => {
    letters[letter] = n === 0 ? head : '';
  });
  const next = cards[at + 1];
  if (tail !== undefined) {
    if (cards.length !== at + 2 || !/^[bdfgklmnpt]$/.test(next?.grapheme ?? '')) return null;
    letters.push(tail);
  }
  const wrote = letters.join('');
  const from = place[0] as number;
  const { before, after } = row.context;
  const holds = before?.test(wrote.slice(0, from)) !== false;
  return holds && after?.test(wrote.slice(from + head.length)) !== false ? wrote : null;
}

/** A few slips on a word: a card lost, doubled, or exchanged for its neighbor's letters. */
function slipsOf(reading: Reading): readonly (readonly [Reading, string])[] {
  const { word, cards } = reading;
  return cards.flatMap(({ letters, grapheme }, at) => {
    const from = letters[0] as number;
    const instead = cards[(at + 1) % cards.length]?.grapheme.replace('_', '') ?? '';
    const other = word.slice(0, from) + instead + word.slice(from + grapheme.length);
    const twice = word.slice(0, from) + grapheme[0] + word.slice(from);
    const wrong = 'aeiou'[at % 5] + word.slice(1);
    return [without(word, letters), other, twice, wrong]
      .filter((wrote) => wrote !== '')
      .map((wrote) => [reading, wrote] as const);
  });
}

function shown(attempt: ReturnType<typeof readAttempt>): string {
  return JSON.stringify([attempt.cards, attempt.added, attempt.sequences]);
}
