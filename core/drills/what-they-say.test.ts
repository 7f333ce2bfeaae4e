import { describe, expect, it } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { whatTheySay } from './what-they-say.ts';

const sounds = (id: CardId, ...taught: CardId[]) =>
  whatTheySay(id, new Set([id, ...taught]), 'classroom').map(({ sound }) => sound);

describe('what children say to a card', () => {
  it('is its sound', () => {
    expect(sounds('sh=SH')).toEqual(['/sh/']);
    expect(sounds('a_e=EY')).toEqual(['/ā/']);
  });

  it('has every other sound of the letters that was taught, and none that was not', () => {
    expect(sounds('c=K')).toEqual(['/k/']);
    expect(sounds('c=K', 'c=S', 'k=K')).toEqual(['/k/', '/s/']);
  });

  it('goes through a cluster letter by letter', () => {
    expect(sounds('st=S+T')).toEqual(['/s/', '/t/']);
  });

  it('says one sign once: both sounds of th are written /th/', () => {
    expect(sounds('th=TH', 'th=DH')).toEqual(['/th/']);
  });

  it('is nothing for a card nobody knows', () => {
    expect(sounds('?=?')).toEqual([]);
  });
});
