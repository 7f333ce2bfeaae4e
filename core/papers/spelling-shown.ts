/**
 * What papers show of a sound and its spelling: two figures, kept apart. `hears`: of the times the
 * sound was said, how often something was written for it that says it. `knows`: of the times it was
 * heard, how often it was spelled as the word has it; where a sound was not heard, its spelling cannot
 * be told. Counts, not estimates: the model of what is known takes the spelling from here as it takes
 * any other observation.
 */
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { CardVerdict, SpellingHabit } from '../spelling/attempt.ts';
import type { PaperAttempt } from './attempts.ts';

/** So many times of so many. */
export interface Share {
  readonly times: number;
  readonly of: number;
}

/** What papers show of one card. */
export interface CardShown {
  readonly id: CardId;
  readonly hears: Share;
  readonly knows: Share;
}

/** What was written wrongly by whom, and what kind of need it is. */
export interface CommonSlip {
  /** `ear`: the sound was not heard. `spelling`: it was heard and spelled otherwise. */
  readonly need: 'ear' | 'spelling';
  /** A card, or a habit of spelling. */
  readonly about: { readonly card: CardId } | { readonly habit: SpellingHabit };
  /** The cards it was seen on, by id. */
  readonly cards: readonly CardId[];
  /** The children who share it, in their order, each with how often. */
  readonly children: readonly { readonly child: ChildId; readonly times: number }[];
  readonly times: number;
  /** The words in which the card follows no rule: there it is the part to learn by heart. */
  readonly byHeart: readonly string[];
  /** Up to three examples: the word and what was written. */
  readonly examples: readonly { readonly word: string; readonly wrote: string }[];
}

/** Whether a card was written as the word has it, its letters out of order or turned apart. */
export function isSpelled({ verdict }: CardVerdict): boolean {
  return verdict === 'same' || verdict === 'order' || verdict === 'turned';
}

/** By card, in the order in which they first stood: how often it was heard, and spelled as it stands. */
export function cardsShown(attempts: readonly PaperAttempt[]): readonly CardShown[] {
  const shown = new Map<CardId, { said: number; heard: number; spelled: number }>();
  for (const { card } of tellingCards(attempts)) {
    const count = shown.get(card.id) ?? { said: 0, heard: 0, spelled: 0 };
    count.said++;
    if (card.heard) count.heard++;
    if (card.heard && isSpelled(card)) count.spelled++;
    shown.set(card.id, count);
  }
  return [...shown].map(([id, { said, heard, spelled }]) => ({
    id,
    hears: { times: heard, of: said },
    knows: { times: spelled, of: heard },
  }));
}

/**
 * The slips of a pile, those first that most children share, then those that came most often. A habit
 * that was missed is one slip, whatever the card.
 */
export function commonSlips(attempts: readonly PaperAttempt[]): readonly CommonSlip[] {
  const found = new Map<string, Omit<CommonSlip, 'children'> & { by: Map<ChildId, number> }>();
  for (const { card, attempt, isRegular } of tellingCards(attempts)) {
    if (card.heard && isSpelled(card)) continue;
    const need = card.heard ? 'spelling' : 'ear';
    const about = card.heard && card.habit ? { habit: card.habit } : { card: card.id };
    const key = `${need} ${JSON.stringify(about)}`;
    const slip: Omit<CommonSlip, 'children'> & { by: Map<ChildId, number> } = found.get(key) ?? {
      need,
      about,
      cards: [],
      times: 0,
      byHeart: [],
      examples: [],
      by: new Map(),
    };
    const example = { word: attempt.said.word, wrote: attempt.wrote ?? '' };
    const isNew = !slip.examples.some(({ wrote }) => wrote === example.wrote);
    slip.by.set(attempt.child, (slip.by.get(attempt.child) ?? 0) + 1);
    found.set(key, {
      ...slip,
      cards: slip.cards.includes(card.id) ? slip.cards : [...slip.cards, card.id],
      times: slip.times + 1,
      byHeart: isRegular ? slip.byHeart : [...new Set([...slip.byHeart, example.word])],
      examples: isNew && slip.examples.length < 3 ? [...slip.examples, example] : slip.examples,
    });
  }
  return [...found.entries()]
    .map(([key, { by, ...slip }]) => ({
      key,
      slip: { ...slip, children: [...by].map(([child, times]) => ({ child, times })) },
    }))
    .sort(
      (one, other) =>
        other.slip.children.length - one.slip.children.length ||
        other.slip.times - one.slip.times ||
        (one.key < other.key ? -1 : 1),
    )
    .map(({ slip }) => slip);
}

/** Several shares as one. */
export function sumOf(shares: readonly Share[]): Share {
  return shares.reduce(
    (total, { times, of }) => ({ times: total.times + times, of: total.of + of }),
    { times: 0, of: 0 },
  );
}

/** Words right and correct letter sequences of what was written out. */
export function paperScore(attempts: readonly PaperAttempt[]): {
  readonly words: Share;
  readonly sequences: Share;
} {
  let right = 0;
  let times = 0;
  let of = 0;
  for (const { read, cards } of attempts) {
    if (read ? read.wordRight : cards.every((card) => card !== null)) right++;
    if (!read) continue;
    times += read.sequences.right;
    of += read.sequences.of;
  }
  return { words: { times: right, of: attempts.length }, sequences: { times, of } };
}

/** Cards that tell something: those of an attempt at the word, with what was written for them. */
function tellingCards(attempts: readonly PaperAttempt[]) {
  return attempts
    .filter(({ read }) => read === null || read.answer === 'attempt')
    .flatMap((attempt) =>
      attempt.cards.flatMap((card, at) => {
        const isRegular = attempt.read?.reading.cards[at]?.regular !== false;
        return card === null ? [] : [{ card, attempt, isRegular }];
      }),
    );
}
