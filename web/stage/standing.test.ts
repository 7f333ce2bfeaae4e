import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Moment } from './moments.ts';
import { piecesOf } from './pieces.ts';
import { type Act, act, hiddenOf, type Manner, type Standing, standingAt } from './standing.ts';

const flip = {
  cards: ['sh=SH', 'a=AE', 'p=P'],
  word: 'shap',
  sounds: [],
  kind: 'nonsense',
} as const;
const moments: readonly Moment[] = [
  { part: 'visual', id: 'sh=SH', pieces: [{ id: 'sh=SH', part: 'whole' }] },
  { part: 'auditory', sound: { phonemes: ['SH'], spellings: ['sh=SH'] }, pieces: [] },
  { part: 'blending', flip, pieces: piecesOf(flip.cards) },
  { part: 'blending', flip, pieces: piecesOf(flip.cards) },
];
const whole: Manner = { moments, successive: false };
const soundBySound: Manner = { moments, successive: true };
const acts = fc.array(
  fc.constantFrom<Act>('next', 'back', 'skip', 'sweep', 'answer', 'spellings', 'pause'),
  { maxLength: 60 },
);

function pressed(manner: Manner, ...all: readonly Act[]): Standing {
  return all.reduce((standing, what) => act(standing, what, manner), standingAt(0));
}

describe('the stage', () => {
  it('never leaves the warm-up, whatever is pressed', () => {
    fc.assert(
      fc.property(acts, fc.boolean(), (all, successive) => {
        const { at } = pressed({ moments, successive }, ...all);
        expect(at).toBeGreaterThanOrEqual(0);
        expect(at).toBeLessThanOrEqual(moments.length);
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
