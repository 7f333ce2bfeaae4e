import { describe, expect, it } from 'vitest';
import type { ItemReading } from '../../../core/log/event.ts';
import { isBroken, withBroken, withHeard, withoutBroken, withWhole } from './marking.ts';

const short = { kind: 'phoneme', sound: 'EH' } as const;
const one: ItemReading = { outcome: 'wrong', broke: [{ card: 2, heard: short }] };

describe('marking an item', () => {
  it('marks a card, then what was heard, and keeps what was said of the other cards', () => {
    expect(withBroken(undefined, 2)).toEqual({
      outcome: 'wrong',
      broke: [{ card: 2, heard: null }],
    });
    expect(withHeard(withBroken(undefined, 2), 2, short)).toEqual(one);
    expect(withBroken(one, 1).broke).toEqual([
      { card: 1, heard: null },
      { card: 2, heard: short },
    ]);
    expect(isBroken(one, 2)).toBe(true);
    expect(isBroken(one, 1)).toBe(false);
  });

  it('is right after all when its only wrong card was right', () => {
    expect(withoutBroken(one, 2)).toEqual({ outcome: 'right', broke: [] });
    expect(withoutBroken(withBroken(one, 1), 1)).toEqual(one);
  });

  it('says one thing of a whole item in place of its cards, and takes it back said twice', () => {
    const corrected = withWhole(one, 'self-corrected');
    expect(corrected).toEqual({ outcome: 'self-corrected', broke: [] });
    expect(withWhole(corrected, 'self-corrected').outcome).toBe('right');
    expect(withBroken(corrected, 1)).toEqual({
      outcome: 'wrong',
      broke: [{ card: 1, heard: null }],
    });
  });
});
