import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { type Random, shuffled } from '../random.ts';
import { APART } from '../sequence/apart.ts';
import type { Practice } from './drill-spec.ts';

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
  taught: ReadonlySet<string>,
  { first, next }: Practice,
  count: number,
  random: Random,
): readonly string[] {
  const known = (ids: readonly string[]) => ids.filter((id) => taught.has(id)).flatMap(cardOf);
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
  return [...fresh, ...keepApart(rest, fresh.at(-1))].map(({ id }) => id);
}

/** The taught cards that the visual drill may show; clusters and silent letters only when new. */
export function visualPool(taught: ReadonlySet<string>): readonly string[] {
  return [...taught].filter((id) => {
    const card = correspondenceById.get(id);
    return card !== undefined && card.kind !== 'cluster' && card.kind !== 'silent';
  });
}

/** Whether two cards look so alike that they should not follow each other. */
export function lookAlike(one: string, other: string): boolean {
  return LOOK_ALIKE.has(`${one} ${other}`);
}

const LOOK_ALIKE: ReadonlySet<string> = new Set(
  APART.filter(({ because }) => because.includes('look')).flatMap(({ cards: [one, other] }) => [
    `${one} ${other}`,
    `${other} ${one}`,
  ]),
);

/** The same cards in an order that parts look-alikes, as far as the cards allow. */
function keepApart(
  cards: readonly Correspondence[],
  before: Correspondence | undefined,
): readonly Correspondence[] {
  const left = [...cards];
  const ordered: Correspondence[] = [];
  while (left.length > 0) {
    const last = ordered.at(-1) ?? before;
    const fits = left.findIndex((card) => !last || !lookAlike(last.id, card.id));
    if (fits >= 0) ordered.push(...left.splice(fits, 1));
    else if (!squeezeIn(ordered, left[0] as Correspondence))
      ordered.push(left.shift() as Correspondence);
    else left.shift();
  }
  return ordered;
}

/** Puts a card between two others that it does not look like; false if there is no such place. */
function squeezeIn(ordered: Correspondence[], card: Correspondence): boolean {
  for (let at = 1; at < ordered.length; at++) {
    const left = ordered[at - 1] as Correspondence;
    const right = ordered[at] as Correspondence;
    if (lookAlike(left.id, card.id) || lookAlike(card.id, right.id)) continue;
    ordered.splice(at, 0, card);
    return true;
  }
  return false;
}

function onePerGrapheme(cards: readonly Correspondence[]): readonly Correspondence[] {
  const seen = new Set<string>();
  return cards.filter(({ grapheme }) => {
    if (seen.has(grapheme)) return false;
    seen.add(grapheme);
    return true;
  });
}

function cardOf(id: string): readonly Correspondence[] {
  const card = correspondenceById.get(id);
  return card ? [card] : [];
}
