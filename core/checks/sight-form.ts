import { asWritten } from '../language/as-written.ts';
import { makeSightId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import { makeRandom } from '../random.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { CheckItem, MadeForm } from './check-form.ts';
import { inRounds } from './rounds.ts';

/**
 * A form of words at sight: every word that was taught whole, in rounds, so that none comes more than once
 * oftener than another. A word may be said in every way that the list has of it (*read*, *read*); of a word
 * that it has not, no sounds are told.
 */
export function makeSightForm(
  { irregularWords }: Pick<Taught, 'irregularWords'>,
  seed: number,
  count: number,
  lexicon: Lexicon,
): MadeForm {
  const all = [...irregularWords].map((word): CheckItem => {
    const index = lexicon.indexOf(word);
    const readings = index < 0 ? [] : lexicon.readings(index);
    return {
      text: asWritten(word),
      cards: [makeSightId(word)],
      answers: readings.map(({ sounds }) => sounds),
    };
  });
  const items = inRounds(all, isSame, count, makeRandom(seed));
  return {
    form: { kind: 'sight-words', seed, items, hardness: 0, offBy: 0 },
    shortfall:
      items.length > 0
        ? null
        : {
            code: 'no-sight-words',
            message:
              'No word was taught to be known by sight yet, so there is nothing to check. Say what was taught first.',
          },
  };
}

const isSame = (one: CheckItem, other: CheckItem): boolean => one.text === other.text;
