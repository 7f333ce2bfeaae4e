import type { CardId } from '../language/card-id.ts';
import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { type Random, shuffled } from '../random.ts';
import { APART } from '../sequence/apart.ts';
import type { Practice } from './drill-spec.ts';
import { keepApart } from './keep-apart.ts';

/** About how many of the cards are vowels: they are the hardest and wear out first. */
const VOWEL_SHARE = 0.4;

/**
 * The cards of the visual drill: the `first` ones in the order given, then the
 * `next` ones, most wanted first, and a random choice of the others with vowels
 * and consonants in balance, these two mixed. No grapheme twice, no cluster that
 * was not asked for, and no two look-alikes side by side where that can be
 * helped. At most `count` ids; fewer when fewer were taught.
 */
export function chooseVisual(
  taught: ReadonlySet<CardId>,
  { first, next }: Practice,
  count: number,
  random: Random,
): readonly CardId[] {
  const known = (ids: readonly CardId[]) => ids.filter((id) => taught.has(id)).flatMap(cardOf);
  const fresh = onePerGrapheme(known(first)).slice(0, count);
  const wished = onePerGrapheme([...fresh, ...known(next)]).slice(fresh.length, count);
  const graphemes = new Set([...fresh, ...wished].map(({ grapheme }) => grapheme));
  const others = shuffled(visualPool(taught).flatMap(cardOf), random).filter(
    ({ grapheme }) => !graphemes.has(grapheme),
  );
  const pool = onePerGrapheme(others);
  const room = count - fresh.length - wished.length;
  const wishedVowels = [...fresh, ...wished].filter(isVowelCard).length;
  const wanted = Math.max(0, Math.round(count * VOWEL_SHARE) - wishedVowels);
  const vowels = pool.filter(isVowelCard);
  const consonants = pool.filter((card) => !isVowelCard(card));
  const taken = Math.min(vowels.length, Math.max(Math.min(wanted, room), room - consonants.length));
  const rest = shuffled(
    [...wished, ...vowels.slice(0, taken), ...consonants.slice(0, room - taken)],
    random,
  );
  return [...fresh, ...keepApart(rest, cardsLookAlike, fresh.at(-1))].map(({ id }) => id);
}

/** The taught cards that the visual drill may show; clusters and silent letters only when new. */
export function visualPool(taught: ReadonlySet<CardId>): readonly CardId[] {
  return [...taught].filter((id) => {
    const card = correspondenceById.get(id);
    return card !== undefined && card.kind !== 'cluster' && card.kind !== 'silent';
  });
}

/** Whether two cards look so alike that they should not follow each other. */
export function lookAlike(one: string, other: string): boolean {
  return LOOK_ALIKE.has(`${one} ${other}`);
}

const cardsLookAlike = (one: Correspondence, other: Correspondence): boolean =>
  lookAlike(one.id, other.id);

const LOOK_ALIKE: ReadonlySet<string> = new Set(
  APART.filter(({ because }) => because.includes('look')).flatMap(({ cards: [one, other] }) => [
    `${one} ${other}`,
    `${other} ${one}`,
  ]),
);

function onePerGrapheme(cards: readonly Correspondence[]): readonly Correspondence[] {
  const seen = new Set<string>();
  return cards.filter(({ grapheme }) => {
    if (seen.has(grapheme)) return false;
    seen.add(grapheme);
    return true;
  });
}

function cardOf(id: CardId): readonly Correspondence[] {
  const card = correspondenceById.get(id);
  return card ? [card] : [];
}
