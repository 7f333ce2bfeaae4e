import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { stepOf } from '../sequence/step-of.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { parseDay } from './day.ts';
import { knowledgeFrom } from './knowledge.ts';
import type { Observation } from './observation.ts';
import { planReview, type ReviewChoice, type ReviewPlan } from './review.ts';
import { makeReason, type ReviewReason } from './review-reason.ts';

const TUESDAY = parseDay('2026-03-03') as number;
const THURSDAY = TUESDAY + 2;
const upToNg = stepOf(SEQUENCE, { kind: 'card', id: 'ng=NG' }) ?? 0;
const taught = [...taughtUpTo(SEQUENCE, upToNg).correspondences];

function plan(
  observations: readonly Observation[],
  newest: readonly CardId[] = [],
  known: readonly CardId[] = taught,
): ReviewPlan {
  return planReview({
    observations,
    knowledge: knowledgeFrom(observations),
    group: groupId('g'),
    taught: known,
    newest,
    day: THURSDAY,
  });
}

function seen(card: CardId, day: number, count: number, missed = 0): readonly Observation[] {
  return Array.from({ length: count }, (_, n) => ({
    day,
    child: childId('Mina'),
    groups: [groupId('g')],
    task: 'read' as const,
    cards: [card],
    right: n >= missed,
    broke: n < missed ? 1 : null,
    heard: null,
  }));
}

const allWell = taught.flatMap((card) =>
  [20, 15, 10, 6, 3, 1].flatMap((ago) => seen(card, THURSDAY - ago, 3)),
);
const whyOf = (choices: readonly ReviewChoice[], id: string): ReviewReason | undefined =>
  choices.find(({ card }) => card === id)?.why;

describe('a day’s plan', () => {
  it('brings what is new first, and says when it was new', () => {
    const observations = [...allWell, ...seen('ng=NG', THURSDAY - 1, 2)];
    const fresh = allWell.filter(({ cards }) => cards[0] !== 'sh=SH' && cards[0] !== 'ng=NG');
    const made = plan([...fresh, ...observations.slice(-2)], ['sh=SH', 'ng=NG']);
    const codes = made.visual.slice(0, 2).map(({ why }) => why.code);
    expect(codes).toEqual(['new', 'new']);
    expect(whyOf(made.visual, 'sh=SH')).toEqual({ code: 'new', days: 0 });
    expect(makeReason(whyOf(made.visual, 'ng=NG') as ReviewReason, THURSDAY)).toBe('new yesterday');
  });

  it('says of what is new and was missed at once that it was missed', () => {
    const without = allWell.filter(({ cards }) => cards[0] !== 'sh=SH');
    const made = plan([...without, ...seen('sh=SH', THURSDAY - 1, 3, 1)], ['sh=SH']);
    expect(made.visual[0]?.card).toBe('sh=SH');
    expect(makeReason(made.visual[0]?.why as ReviewReason, THURSDAY)).toBe(
      'missed 1 of 3 yesterday',
    );
  });

  it('brings back what was missed, with how often and when', () => {
    const made = plan([
      ...allWell.filter(({ cards }) => cards[0] !== 'e=EH'),
      ...seen('e=EH', TUESDAY, 9, 4),
    ]);
    for (const part of [made.visual, made.blending]) {
      const why = whyOf(part, 'e=EH');
      expect(why).toEqual({ code: 'missed', missed: 4, asked: 9, day: TUESDAY });
      expect(makeReason(why as ReviewReason, THURSDAY)).toBe('missed 4 of 9 on Tuesday');
    }
  });

  it('brings back what has not been seen for long', () => {
    const made = plan([
      ...allWell.filter(({ cards }) => cards[0] !== 'g=G'),
      ...seen('g=G', THURSDAY - 30, 2),
    ]);
    const why = whyOf(made.visual, 'g=G');
    expect(makeReason(why as ReviewReason, THURSDAY)).toBe('not seen for 30 days');
  });

  it('says of a card that was never in a drill that it was not', () => {
    expect(plan([]).visual.every(({ why }) => why.code === 'never-seen')).toBe(true);
  });

  it('brings back what it is told broke, next after what is new, and says why of every card', () => {
    const back: readonly CardId[] = ['g=G', 'm=M'];
    const made = planReview({
      observations: allWell,
      knowledge: knowledgeFrom(allWell),
      group: groupId('g'),
      taught: [...taught, 'oi=OY'],
      newest: ['oi=OY'],
      back,
      day: THURSDAY,
    });
    for (const part of [made.visual, made.blending]) {
      expect(part[0]?.card).toBe('oi=OY');
      expect([part[1]?.card, part[2]?.card].sort()).toEqual(back);
    }
    for (const why of [made.why.read, made.why.spell]) {
      expect([...why.keys()].sort()).toEqual([...taught, 'oi=OY'].sort());
    }
  });

  it('is never all trouble, where some cards go well', () => {
    const weak = new Set(taught.slice(0, 20));
    const observations = taught.flatMap((card) =>
      [9, 5, 2].flatMap((ago) => seen(card, THURSDAY - ago, 6, weak.has(card) ? 5 : 0)),
    );
    const codes = plan(observations).visual.map(({ why }) => why.code);
    expect(codes.filter((code) => code === 'missed').length).toBeGreaterThan(6);
    expect(codes.filter((code) => code === 'goes-well').length).toBeGreaterThanOrEqual(2);
  });

  const evidence = fc.array(
    fc.record({
      card: fc.constantFrom(...taught),
      ago: fc.integer({ min: 1, max: 30 }),
      count: fc.integer({ min: 1, max: 4 }),
      missed: fc.integer({ min: 0, max: 4 }),
    }),
    { maxLength: 60 },
  );
  const situations = fc.record({
    evidence,
    known: fc.subarray(taught, { minLength: 1 }),
    newest: fc.subarray(taught, { maxLength: 4 }),
  });

  it('holds taught cards only, none twice, at most as many as asked, each with its reason', () => {
    fc.assert(
      fc.property(situations, ({ evidence, known, newest }) => {
        const observations = evidence.flatMap(({ card, ago, count, missed }) =>
          seen(card, THURSDAY - ago, count, Math.min(count, missed)),
        );
        const made = plan(observations, newest, known);
        for (const [part, most] of [
          [made.visual, 12],
          [made.auditory, 6],
          [made.blending, 5],
        ] as const) {
          const cards = part.map(({ card }) => card);
          expect(new Set(cards).size).toBe(cards.length);
          expect(cards.length).toBeLessThanOrEqual(most);
          expect(cards.every((card) => known.includes(card))).toBe(true);
          for (const { why } of part) expect(makeReason(why, THURSDAY)).not.toMatch(/NaN|Inf|-\d/);
        }
        const graphemes = made.visual.map(({ card }) => card.split('=')[0]);
        expect(new Set(graphemes).size).toBe(graphemes.length);
        expect(plan(observations, newest, known)).toEqual(made);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps vowels and consonants in balance', () => {
    const vowels = (choices: readonly ReviewChoice[]) =>
      choices.filter(({ card }) => {
        const found = correspondenceById.get(card);
        return found !== undefined && isVowelCard(found);
      }).length;
    const made = plan(allWell);
    expect(made.visual).toHaveLength(12);
    expect(vowels(made.visual)).toBeGreaterThanOrEqual(3);
    expect(vowels(made.visual)).toBeLessThanOrEqual(8);
    expect(vowels(made.blending)).toBeGreaterThanOrEqual(1);
    expect(vowels(made.blending)).toBeLessThan(made.blending.length);
  });

  it('brings words known by sight by the same need, beside the cards, to read and to spell apart', () => {
    const words: readonly CardId[] = ['was=sight', 'said=sight', 'they=sight'];
    const observations = [
      ...allWell,
      ...[20, 15, 10, 6, 3, 1].flatMap((ago) => seen('was=sight', THURSDAY - ago, 3)),
      ...seen('said=sight', THURSDAY - 2, 4, 3),
      ...seen('they=sight', THURSDAY - 2, 4).map((one) => ({ ...one, task: 'spell' as const })),
    ];
    const made = plan(observations, ['they=sight'], [...taught, ...words]);
    expect(made.sight.read.map(({ card }) => card)).toEqual([
      'they=sight',
      'said=sight',
      'was=sight',
    ]);
    expect(whyOf(made.sight.read, 'said=sight')).toEqual({
      code: 'missed',
      missed: 3,
      asked: 4,
      day: TUESDAY,
    });
    expect(whyOf(made.sight.spell, 'said=sight')?.code).toBe('never-seen');
    const cards = [...made.visual, ...made.auditory, ...made.blending].map(({ card }) => card);
    expect(cards.filter((card) => words.includes(card))).toEqual([]);
    expect(made.why.read.get('was=sight')?.code).toBe('goes-well');
  });

  it('asks by ear by what was spelled, not by what was read', () => {
    const spelled = seen('k=K', THURSDAY - 2, 8, 6).map((one) => ({
      ...one,
      task: 'spell' as const,
    }));
    const others = allWell
      .filter(({ cards }) => cards[0] !== 'k=K')
      .map((one) => ({ ...one, task: 'spell' as const }));
    const made = plan([...allWell, ...others, ...spelled]);
    expect(whyOf(made.auditory, 'k=K')?.code).toBe('missed');
    expect(whyOf(made.visual, 'k=K')?.code).not.toBe('missed');
  });
});

it.each<[ReviewReason, string]>([
  [{ code: 'new', days: 0 }, 'new today'],
  [{ code: 'new', days: 1 }, 'new yesterday'],
  [{ code: 'new', days: 3 }, 'new 3 days ago'],
  [{ code: 'missed', missed: 1, asked: 2, day: THURSDAY - 1 }, 'missed 1 of 2 yesterday'],
  [{ code: 'missed', missed: 1, asked: 2, day: THURSDAY - 8 }, 'missed 1 of 2 8 days ago'],
  [{ code: 'shaky', p: 0.52 }, 'about 5 of 10 right'],
  [{ code: 'unseen', days: 12, because: 'fading' }, 'not seen for 12 days and fading'],
  [{ code: 'unseen', days: 12, because: 'unsure' }, 'not seen for 12 days, so no longer sure'],
  [{ code: 'unseen', days: 30, because: 'long' }, 'not seen for 30 days'],
  [{ code: 'never-seen' }, 'taught, not practiced yet'],
  [{ code: 'goes-well', days: 4 }, 'goes well, last 4 days ago'],
])('%o reads as %s', (reason, sentence) => {
  expect(makeReason(reason, THURSDAY)).toBe(sentence);
});
