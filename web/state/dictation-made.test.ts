import { describe, expect, it, vi } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { shelf } from '../device/shelf.ts';
import { classWordsKey } from './class-words.ts';
import { taughtKey } from './plan.ts';
import { taught } from './progress.ts';

const words = [{ text: 'ship', isNew: false, practises: 'sh=SH' }];
const made = {
  taught: taughtKey(taught.value),
  classWords: classWordsKey.value,
  dictation: { words, sentences: [], shortfall: null },
};
// Read once, when it is imported.
vi.spyOn(shelf, 'read').mockImplementation((name) =>
  name === 'dictation' ? JSON.stringify({ counts: { words: 6, sentences: 2 }, made }) : null,
);
const { dictation, newestTaught } = await import('./dictation-made.ts');

it('a dictation that was remembered when the card had its earlier name keeps it', () => {
  expect(dictation.value?.words).toEqual([{ text: 'ship', isNew: false, practices: 'sh=SH' }]);
});

const at = (upTo: number) => ({ sequence: SEQUENCE, upTo, added: [], dropped: [] });

describe('what was taught last', () => {
  it('is what the last step brought', () => {
    expect(newestTaught(at(31))).toEqual(SEQUENCE.steps[30]?.items);
  });

  it('is the step before where all of the last one was taken out', () => {
    const dropped = SEQUENCE.steps[30]?.items ?? [];
    expect(newestTaught({ ...at(31), dropped })).toEqual(SEQUENCE.steps[29]?.items);
  });

  it('is what she added where no step was taught', () => {
    const added = [{ kind: 'card', id: 'sh=SH' } as const];
    expect(newestTaught({ ...at(0), added })).toEqual(added);
  });
});
