import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { piecesOf } from '../boards/shapes/pieces.ts';
import { cardPlaces, type Moment } from './moments.ts';
import {
  type Act,
  act,
  BLENDINGS,
  hiddenOf,
  type Manner,
  type Standing,
  standingAt,
} from './standing.ts';

const flip = {
  cards: ['sh=SH', 'a=AE', 'p=P'],
  word: 'shap',
  sounds: [],
  kind: 'nonsense',
} as const;
const moments: readonly Moment[] = [
  { part: 'visual', place: 0, id: 'sh=SH', pieces: [{ id: 'sh=SH', part: 'whole' }] },
  { part: 'auditory', place: 0, sound: { phonemes: ['SH'], spellings: ['sh=SH'] }, pieces: [] },
  { part: 'blending', place: 0, flip, pieces: piecesOf(flip.cards) },
  { part: 'blending', place: 1, flip, pieces: piecesOf(flip.cards) },
];
const whole: Manner = { moments, blending: 'whole' };
const soundBySound: Manner = { moments, blending: 'sounds' };
const joined: Manner = { moments, blending: 'joined' };
const acts = fc.array(
  fc.constantFrom<Act>(
    'next',
    'back',
    'skip',
    'sweep',
    'answer',
    'spellings',
    'pause',
    'correct',
    'dictate',
    'let-go',
    { turn: 0 },
    { turn: 2 },
  ),
  { maxLength: 60 },
);

function pressed(manner: Manner, ...all: readonly Act[]): Standing {
  return all.reduce((standing, what) => act(standing, what, manner), standingAt(moments.length));
}

describe('the stage', () => {
  it('never leaves the warm-up, whatever is pressed', () => {
    fc.assert(
      fc.property(acts, fc.constantFrom(...BLENDINGS), (all, blending) => {
        const { at, order } = pressed({ moments, blending, dictated: 2 }, ...all);
        expect(at).toBeGreaterThanOrEqual(0);
        expect(at).toBeLessThanOrEqual(order.length);
        expect([...new Set(order)].sort()).toEqual([0, 1, 2, 3]);
      }),
    );
  });

  it('comes to the end by next alone', () => {
    expect(pressed(whole, 'next', 'next', 'next', 'next').at).toBe(4);
    expect(pressed(whole, 'next', 'next', 'next', 'next', 'next').at).toBe(4);
  });

  it('shows nothing of the answer or the spellings until asked, and not on the next card', () => {
    const asked = pressed(whole, 'next', 'next', 'answer');
    expect(asked.answer).toBe(true);
    expect(act(asked, 'next', whole).answer).toBe(false);
    expect(pressed(whole, 'next', 'answer').spellings).toBe(true);
    expect(pressed(whole, 'answer').answer).toBe(false);
  });

  it('shows the part to learn of a word known by sight when asked', () => {
    const word: Moment = { part: 'visual', place: 0, id: 'was=sight', pieces: [] };
    const manner: Manner = { moments: [word, ...moments], blending: 'whole' };
    const asked = act(standingAt(5), 'answer', manner);
    expect(asked.answer).toBe(true);
    expect(act(asked, 'answer', manner).answer).toBe(false);
    expect(act(asked, 'next', manner).answer).toBe(false);
  });

  it('lifts a blank sheet by any act before doing anything else', () => {
    const blank = pressed(whole, 'next', 'next', 'pause');
    expect(blank.paused).toBe(true);
    const lifted = act(blank, 'next', whole);
    expect(lifted).toMatchObject({ paused: false, at: 2 });
  });

  it('opens one card at a time when sounds come one at a time', () => {
    const first = pressed(soundBySound, 'next', 'next');
    expect(hiddenOf(first, soundBySound)).toBe(2);
    const second = act(first, 'next', soundBySound);
    expect([second.at, hiddenOf(second, soundBySound)]).toEqual([2, 1]);
    const all = act(second, 'next', soundBySound);
    expect([all.at, hiddenOf(all, soundBySound)]).toEqual([2, 0]);
    expect(act(all, 'next', soundBySound).at).toBe(3);
  });

  it('opens card after card in joined sounds, and sweeps all that are open each time', () => {
    const first = pressed(joined, 'next', 'next');
    expect([hiddenOf(first, joined), first.sweeps]).toEqual([2, 0]);
    const second = act(first, 'next', joined);
    expect([hiddenOf(second, joined), second.sweeps]).toEqual([1, 1]);
    const swept = act(second, 'sweep', joined);
    expect([hiddenOf(swept, joined), swept.sweeps]).toEqual([1, 2]);
    const all = act(swept, 'next', joined);
    expect([hiddenOf(all, joined), all.sweeps]).toEqual([0, 3]);
    expect(act(all, 'next', joined).at).toBe(3);
  });

  it('opens a split card with its silent e, as one sound', () => {
    const made = [
      {
        ...(moments[2] as Moment),
        flip: { ...flip, cards: ['m=M', 'a_e=EY', 'k=K'] },
        pieces: piecesOf(['m=M', 'a_e=EY', 'k=K']),
      },
    ] as readonly Moment[];
    const manner: Manner = { moments: made, blending: 'sounds' };
    const vowel = act(standingAt(1), 'next', manner);
    expect(hiddenOf(vowel, manner)).toBe(1);
    expect(cardPlaces(made[0] as Moment)).toEqual([0, 1, 2, 1]);
  });

  it('dictates the words after the sounds, and then goes on with what comes after them', () => {
    const manner: Manner = { ...whole, dictated: 2 };
    const first = pressed(manner, 'next', 'answer', 'dictate');
    expect(first).toMatchObject({ at: 1, dictating: 0, spellings: false });
    const second = act(first, 'next', manner);
    expect(second).toMatchObject({ at: 1, dictating: 1 });
    expect(act(second, 'back', manner).dictating).toBe(0);
    expect(act(first, 'back', manner)).toMatchObject({ at: 1, dictating: null });
    expect(act(second, 'let-go', manner)).toMatchObject({ at: 1, dictating: null });
    expect(act(second, 'next', manner)).toMatchObject({ at: 2, dictating: null });
    expect(pressed(whole, 'next', 'dictate').dictating).toBeNull();
    expect(pressed(manner, 'dictate').dictating).toBeNull();
  });

  it('opens the whole row when it is swept', () => {
    const swept = pressed(soundBySound, 'next', 'next', 'sweep');
    expect(hiddenOf(swept, soundBySound)).toBe(0);
    expect(swept.sweeps).toBe(1);
  });

  it('forgets that a card was skipped when she goes back to it', () => {
    const skipped = pressed(whole, 'next', 'next', 'skip');
    expect([...skipped.skipped]).toEqual([2]);
    const back = act(skipped, 'back', whole);
    expect(back.at).toBe(2);
    expect([...back.skipped]).toEqual([]);
  });

  it('sweeps only where there is a row to sweep', () => {
    expect(pressed(whole, 'sweep').sweeps).toBe(0);
  });
});

describe('a correction', () => {
  const begun = pressed(whole, 'next', 'next', 'correct');

  it('goes sound by sound and sweeps, in her turn, together and alone', () => {
    const seen: string[] = [];
    let standing = begun;
    for (let step = 0; standing.turn !== null && step < 20; step++) {
      const open = 3 - hiddenOf(standing, whole);
      seen.push(`${standing.turn} ${open}${standing.joined ? ' swept' : ''}`);
      standing = act(standing, 'correct', whole);
    }
    const turn = (name: string) => ['1', '2', '3', '3 swept'].map((open) => `${name} ${open}`);
    expect(seen).toEqual([...turn('my'), ...turn('our'), ...turn('your')]);
    expect(hiddenOf(standing, whole)).toBe(0);
    expect(standing.at).toBe(2);
  });

  it('brings the word back a few moments later, at the latest at the end, and once', () => {
    const many = Array.from({ length: 12 }, (_, place) => ({
      ...(moments[2] as Moment),
      place,
    })) as readonly Moment[];
    let standing = act(standingAt(12, 3), 'correct', { moments: many, blending: 'whole' });
    while (standing.turn !== null)
      standing = act(standing, 'next', { moments: many, blending: 'whole' });
    expect(standing.order).toEqual([0, 1, 2, 3, 4, 5, 6, 3, 7, 8, 9, 10, 11]);
    let last = begun;
    while (last.turn !== null) last = act(last, 'next', whole);
    expect(last.order).toEqual([0, 1, 2, 3, 2]);
  });

  it('is left at any time, and the row lies open', () => {
    for (const what of ['let-go', 'back'] as const) {
      const left = act(act(begun, 'next', whole), what, whole);
      expect(left).toMatchObject({ turn: null, at: 2, order: [0, 1, 2, 3] });
      expect(hiddenOf(left, soundBySound)).toBe(0);
    }
  });

  it('shows the spellings of a sound', () => {
    expect(pressed(whole, 'next', 'correct')).toMatchObject({ turn: 'my', spellings: true });
  });
});

describe('the pieces of a row', () => {
  it('put the silent e of a split card behind the last card', () => {
    expect(piecesOf(['m=M', 'a_e=EY', 'k=K'])).toEqual([
      { id: 'm=M', part: 'whole' },
      { id: 'a_e=EY', part: 'vowel' },
      { id: 'k=K', part: 'whole' },
      { id: 'a_e=EY', part: 'silent-e' },
    ]);
  });
});
