/**
 * Weeks in an invented classroom: a new card every other day, a warm-up a day,
 * most of it read together, some of it by a child alone; what the teacher hears
 * and writes down, with her mistakes; weekends, a week off, absences.
 */
import { type ChildId, childId, type GroupId, groupId } from '../../core/ids.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { isVowelCard, type Place } from '../../core/language/correspondence.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import type { WordParts } from '../../core/learners/belief/spots.ts';
import type { Observation } from '../../core/learners/observation.ts';
import { usualPlace, wordParts } from '../../core/learners/word-parts.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { type Chances, makeChances } from './chances.ts';
import type { Pupil, Truth } from './pupil.ts';
import { traces } from './truths/traces.ts';

export interface ClassroomSpec {
  readonly seed: number;
  /** How pupils are; traces that fade when left out. */
  readonly truth?: Truth;
  readonly pupils?: number;
  readonly weeks?: number;
  /** How often a pupil is away. */
  readonly absent?: number;
  /** Whether she calls on the weakest of three rather than on anyone. */
  readonly chosen?: boolean;
  /** The share of words that one child reads alone. */
  readonly alone?: number;
  /** How often the teacher says which card broke. */
  readonly named?: number;
  /** How often she takes another card for the one that broke, or a wrong reading for right. */
  readonly misheard?: number;
  /** What to practice on a day; everything by chance when left out. */
  readonly plan?: (today: Today) => Practice;
}

/** What a plan may go by. */
export interface Today {
  readonly day: number;
  readonly taught: readonly CardId[];
  /** Taught today. */
  readonly fresh: readonly CardId[];
  readonly observations: readonly Observation[];
  readonly group: GroupId;
  readonly draw: Chances;
}

/** The cards of a day: shown alone, asked for by ear, and made the most of on the board. */
export interface Practice {
  readonly visual: readonly CardId[];
  readonly auditory: readonly string[];
  readonly blending: readonly CardId[];
}

/** What was seen, and what was true. */
export interface Classroom {
  readonly observations: readonly Observation[];
  /** By observation: the true chance of each card, of a child's own reading; empty otherwise. */
  readonly truths: readonly (readonly number[])[];
  /** The true state of every pupil and taught card at the end of some days, and after weeks off. */
  readonly states: readonly State[];
  /** The mean of the true chances over all pupils and taught cards at the end. */
  readonly knownAtEnd: number;
}

export interface State {
  readonly day: number;
  readonly child: ChildId;
  readonly card: CardId;
  /** The chance of a right reading the next morning where the card usually stands. */
  readonly chance: number;
}

export const VISUAL = 12;
export const AUDITORY = 6;
export const FOCUS = 5;
const FLIPS = 30;
/** What hearing others, reading with them, reading alone and being corrected leave behind. */
const PRACTICE = { heard: 0.15, together: 0.6, alone: 1, corrected: 1.5, spelled: 0.5 };
/** The cards that our order teaches first, without clusters. */
const CARDS: readonly CardId[] = [
  ...new Set(
    SEQUENCE.steps.flatMap(({ items }) =>
      items.flatMap((item) =>
        item.kind === 'card' && correspondenceById.get(item.id)?.kind !== 'cluster' ? item.id : [],
      ),
    ),
  ),
].slice(0, 46);
const AT_FIRST = 14;
/** How many weeks after the last day it is looked at again, without any practice between. */
const WEEKS_OFF = [3, 6];
const GROUP = groupId('group');
const S_CLUSTERS: readonly CardId[] = ['t=T', 'p=P', 'l=L', 'm=M', 'n=N'];
const N_CLUSTERS: readonly CardId[] = ['t=T', 'd=D'];

/** Runs a classroom. The same spec gives the same weeks. */
export function runClassroom(spec: ClassroomSpec): Classroom {
  const draw = makeChances(spec.seed);
  const truth = spec.truth ?? traces();
  const difficulties = new Map(
    CARDS.map((card) => [card, ownDifficulty(card) + draw.normal(0, 0.1)]),
  );
  const pupils = Array.from({ length: spec.pupils ?? 8 }, (_, at) =>
    truth({ name: childId(`p${at}`), difficulties, draw }),
  );
  const observations: Observation[] = [];
  const truths: (readonly number[])[] = [];
  const states: State[] = [];
  const weeks = spec.weeks ?? 8;
  const schoolDays = Array.from({ length: weeks * 5 }, (_, n) => calendarDay(n, weeks));
  for (const [n, day] of schoolDays.entries()) {
    const taught = CARDS.slice(0, AT_FIRST + Math.floor(n / 2) + 1);
    const fresh = n % 2 === 0 ? taught.slice(-1) : [];
    const today: Today = { day, taught, fresh, observations, group: GROUP, draw };
    teachDay(today, (spec.plan ?? byChance)(today), n);
    if (n % 8 === 7 || n === schoolDays.length - 1) states.push(...stateOf(taught, day));
  }
  const end = schoolDays.at(-1) ?? 0;
  const last = states.filter(({ day }) => day === end);
  const taught = CARDS.slice(0, AT_FIRST + Math.floor((schoolDays.length - 1) / 2) + 1);
  for (const weeks of WEEKS_OFF) states.push(...stateOf(taught, end + 7 * weeks));
  const knownAtEnd = last.reduce((sum, { chance }) => sum + chance, 0) / last.length;
  return { observations, truths, states, knownAtEnd };

  function teachDay({ day, taught, fresh }: Today, practice: Practice, n: number): void {
    const there = pupils.filter(() => !draw.happens(spec.absent ?? 0.05));
    const present = there.length > 0 ? there : pupils.slice(0, 1);
    for (const card of fresh) {
      for (const pupil of present) pupil.practice(card, day, PRACTICE.together);
    }
    for (const card of practice.visual) readTogether([card], present, day);
    for (const card of practice.auditory) {
      for (const pupil of present) pupil.practice(card, day, PRACTICE.spelled);
    }
    for (let flip = 0; flip < FLIPS; flip++) {
      const word = makeWord(taught, practice.blending, n >= 15, draw);
      if (draw.happens(spec.alone ?? 0.5))
        readAlone(word, readerOf(present, word, day), present, day);
      else readTogether(word, present, day);
    }
  }

  /** Whom she calls on. */
  function readerOf(present: readonly Pupil[], word: readonly CardId[], day: number): Pupil {
    const parts = wordParts(word);
    const few = spec.chosen ? [0, 1, 2].map(() => draw.oneOf(present)) : [draw.oneOf(present)];
    const well = (pupil: Pupil) =>
      chancesOf(pupil, word, parts, day).reduce((all, chance) => all * chance, 1);
    return few.reduce((one, other) => (well(other) < well(one) ? other : one));
  }

  function readAlone(
    cards: readonly CardId[],
    pupil: Pupil,
    present: readonly Pupil[],
    day: number,
  ): void {
    const chances = chancesOf(pupil, cards, wordParts(cards), day);
    const broke = firstBroken(chances, draw);
    note(cards, pupil.name, day, broke, chances);
    for (const card of cards) {
      for (const other of present) other.practice(card, day, PRACTICE.heard);
      pupil.practice(card, day, broke === null ? PRACTICE.alone : PRACTICE.corrected);
    }
  }

  function readTogether(cards: readonly CardId[], present: readonly Pupil[], day: number): void {
    const parts = wordParts(cards);
    const broken = present.map((pupil) => firstBroken(chancesOf(pupil, cards, parts, day), draw));
    const wrong = broken.filter((at) => at !== null);
    const isHeard = wrong.length / present.length > draw.between(0.15, 0.5);
    note(cards, null, day, isHeard ? mostCommon(wrong) : null, []);
    for (const card of cards) {
      for (const pupil of present) pupil.practice(card, day, PRACTICE.together);
    }
  }

  function note(
    cards: readonly CardId[],
    child: ChildId | null,
    day: number,
    broke: number | null,
    truth: readonly number[],
  ): void {
    const misheard = spec.misheard ?? 0.03;
    const right = broke === null || draw.happens(misheard);
    const named = draw.happens(spec.named ?? 0.8);
    const taken = draw.happens(misheard) ? draw.below(cards.length) : (broke ?? 0);
    observations.push({
      day,
      child,
      groups: [GROUP],
      task: 'read',
      cards,
      right,
      broke: right || !named ? null : taken + 1,
      heard: null,
    });
    truths.push(truth);
  }

  function stateOf(taught: readonly CardId[], day: number): State[] {
    return pupils.flatMap((pupil) =>
      taught.map((card) => ({
        day,
        child: pupil.name,
        card,
        chance: (pupil.usually ?? pupil.chance)(card, day + 1, usualPlace(card), false),
      })),
    );
  }
}

/** Today's card first, all others by chance. */
function byChance({ taught, fresh, draw }: Today): Practice {
  const some = (count: number): CardId[] => {
    const pool = taught.filter((card) => !fresh.includes(card));
    const chosen = [...fresh];
    while (chosen.length < Math.min(count, taught.length)) {
      chosen.push(...pool.splice(draw.below(pool.length), 1));
    }
    return chosen;
  };
  return { visual: some(VISUAL), auditory: some(AUDITORY), blending: some(FOCUS) };
}

/** Weekends are free, and so is the week in the middle. */
function calendarDay(n: number, weeks: number): number {
  const week = Math.floor(n / 5);
  return (week + (week >= weeks / 2 ? 1 : 0)) * 7 + (n % 5);
}

/** A fixed difficulty for each card, from its letters: no order, no kind. */
function ownDifficulty(card: CardId): number {
  let mixed = 7;
  for (const sign of card) mixed = (mixed * 31 + sign.charCodeAt(0)) % 1009;
  return (mixed / 1009 - 0.5) * 1.6 + (isVowel(card) ? 0.2 : 0);
}

/** A word of three or four cards; those of the focus come up three times as often. */
function makeWord(
  taught: readonly CardId[],
  focus: readonly CardId[],
  clusters: boolean,
  draw: Chances,
): readonly CardId[] {
  const weighted = [...taught, ...focus, ...focus];
  const beginning = draw.oneOf(weighted.filter((card) => stands(card, 'beginning')));
  const vowel = draw.oneOf(weighted.filter(isVowel));
  const ending = draw.oneOf(weighted.filter((card) => stands(card, 'ending')));
  if (clusters && draw.happens(0.2)) return ['s=S', draw.oneOf(S_CLUSTERS), vowel, ending];
  if (clusters && draw.happens(0.15)) return [beginning, vowel, 'n=N', draw.oneOf(N_CLUSTERS)];
  return [beginning, vowel, ending];
}

function stands(card: CardId, place: Place): boolean {
  return !isVowel(card) && (correspondenceById.get(card)?.places.includes(place) ?? false);
}

function isVowel(card: CardId): boolean {
  const found = correspondenceById.get(card);
  return found !== undefined && isVowelCard(found);
}

function chancesOf(
  pupil: Pupil,
  cards: readonly CardId[],
  { places, habits }: WordParts,
  day: number,
): readonly number[] {
  return cards.map((card, at) =>
    pupil.chance(card, day, places[at] ?? null, (habits[at]?.length ?? 0) > 0),
  );
}

/** The place of the first card that is not read correctly; null when all are. */
function firstBroken(chances: readonly number[], draw: Chances): number | null {
  const at = chances.findIndex((chance) => !draw.happens(chance));
  return at < 0 ? null : at;
}

function mostCommon(places: readonly number[]): number {
  const count = (place: number): number => places.filter((other) => other === place).length;
  return [...places].sort((one, other) => count(other) - count(one))[0] ?? 0;
}
