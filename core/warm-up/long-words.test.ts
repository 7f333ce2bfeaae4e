import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { cardsInPiles } from '../boards/shapes/board.ts';
import { buildDrill } from '../drills/build-drill.ts';
import { classId, drillId, eventId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { cardsOnCard, isSyllableId } from '../language/syllable-card.ts';
import { toBringBack } from '../log/after-drill.ts';
import type { EventSpec } from '../log/event.ts';
import { drillsOf } from '../log/recent.ts';
import { replay } from '../log/replay.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { callNobody } from './calling.ts';
import { cardPlaces, cardsOf, type Moment, momentsOf } from './moments.ts';
import { beginningOf, eventsBetween } from './noted.ts';
import { act, standingAt } from './standing.ts';

const engine = { lexicon: builtLexicon, screen: createWordScreen(SCREEN_DATA) };
const classroom = classId('class');
const group = groupId('group');

/** A warm-up over syllable cards, at its first word, whose second syllable broke at its first card. */
function warmUp() {
  const taught = taughtUpTo(SEQUENCE, 60);
  const drill = buildDrill({ taught, seed: 4, shape: 'beats' }, engine);
  const moments = momentsOf(drill);
  const first = moments.findIndex(({ part }) => part === 'blending');
  return { taught, drill, moments, first };
}

describe('a long word that broke in its second syllable', () => {
  const { taught, drill, moments, first } = warmUp();
  const up = moments[first] as Moment & { readonly part: 'blending' };
  const [joint = 0] = up.flip.joints ?? [];
  const broken = up.flip.cards[joint] as CardId;

  const now = {
    ...{ drillId: drillId('drill'), groupId: group, drill },
    ...{ standing: standingAt(moments.length, first), calling: callNobody([]), count: 1 },
  };
  const next = { ...now, standing: act(now.standing, 'next', { moments, blending: 'whole' }) };
  const marked: EventSpec = {
    kind: 'marked',
    body: {
      ...{ drillId: now.drillId, part: up.part, place: up.place },
      ...{ cards: cardsOf(up), broke: joint + 1, heard: null, child: null },
    },
  };
  const specs = [
    ...beginningOf(now, '2026-03-02'),
    marked,
    ...eventsBetween(now, next, 'next', undefined),
  ];
  const log = specs.map((spec, at) => ({
    ...{ id: eventId(`${at}`), classId: classroom, at: at + 1, by: 'desk' },
    ...spec,
  }));
  const [record] = drillsOf(replay(classroom, log), group);

  it('was laid in syllable cards, and each card can be touched in its place', () => {
    expect(drill.board.piles.flat().every(isSyllableId)).toBe(true);
    expect(cardsInPiles(up.flip)).toHaveLength(2);
    expect(up.pieces.length).toBeGreaterThanOrEqual(up.flip.cards.length);
    expect(new Set(cardPlaces(up))).toEqual(new Set(up.flip.cards.keys()));
    expect(joint).toBeGreaterThan(0);
  });

  it('is in the log with its card, and the plan says in which syllable that stands', () => {
    const [mark] = record?.marks ?? [];
    expect(mark).toMatchObject({ part: 'blending', place: up.place, broke: joint + 1 });
    expect(mark?.cards).toEqual(up.flip.cards);
    const planned = record?.drill.run[mark?.place ?? -1];
    expect(planned?.joints).toEqual(up.flip.joints);
    const second = cardsInPiles(planned ?? up.flip)[1] as CardId;
    expect(cardsOnCard(second)[0]).toBe(broken);
  });

  it('comes back tomorrow with that card, and only with that', () => {
    const back = toBringBack(record ? [record] : []);
    expect(back.map(({ cards }) => cards)).toEqual([[broken]]);
    const focus = back.flatMap(({ cards }) => cards);
    const spec = { taught, seed: 5, focus, aim: 'review' } as const;
    const tomorrow = buildDrill({ ...spec, shape: 'beats' }, engine);
    expect(tomorrow.visual).toContain(broken);
    expect(tomorrow.board.piles.flat().flatMap(cardsOnCard)).toContain(broken);
    expect(tomorrow.run.filter(({ cards }) => cards.includes(broken)).length).toBeGreaterThan(1);
  });
});
