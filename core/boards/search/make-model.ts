/** What is wished of a board, as the plain optimization model that the search solves. */
import type { CardId } from '../../language/card-id.ts';
import { twinRows } from '../judge/twin-rows.ts';
import { mayShow, type Outcome, outcomeAt, type WordTable } from '../judge/word-table.ts';
import type { BoardModel } from './board-model.ts';
import type { BoardWishes, WordWeights } from './board-wishes.ts';

/** The optimization model of a judged table. */
export function makeModel(table: WordTable, wishes: BoardWishes): BoardModel {
  const sizes = table.piles.map((pile) => pile.length);
  const limits = sizes.map((size, pile) =>
    Math.min(size, Math.max(0, wishes.limits[pile] ?? size)),
  );
  const timesAt = timesOfWords(table, wishes);
  const twins = wishes.contrasts?.length ? twinRows(table, wishes.contrasts) : null;
  const isBeats = table.shape.form === 'beats';
  const kept = isBeats ? 'beats' : 'any';
  const forbiddenOutcomes = FORBIDDEN[wishes.strict ? 'strict' : wishes.clean ? 'clean' : kept];
  const worth = wishes.weights ?? (isBeats || table.piles.length > 3 ? WEIGHTS_OF_MANY : WEIGHTS);
  const weights = new Int32Array(table.outcomes.length);
  const forbidden = new Uint8Array(table.outcomes.length);
  for (let index = 0; index < weights.length; index++) {
    const outcome = outcomeAt(table, index);
    if (forbiddenOutcomes.has(outcome)) forbidden[index] = 1;
    if (!mayShow(table, index)) continue;
    const weight = worth[outcome as keyof WordWeights];
    weights[index] = weight * timesAt(index) * (twins?.[index] ? TWIN_FACTOR : 1);
  }
  return { sizes, limits, weights, forbidden, ...makePins(table, wishes) };
}

/** The pins of a model: the cards that must lie in a pile, and those that must lie in one of several. */
export function makePins(
  table: WordTable,
  wishes: Pick<BoardWishes, 'pinned' | 'pinnedEverywhere' | 'pinnedAt'>,
): Pick<BoardModel, 'pinned' | 'pinGroups'> {
  const fits = (id: CardId): [number, number][] =>
    table.piles.flatMap((pile, at): [number, number][] => {
      const card = pile.indexOf(id);
      return card < 0 ? [] : [[at, card]];
    });
  const inEveryPile = new Set([
    ...(wishes.pinnedEverywhere ?? []),
    ...(wishes.pinned ?? []).filter((id) => fits(id).length === 1),
  ]);
  const pinnedAt = wishes.pinnedAt ?? [];
  const isPinnedAt = (at: number, id: CardId): boolean =>
    pinnedAt.some(([pile, own]) => pile === at && own === id);
  const pinned = table.piles.map((pile, at) =>
    pile.flatMap((id, card) => (inEveryPile.has(id) || isPinnedAt(at, id) ? [card] : [])),
  );
  const pinGroups = (wishes.pinned ?? [])
    .filter((id) => !pinnedAt.some(([, own]) => own === id))
    .map(fits)
    .filter((places) => places.length > 1);
  return pinGroups.length > 0 ? { pinned, pinGroups } : { pinned };
}

/** How often each word counts: as often as the most wanted of its cards. */
function timesOfWords(
  { piles }: WordTable,
  { focus = [], worth = [] }: BoardWishes,
): (index: number) => number {
  const worthOf = new Map<CardId, number>(focus.map((id) => [id, FOCUS_FACTOR]));
  for (const [id, times] of worth) worthOf.set(id, Math.max(times, worthOf.get(id) ?? 1));
  if (worthOf.size === 0) return () => 1;
  const factors = piles.map((pile) => pile.map((id) => worthOf.get(id) ?? 1));
  return (index) => {
    let most = 1;
    let rest = index;
    for (let pile = factors.length - 1; pile >= 0; pile--) {
      const own = factors[pile] as readonly number[];
      most = Math.max(most, own[rest % own.length] as number);
      rest = Math.floor(rest / own.length);
    }
    return most;
  };
}

const WEIGHTS: WordWeights = { familiar: 4, rare: 1, nonsense: 1 };
/** Of many piles, and of syllables: nonsense is plentiful there whatever is chosen, and real words are few. */
const WEIGHTS_OF_MANY: WordWeights = { familiar: 4, rare: 1, nonsense: 0 };
const FOCUS_FACTOR = 3;
const TWIN_FACTOR = 3;

const FORBIDDEN: Readonly<Record<'any' | 'beats' | 'clean' | 'strict', ReadonlySet<Outcome>>> = {
  any: new Set(),
  // Of syllables there are enough to choose from: none that is to regret.
  beats: new Set<Outcome>(['screened']),
  clean: new Set<Outcome>(['screened', 'untaught']),
  strict: new Set<Outcome>([
    'screened',
    'untaught',
    'rule',
    'name',
    'sound-alike',
    'said-differently',
  ]),
};
