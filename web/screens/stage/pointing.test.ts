import { describe, expect, it } from 'vitest';
import { type PointingGround, zoneOf } from './pointing.ts';

const ground: PointingGround = { low: 700, width: 1200, hand: 'right', sweepable: true };

describe('a tap on the stage', () => {
  it('under the row sweeps, when there is a row', () => {
    expect(zoneOf({ clientX: 100, clientY: 800 }, ground)).toBe('sweep');
    expect(zoneOf({ clientX: 1100, clientY: 800 }, { ...ground, sweepable: false })).toBe('next');
  });

  it('on the side of her hand goes on, on the far side back', () => {
    expect(zoneOf({ clientX: 1100, clientY: 300 }, ground)).toBe('next');
    expect(zoneOf({ clientX: 100, clientY: 300 }, ground)).toBe('back');
    expect(zoneOf({ clientX: 1100, clientY: 300 }, { ...ground, hand: 'left' })).toBe('back');
    expect(zoneOf({ clientX: 100, clientY: 300 }, { ...ground, hand: 'left' })).toBe('next');
  });
});
