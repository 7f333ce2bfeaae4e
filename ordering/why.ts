import { correspondenceById } from '../core/language/correspondences.ts';
import { APART } from '../core/sequence/apart.ts';
import type { CommonWord } from './common-words.ts';
import { openingSteps, type PlacedUnit } from './placed-unit.ts';

/**
 * Why a unit stands at `place`, in a teacher's words: what its stage is for (on
 * the first step), how many common words it opens, what it was kept from, and
 * what is to be said of words learned by heart: of the step's own when their rule
 * comes, and of those `known` from earlier steps which of them are read by rule
 * from here on. Known ones do not count as opened.
 */
export function explainPlace(
  placed: readonly PlacedUnit[],
  place: number,
  words: readonly CommonWord[],
  byHeart: readonly string[],
  known: readonly string[],
): string {
  const unit = placed[place] as PlacedUnit;
  const opens = openingSteps(placed, words, true);
  const opened = words.filter(
    ({ word }) => opens.get(word) === unit.number && !known.includes(word),
  );
  const retaught = known.filter((word) => opens.get(word) === unit.number);
  return [
    unit.stageWhy ? `A new stage: ${unit.stageWhy}.` : null,
    unit.remark ??
      opensSentence(
        unit,
        opened.map(({ word }) => word),
      ),
    keptSentence(placed, unit),
    retaught.length > 0
      ? `Known by heart, read by rule from here on: ${retaught.join(', ')}.`
      : null,
    byHeart.length > 0
      ? `By heart: ${byHeart.map((word) => heart(word, opens)).join('; ')}.`
      : null,
  ]
    .filter((sentence) => sentence !== null)
    .join(' ');
}

function opensSentence(unit: PlacedUnit, opened: readonly string[]): string {
  const examples = opened.slice(0, 3).join(', ');
  if (opened.length === 0) {
    const keyword = unit.items
      .map((item) => (item.kind === 'card' ? correspondenceById.get(item.id)?.keyword : null))
      .find((word) => word);
    if (unit.number === 1) return 'Part of many short words to come.';
    return keyword ? `Found in few common words; ${keyword} has it.` : 'Found in few common words.';
  }
  if (opened.length <= 3) return `Opens ${examples}.`;
  return `Opens ${opened.length} common words, such as ${examples}.`;
}

function keptSentence(placed: readonly PlacedUnit[], unit: PlacedUnit): string | null {
  const firstWith = (card: string): PlacedUnit | undefined =>
    placed.find(({ keys }) => keys.includes(`card:${card}`));
  const [nearest] = APART.flatMap(({ cards, steps: least, because }) => {
    const [left, right] = cards.map(firstWith);
    if (!left || !right) return [];
    const other = left === unit ? right : right === unit ? left : null;
    const steps = unit.number - (other?.number ?? unit.number);
    return other && steps > 0 && steps <= 2 * least ? [{ title: other.title, steps, because }] : [];
  }).sort((left, right) => left.steps - right.steps);
  return nearest ? `Kept ${nearest.steps} steps from ${nearest.title}, ${nearest.because}.` : null;
}

function heart(word: string, opens: ReadonlyMap<string, number>): string {
  const step = opens.get(word);
  return step === undefined
    ? `${word} (no rule gives it)`
    : `${word} (its rule comes at step ${step})`;
}
