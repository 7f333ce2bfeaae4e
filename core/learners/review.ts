/**
 * What tomorrow's three parts should practice.
 *
 * New cards come first, for a few days, then what broke in the last drills. Then those that need it most: need is
 * the share of wrong readings to expect of the group's children tomorrow, and nothing else: being overdue
 * was tried beside it and was worth nothing (docs/mastery.md). A part is never all trouble:
 * some cards that go well are in it, those unseen for longest (common practice,
 * no source), and vowels have their share, since they wear out first. Words known by sight are planned
 * by the same need, beside the cards.
 */

import type { GroupId } from '../ids.ts';
import { type CardId, graphemeOf, isSightId, soundsOf } from '../language/card-id.ts';
import { isVowelCard, type Kind } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { partsOf } from '../language/laid-syllable.ts';
import type { Day } from './day.ts';
import { type DueBecause, dueBy } from './due.ts';
import { chanceOfCard } from './estimate.ts';
import { type DayOfCard, historiesOf } from './history.ts';
import type { Knowledge } from './knowledge.ts';
import type { Observation } from './observation.ts';
import type { ReviewReason } from './review-reason.ts';
import type { SchoolDays } from './school-days.ts';
import { PUBLISHED_THRESHOLDS, type Thresholds } from './thresholds.ts';

/** What a plan is made from. */
export interface ReviewSpec {
  readonly observations: readonly Observation[];
  /** What `observations` have shown. */
  readonly knowledge: Knowledge;
  /** The group's id. */
  readonly group: GroupId;
  /** The cards that the group was taught, by id, words known by sight among them. */
  readonly taught: readonly CardId[];
  /** The cards of the newest step, and the newest words known by sight. */
  readonly newest: readonly CardId[];
  /** Cards that broke lately and were not mended: next after the new ones. */
  readonly back?: readonly CardId[];
  /** The day that is planned, not before the last observation. */
  readonly day: Day;
  readonly thresholds?: Thresholds;
  /** Monday to Friday when left out. */
  readonly isSchool?: SchoolDays;
  readonly counts?: ReviewCounts;
}

/** How many cards each part takes. */
export interface ReviewCounts {
  readonly visual: number;
  readonly auditory: number;
  readonly blending: number;
  /** How many words known by sight are read, and how many are spelled. */
  readonly sight: number;
}

/** A card and why it was chosen. */
export interface ReviewChoice {
  readonly card: CardId;
  readonly why: ReviewReason;
}

/** The cards of each part, most wanted first. No card is in a part twice. */
export interface ReviewPlan {
  /** One of each grapheme. */
  readonly visual: readonly ReviewChoice[];
  /** One spelling of each sound: all its taught spellings are asked for. */
  readonly auditory: readonly ReviewChoice[];
  /** The cards that the board should make the most of. */
  readonly blending: readonly ReviewChoice[];
  /** The words known by sight to read, and to spell. */
  readonly sight: Readonly<Record<Observation['task'], readonly ReviewChoice[]>>;
  /** Of every card taught, by id, why it would be read, and why its sound would be asked for. */
  readonly why: Readonly<Record<Observation['task'], ReadonlyMap<CardId, ReviewReason>>>;
}

const COUNTS: ReviewCounts = { visual: 12, auditory: 6, blending: 5, sight: 5 };

/** A card is new for so many days after it first came up (common practice, no source). */
const NEW_DAYS = 3;
/** At most so much of a part is new. */
const NEW_SHARE = 0.4;
/** At least so much of the visual and auditory part goes well, where there is enough that does. */
const WELL_SHARE = 0.2;
/** Vowels among the cards that are not new. */
const VOWEL_SHARE = 0.25;

/** Plans a day. The same spec gives the same plan. */
export function planReview(spec: ReviewSpec): ReviewPlan {
  const counts = spec.counts ?? COUNTS;
  const all = { read: candidatesOf(spec, 'read'), spell: candidatesOf(spec, 'spell') };
  const read = all.read.filter(({ isWord }) => !isWord);
  const spell = all.spell.filter(({ isWord }) => !isWord);
  const words = (task: Observation['task']): readonly ReviewChoice[] =>
    choose(
      onePer(
        all[task].filter(({ isWord }) => isWord),
        graphemeOf,
      ),
      counts.sight,
      WELL_SHARE,
    );
  const isShown = ({ kind, isNew, isBack }: Candidate): boolean =>
    isNew || isBack || (kind !== 'cluster' && kind !== 'silent');
  const visual = read.filter(isShown);
  return {
    visual: choose(onePer(visual, graphemeOf), counts.visual, WELL_SHARE),
    auditory: choose(
      onePer(spell.filter(hasSound), (card) => soundsOf(card).join(' ')),
      counts.auditory,
      WELL_SHARE,
    ),
    blending: choose(read, counts.blending, 0),
    sight: { read: words('read'), spell: words('spell') },
    why: { read: reasonsOf(all.read), spell: reasonsOf(all.spell) },
  };
}

function reasonsOf(candidates: readonly Candidate[]): ReadonlyMap<CardId, ReviewReason> {
  return new Map(candidates.map(({ card, why }) => [card, why]));
}

interface Candidate {
  readonly card: CardId;
  /** Whether it is a word known by sight. */
  readonly isWord: boolean;
  /** Of a card its kind; of a word none. */
  readonly kind: Kind | null;
  readonly isVowel: boolean;
  readonly isNew: boolean;
  /** Broke lately. */
  readonly isBack: boolean;
  readonly need: number;
  readonly goesWell: boolean;
  /** Days since it last came up; Infinity for never. */
  readonly away: number;
  readonly why: ReviewReason;
}

/** Every taught card, the neediest first. */
function candidatesOf(spec: ReviewSpec, task: Observation['task']): readonly Candidate[] {
  const { observations, knowledge, group, day, thresholds = PUBLISHED_THRESHOLDS } = spec;
  const known = knowledge[task];
  const histories = historiesOf(observations, task, { of: 'group', id: group });
  const newest = new Set(spec.newest);
  const back = new Set(spec.back);
  return [...new Set(spec.taught)]
    .flatMap((card): readonly Candidate[] => {
      const found = correspondenceById.get(card);
      const isWord = isSightId(card);
      if (!found && !isWord) return [];
      const history = histories.get(card) ?? [];
      const p = chanceOfCard(known, { of: 'group', id: group }, card, day);
      const first = history[0]?.day ?? (newest.has(card) ? day : Number.NEGATIVE_INFINITY);
      const isNew = newest.has(card) && day - first <= NEW_DAYS;
      const last = history.at(-1);
      const due = () => dueBy(known, group, card, day, p, spec.isSchool);
      const why = reasonOf(last, p, due, day, thresholds);
      return [
        {
          card,
          isWord,
          kind: found?.kind ?? null,
          isVowel: found !== undefined && isVowelCard(found),
          isNew,
          isBack: back.has(card),
          need: 1 - p,
          goesWell: p >= thresholds.secure && last !== undefined && last.missed === 0,
          away: last === undefined ? Number.POSITIVE_INFINITY : day - last.day,
          why: isNew && why.code !== 'missed' ? { code: 'new', days: day - first } : why,
        },
      ];
    })
    .sort((one, other) => other.need - one.need || (one.card < other.card ? -1 : 1));
}

function reasonOf(
  last: DayOfCard | undefined,
  p: number,
  due: () => DueBecause | null,
  day: Day,
  thresholds: Thresholds,
): ReviewReason {
  if (last === undefined) return { code: 'never-seen' };
  const days = day - last.day;
  if (last.missed > 0 && days <= MISSED_DAYS) {
    return { code: 'missed', missed: last.missed, asked: last.asked, day: last.day };
  }
  if (p < thresholds.shaky) return { code: 'shaky', p };
  if (p < thresholds.secure) return { code: 'shaky', p };
  const because = days > 1 ? due() : null;
  return because === null ? { code: 'goes-well', days } : { code: 'unseen', days, because };
}

/** What was missed longer ago than this is told by how shaky it is. */
const MISSED_DAYS = 10;

/** New cards, what broke lately, then the neediest with vowels in balance, then some that go well. */
function choose(
  candidates: readonly Candidate[],
  count: number,
  wellShare: number,
): readonly ReviewChoice[] {
  const newest = candidates.filter(({ isNew }) => isNew).slice(0, Math.ceil(count * NEW_SHARE));
  const broke = candidates.filter((one) => one.isBack && !newest.includes(one));
  const fresh = [...newest, ...broke].slice(0, count);
  const rest = candidates.filter((one) => !fresh.includes(one));
  const well = rest
    .filter(({ goesWell }) => goesWell)
    .sort((one, other) => other.away - one.away)
    .slice(0, Math.floor((count - fresh.length) * wellShare));
  const needy = rest.filter((one) => !well.includes(one));
  const room = Math.max(0, count - fresh.length - well.length);
  const vowels = needy.filter(({ isVowel }) => isVowel);
  const others = needy.filter(({ isVowel }) => !isVowel);
  const wanted = Math.round(count * VOWEL_SHARE) - fresh.filter(({ isVowel }) => isVowel).length;
  const least = Math.min(vowels.length, Math.max(0, Math.min(wanted, room)));
  const taken = new Set([
    ...vowels.slice(0, Math.max(least, room - others.length)),
    ...others.slice(0, room - least),
  ]);
  const chosen = needy.filter((one) => taken.has(one)).slice(0, room);
  return [...fresh, ...chosen, ...well].map(({ card, why }) => ({ card, why }));
}

/** The neediest of those that are alike; new ones before all others, then what broke lately. */
function onePer(
  candidates: readonly Candidate[],
  keyOf: (card: CardId) => string,
): readonly Candidate[] {
  const seen = new Set<string>();
  const ordered = candidates.toSorted(
    (one, other) =>
      Number(other.isNew) - Number(one.isNew) || Number(other.isBack) - Number(one.isBack),
  );
  return ordered.filter(({ card }) => {
    const key = keyOf(card);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Whether a card's sound can be asked for: it has one, only one card's worth, and it is no schwa. */
function hasSound({ card, kind }: Candidate): boolean {
  const found = correspondenceById.get(card);
  return (
    found !== undefined &&
    kind !== 'cluster' &&
    partsOf(found).length === 1 &&
    found.phonemes.length > 0 &&
    !found.phonemes.includes('AX')
  );
}
