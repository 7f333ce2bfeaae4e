import { lookAlike, visualPool } from '../drills/visual.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById, rowById } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
import { makeRandom } from '../random.ts';
import type { CheckItem, MadeForm } from './check-form.ts';
import { inRounds } from './rounds.ts';

/**
 * A form of letter sounds: every grapheme that was taught, in rounds, so that
 * none comes more than once oftener than another. Look-alikes (b, d) do not
 * follow each other, nor does a grapheme itself, where that can be helped.
 */
export function makeLetterForm(taught: Taught, seed: number, count: number): MadeForm {
  const items = inRounds(itemsOf(taught), isNear, count, makeRandom(seed));
  return {
    form: { kind: 'letter-sounds', seed, items, hardness: 0, offBy: 0 },
    shortfall:
      items.length > 0
        ? null
        : {
            code: 'nothing-taught',
            message:
              'No card was taught yet, so there is nothing to check. Say what was taught first.',
          },
  };
}

/** One item a grapheme, with every taught sound of it as a right answer. */
function itemsOf({ correspondences }: Taught): readonly CheckItem[] {
  const byGrapheme = new Map<string, Correspondence[]>();
  for (const id of visualPool(correspondences)) {
    const card = correspondenceById.get(id);
    if (!card || !isSaidAlone(card)) continue;
    const cards = byGrapheme.get(card.grapheme);
    if (cards) cards.push(card);
    else byGrapheme.set(card.grapheme, [card]);
  }
  return [...byGrapheme].map(([text, cards]) => ({
    text,
    cards: cards.slice(0, 1).map(({ id }) => id),
    answers: cards.map(({ phonemes }) => phonemes),
  }));
}

/**
 * Whether a letter that stands alone may be read so. A consonant that only says its sound because of what
 * follows does not: n says /ng/ before k, t says /ch/ before u. Soft c and g are taught as the letter's
 * second sound and may be said (common practice, no source).
 */
function isSaidAlone({ id, kind }: Correspondence): boolean {
  const after = kind === 'consonant' ? rowById.get(id)?.context.after : null;
  return !after || after.test('') || ['e', 'i', 'y'].every((letter) => after.test(letter));
}

function isNear(one: CheckItem, other: CheckItem): boolean {
  return one.text === other.text || lookAlike(one.cards[0] ?? '', other.cards[0] ?? '');
}
