import { decodableWords } from '../core/words/decodable.ts';
import { parseShape, shapeOf } from '../core/words/word-shape.ts';
import { loadLexicon, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';

/** `words --taught T`: the words that can be read with it, commonest first. */
export function words(args: readonly string[]): string {
  const typed = readOptions(args, { taught: 'text', shape: 'text', limit: 'text' });
  const taught = readTaught(typed.text('taught'));
  const asked = typed.text('shape');
  const shape = asked === null ? null : parseShape(asked);
  if (asked !== null && shape === null) {
    fail(
      `“${asked}” is no shape. Write c for a consonant card and v for a vowel: cvc, ccvc, cvce, cvvc.`,
    );
  }
  const limit = typed.whole('limit', Number.MAX_SAFE_INTEGER, 0, Number.MAX_SAFE_INTEGER);
  const lexicon = loadLexicon();
  const found = decodableWords(lexicon, taught)
    .filter((index) => shape === null || shapeOf(lexicon.cardIds(index)) === shape)
    .slice(0, limit)
    .map((index) => ({
      word: lexicon.word(index),
      band: lexicon.band(index),
      cards: lexicon.cardIds(index).map(graphemeOf),
    }));
  if (typed.flag('json')) return JSON.stringify(found);
  return found.map(({ word }) => word).join('\n');
}

function graphemeOf(id: string): string {
  return id.slice(0, id.indexOf('='));
}
