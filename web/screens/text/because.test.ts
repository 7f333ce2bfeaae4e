import { describe, expect, it } from 'vitest';
import type { CardId } from '../../../core/language/card-id.ts';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import { taughtUpTo } from '../../../core/sequence/teach.ts';
import { judgePassage } from '../../../core/texts/passage.ts';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { becauseSaid } from './because.ts';

const standing = { sequence: SEQUENCE, upTo: 20, notation: 'classroom' } as const;

function why(word: string, taught = taughtUpTo(SEQUENCE, 20)): string {
  const passage = judgePassage(word, taught, builtLexicon, SEQUENCE);
  const judged = passage.judged.get(word.toLowerCase());
  if (!judged) throw new Error(`${word} was not judged`);
  return becauseSaid(judged, standing);
}

const stepOfCard = (id: CardId) => stepOf(SEQUENCE, { kind: 'card', id });

describe('why a word cannot be read yet', () => {
  it('names the step at which its card comes', () => {
    expect(why('ship')).toBe(`sh comes at step ${stepOfCard('sh=SH')}`);
  });

  it('names the sound where the letters have several', () => {
    expect(why('bread')).toContain(`ea as /ĕ/ comes at step ${stepOfCard('ea=EH')}`);
  });

  it('names the irregular part', () => {
    expect(why('said', taughtUpTo(SEQUENCE, 0))).toContain('irregular: ai says /ĕ/');
  });

  it('says that a word is unknown and guessed', () => {
    expect(why('shomp')).toMatch(/^unknown word, guessed by its letters: sh comes at step \d+/);
    expect(why('straße')).toBe('unknown word, with letters that no card has');
  });

  it('says what was taken out', () => {
    const taught = taughtUpTo(SEQUENCE, 20);
    const without = new Set(taught.correspondences);
    without.delete('m=M');
    expect(why('mat', { ...taught, correspondences: without })).toBe('m was taken out');
  });

  it('says nothing of a word that can be read', () => {
    expect(why('mat')).toBe('');
  });
});
