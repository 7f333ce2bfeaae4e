import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scriptedReadings } from '../../test/scripted-readings.ts';
import { childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Observation } from '../learners/observation.ts';
import { type CardFacts, cardFacts, LATELY_DAYS } from './card-facts.ts';
import { cardReadings, readingsByChild, readingsOfGroup } from './card-reading.ts';
import { cardsOfChild } from './cards-of-child.ts';
import { readingsIn } from './class-readings.ts';
import { allHeardSaid, heardSaid, heardShort } from './heard-said.ts';
import { seenSaid } from './seen-said.ts';

// 20 000 is 2024-10-04.
const DAY = 20_000;
const SINCE = DAY - LATELY_DAYS;

function factsOf(card: CardId, lines: Readonly<Record<number, string>>): CardFacts {
  const all = Object.entries(lines)
    .map(([ago, line]) => ({ day: DAY - Number(ago), line }))
    .sort((one, other) => one.day - other.day)
    .flatMap(({ day, line }) => scriptedReadings(childId('Mina'), day, line));
  return cardFacts(card, readingsByChild(all, 'read').get(childId('Mina'))?.get(card), SINCE);
}

describe('what a reading says of its cards', () => {
  const outcomes = (line: string) =>
    scriptedReadings(childId('Mina'), DAY, line)
      .flatMap(cardReadings)
      .map(({ word, at, outcome }) => `${word[at]} ${outcome}`);

  it.each<[string, readonly string[]]>([
    ['sh-i-p', ['sh=SH right', 'i=IH right', 'p=P right']],
    ['sh-i-p!2:EH', ['sh=SH right', 'i=IH missed']],
    ['sh-i-p!', ['sh=SH unclear', 'i=IH unclear', 'p=P unclear']],
    ['i!', ['i=IH missed']],
  ])('%s', (line, said) => {
    expect(outcomes(line)).toEqual(said);
  });
});

describe('the facts of a card', () => {
  it('count what is clear, with what was heard and since when', () => {
    const facts = factsOf('i=IH', { 9: 'p-i-n i', 6: 'p-i-n!2:EH h-i-t!2:EH', 2: 'i!1:AE s-i-t!' });
    expect(facts).toMatchObject({
      right: 2,
      missed: 3,
      unclear: 1,
      last: ['missed', 'missed', 'missed'],
      heard: [
        { heard: 'EH', count: 2 },
        { heard: 'AE', count: 1 },
      ],
      since: DAY - 9,
      until: DAY - 2,
    });
    expect(seenSaid(facts)).toBe(
      'Missed 3 of the last 3. Right 2 of 5 since September 25. In 1 word more it was not said what went wrong.',
    );
    expect(allHeardSaid(facts, 'classroom')).toBe('said /ĕ/ twice, said /ă/ once');
  });

  it('leave out what is older than four weeks, but never the last three readings', () => {
    const rested = factsOf('i=IH', { 200: 'i! i! i', 100: 'i', 90: 'i!' });
    expect(rested).toMatchObject({ right: 2, missed: 1, last: ['right', 'right', 'missed'] });
    const busy = factsOf('i=IH', { 200: 'i! i! i!', 5: 'i i', 1: 'i' });
    expect(busy).toMatchObject({ right: 3, missed: 0, since: DAY - 5 });
    expect(seenSaid(busy)).toBe('Right 3 of 3 since September 29.');
  });

  it('say that nothing was read, and that nothing is clear', () => {
    expect(seenSaid(factsOf('i=IH', {}))).toBe('Not read yet.');
    expect(seenSaid(factsOf('i=IH', { 1: 'p-i-n!' }))).toBe(
      'Not read clearly yet. In 1 word more it was not said what went wrong.',
    );
  });

  it('tell which letter of two was left out', () => {
    const facts = factsOf('st=S+T', { 1: 'st-o-p!1:S', 0: 'st-e-m!1:left-out' });
    expect(allHeardSaid(facts, 'classroom')).toBe('left out t once, left it out once');
  });
});

describe('what was heard', () => {
  it.each<[string, CardId, string, string]>([
    ['IH', 'e=EH', 'said /ĭ/', '/ĭ/'],
    ['left-out', 'e=EH', 'left it out', 'out'],
    ['K S', 'e=EH', 'said /ks/', '/ks/'],
    ['mm', 'e=EH', 'said mm', 'mm'],
    ['helicopter', 'e=EH', 'said helicopter', 'helico…'],
    ['S', 'st=S+T', 'left out t', 'no t'],
    ['T', 'st=S+T', 'left out s', 'no s'],
    ['D', 'st=S+T', 'said /d/', '/d/'],
    ['S T', 'str=S+T+R', 'left out r', 'no r'],
    ['S', 'str=S+T+R', 'left out t and r', 'no t r'],
    ['S R', 'str=S+T+R', 'left out t', 'no t'],
    ['letter t=T', 'st=S+T', 'missed its t', 'not t'],
    ['SH', 'sh=SH', 'said /sh/', '/sh/'],
  ])('%s for %s: %s', (heard, card, said, short) => {
    expect(heardSaid(heard, card, 'classroom')).toBe(said);
    expect(heardShort(heard, card, 'classroom')).toBe(short);
  });
});

describe('the readings of a class', () => {
  const whole = scriptedReadings(childId('Mina'), DAY, 'sh i!', [
    groupId('g'),
    groupId('whole-class'),
  ]);
  const alone = scriptedReadings(childId('Kofi'), DAY - 1, 'sh!', [groupId('whole-class')]);
  const together: Observation = {
    ...(alone[0] as Observation),
    child: null,
    groups: [groupId('g')],
  };
  const readings = readingsIn([...whole, ...alone, together], 'read');

  it('are of one child, whoever else was there', () => {
    expect([...readings.of({ of: 'child', id: childId('Mina') }).keys()]).toEqual([
      'sh=SH',
      'i=IH',
    ]);
    expect(readings.of({ of: 'child', id: childId('nobody') }).size).toBe(0);
  });

  it('are of a group, together and one by one, oldest first', () => {
    const group = readings.of({ of: 'group', id: groupId('g') }).get('sh=SH') ?? [];
    expect(group.map(({ outcome }) => outcome)).toEqual(['missed', 'right']);
    expect(readings.childrenOf(groupId('whole-class'))).toEqual(['Mina', 'Kofi']);
    expect(readings.childrenOf(groupId('g'))).toEqual(['Mina']);
  });

  it('cover all that a child was asked, and tell what was beyond its group’s step', () => {
    const own = readings.of({ of: 'child', id: childId('Mina') });
    expect(cardsOfChild(['m=M', 'sh=SH'], own)).toEqual([
      { card: 'm=M', beyond: false },
      { card: 'sh=SH', beyond: false },
      { card: 'i=IH', beyond: true },
    ]);
  });
});

describe('the facts of any log', () => {
  const reading = fc
    .record({
      day: fc.integer({ min: DAY - 60, max: DAY }),
      child: fc.constantFrom(childId('Mina'), childId('Kofi'), null),
      cards: fc.array(fc.constantFrom('m=M', 'i=IH', 'sh=SH'), { minLength: 1, maxLength: 4 }),
      right: fc.boolean(),
      broke: fc.option(fc.integer({ min: 1, max: 4 })),
    })
    .map(
      ({ broke, ...rest }): Observation => ({
        ...rest,
        groups: [groupId('g')],
        task: 'read',
        broke: rest.right || broke === null ? null : Math.min(broke, rest.cards.length),
        heard: null,
      }),
    );

  /** The same counts, made one reading after the other from the log as it stands. */
  function naive(log: readonly Observation[], card: CardId) {
    const clear: { readonly day: number; readonly isRight: boolean }[] = [];
    for (const { day, child, cards, right, broke } of log.toSorted((a, b) => a.day - b.day)) {
      if (child !== 'Mina') continue;
      for (const [at, id] of cards.entries()) {
        if (id !== card) continue;
        const wrongAt = broke ?? (cards.length === 1 ? 1 : 0);
        if (right || at + 1 < wrongAt) clear.push({ day, isRight: true });
        else if (at + 1 === wrongAt) clear.push({ day, isRight: false });
      }
    }
    const late = clear.filter(({ day }) => day >= SINCE);
    const counted = late.length >= 3 ? late : clear.slice(-3);
    return {
      right: counted.filter(({ isRight }) => isRight).length,
      missed: counted.filter(({ isRight }) => !isRight).length,
      last: clear.slice(-3).map(({ isRight }) => (isRight ? 'right' : 'missed')),
    };
  }

  it('are those of a plain count, and the sentence says the same', () => {
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 40 }), (log) => {
        const own = readingsByChild(log, 'read').get(childId('Mina'));
        for (const card of ['m=M', 'i=IH', 'sh=SH'] as const) {
          const facts = cardFacts(card, own?.get(card), SINCE);
          const { right, missed, last } = naive(log, card);
          expect(facts).toMatchObject({ right, missed, last });
          const said = seenSaid(facts);
          if (right + missed > 0) expect(said).toContain(`Right ${right} of ${right + missed} `);
          const lately = last.filter((outcome) => outcome === 'missed').length;
          const recent = /Missed (\d) of the last (\d)/.exec(said);
          if (recent) expect(recent.slice(1).map(Number)).toEqual([lately, last.length]);
          else expect(lately === 0 || right + missed === last.length).toBe(true);
        }
      }),
    );
  });

  it('of a group hold those of each of its children', () => {
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 40 }), (log) => {
        const group = readingsOfGroup(log, 'read', groupId('g'));
        const children = readingsByChild(log, 'read');
        for (const byCard of children.values()) {
          for (const [card, own] of byCard) {
            expect(group.get(card)).toEqual(expect.arrayContaining([...own]));
          }
        }
      }),
      { numRuns: 50 },
    );
  });
});
