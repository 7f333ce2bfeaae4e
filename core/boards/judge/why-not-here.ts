/**
 * Why a card cannot stand in a pile, in a teacher's words. What a pile never
 * takes comes first, with the spelling rule's own sentence where one says it;
 * then what is true of this board as it lies.
 */
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { type Correspondence, isVowelCard } from '../../language/correspondence.ts';
import {
  CORRESPONDENCES,
  correspondenceById,
  correspondencesByGrapheme,
} from '../../language/correspondences.ts';
import { laySyllable } from '../../language/laid-syllable.ts';
import { brokenRules } from '../../language/spelling-rules.ts';
import { cardsOnCard, isSyllableId } from '../../language/syllable-card.ts';
import type { Taught } from '../../language/taught.ts';
import { layWord } from '../shapes/lay-word.ts';
import { SHAPES } from '../shapes/shape-list.ts';
import { candidates, type PileSpec, type Shape, vowelPile } from '../shapes/shapes.ts';
import { isTaughtCard } from '../shapes/taught-cards.ts';
import { tallyOf, withOnly } from './card-gain.ts';
import type { RowJudge } from './row-judge.ts';
import { whyBroken } from './word-rules.ts';
import { cardsAt, outcomeAt, type WordTable } from './word-table.ts';

/** A reason that speaks against a card in a pile. */
export interface WhyNot {
  /**
   * `kind`: a vowel among consonants or the other way round. `rule`: a rule of
   * position. `place`: the pile takes other cards. `stopped`: on paper it would
   * make a word that the screen stops. `no-word`: it makes no word that may be
   * shown, with the cards that lie here.
   */
  readonly code:
    | 'kind'
    | 'rule'
    | 'place'
    | 'untaught'
    | 'lies-here'
    | 'full'
    | 'stopped'
    | 'no-word';
  readonly message: string;
  /** The cards on the board that it is about. */
  readonly cards: readonly string[];
  /** False where she may put it there all the same. */
  readonly forbids: boolean;
}

/** The board that a card would join. */
export interface BoardToJoin {
  readonly piles: readonly (readonly CardId[])[];
  /** The most cards of each pile. */
  readonly room: readonly number[];
  readonly taught: Taught;
  readonly judge: RowJudge;
  /** Whether the cards are for paper, where no row can be skipped. */
  readonly onPaper: boolean;
}

/** What speaks against a card in a pile, the first reason; null when it may stand there. */
export function whyNotHere(id: CardId, pile: number, standing: BoardToJoin): WhyNot | null {
  const { piles, room, taught, judge, onPaper } = standing;
  const isSyllable = isSyllableId(id);
  const card = isSyllable ? standIn(id) : correspondenceById.get(id);
  const spec = judge.shape.piles[pile];
  const lying = piles[pile];
  if (!card || !spec || !lying) throw new Error(`there is no card ${id} or no pile ${pile}`);
  if (!isSyllable && !spec.takes(card)) return whyNotTaken(card, spec, judge.shape);
  if (!isSyllable && !isTaughtCard(card, taught)) {
    return forbid('untaught', `${nameOf(card)} was not taught yet.`);
  }
  if (lying.includes(id)) return forbid('lies-here', `${nameOf(card)} lies in this pile already.`);
  if (lying.length >= (room[pile] ?? Infinity)) {
    const holds = `${lying.length} ${lying.length === 1 ? 'card' : 'cards'}`;
    return forbid('full', `This pile holds ${holds}. Take one out, or make more room.`);
  }
  const table = judge.table(withOnly(piles, pile, id));
  if (table.words.length === 0) return null;
  const { stopped, real, nonsense } = tallyOf(table);
  if (onPaper && stopped > 0) return whyStopped(card, pile, table, stopped);
  return real + nonsense === 0 ? whyNoWord(card, table) : null;
}

/** A syllable as a card of the table, as far as a sentence asks for it. */
function standIn(id: CardId): Correspondence {
  const [first] = cardsOnCard(id).flatMap((own) => correspondenceById.get(own) ?? []);
  return { ...(first as Correspondence), id, grapheme: graphemeOf(id), keyword: null, parts: [] };
}

function whyNotTaken(card: Correspondence, spec: PileSpec, shape: Shape): WhyNot {
  const name = nameOf(card);
  if (isVowelCard(card) && spec.role !== 'vowel') {
    return forbid('kind', `${name} is a vowel; here lie consonants.`);
  }
  if (!isVowelCard(card) && spec.role === 'vowel') {
    return forbid('kind', `${name} is no vowel; here lie vowels, in their arches.`);
  }
  const why = ruleAgainst(card, spec, shape);
  if (why) return forbid('rule', why);
  if (spec.role === 'beginning' && stands(card, 'ending')) {
    return forbid('place', `${name} stands at the end of a word, not at its beginning.`);
  }
  if (spec.role === 'ending' && stands(card, 'beginning')) {
    return forbid('place', `${name} stands at the beginning of a word, not at its end.`);
  }
  const some = CORRESPONDENCES.filter((other) => other.tier === 1 && spec.takes(other));
  const examples = listOf([...new Set(some.map(({ grapheme }) => grapheme))].slice(0, 3), 'or');
  const here = examples ? ` Here lies a card such as ${examples}.` : '';
  const home = shape.piles.some(({ takes }) => takes(card)) ? undefined : homeOf(card);
  const there = home ? ` It lies on the board “${home.title}”.` : '';
  return forbid('place', `${name} has no place in this pile.${here}${there}`);
}

function stands({ places, kind }: Correspondence, place: 'beginning' | 'ending'): boolean {
  return places.length === 1 && places[0] === place && !isAdded(kind);
}

/** What is added to a base or ends a longer word has boards of its own. */
function isAdded(kind: Correspondence['kind']): boolean {
  return kind === 'ending' || kind === 'consonant-le';
}

/** The first rule that the card breaks at this place whatever vowel it stands beside. */
function ruleAgainst(card: Correspondence, { role }: PileSpec, shape: Shape): string | null {
  if ((role !== 'beginning' && role !== 'ending') || isAdded(card.kind)) return null;
  const vowels = CORRESPONDENCES.filter((other) => other.tier < 3 && vowelPile(shape).takes(other));
  const broken = vowels.map((vowel) => {
    const syllable = laySyllable(role === 'beginning' ? [card, vowel] : [vowel, card]);
    if (!syllable) return [];
    return brokenRules(syllable).filter(({ reads }) => reads === role);
  });
  return broken[0]?.find((rule) => broken.every((rules) => rules.includes(rule)))?.why ?? null;
}

/** The shape that the card is taught with: the first but the one that takes nearly all. */
function homeOf(card: Correspondence): Shape | undefined {
  const homes = SHAPES.filter((shape) =>
    candidates(shape, [card]).some(({ length }) => length > 0),
  );
  return homes.find(({ id }) => id !== 'syllable') ?? homes[0];
}

/** Names the cards of one pile only: all of them in a row would spell the word. */
function whyStopped(card: Correspondence, pile: number, table: WordTable, count: number): WhyNot {
  const partners = table.piles.map(() => new Set<CardId>());
  for (let row = 0; row < table.outcomes.length; row++) {
    if (outcomeAt(table, row) !== 'screened') continue;
    cardsAt(table, row).forEach((id, at) => {
      if (at !== pile) partners[at]?.add(id);
    });
  }
  const fewest = partners
    .filter((ids) => ids.size > 0)
    .reduce((least, ids) => (ids.size < least.size ? ids : least));
  const cards = [...fewest];
  const letters = listOf(cards.map(graphemeOf), 'or');
  const words = count === 1 ? 'a word that is' : `${count} words that are`;
  return {
    code: 'stopped',
    message: `With ${letters}, ${nameOf(card)} makes ${words} not for class. On paper nothing can be skipped.`,
    cards,
    forbids: false,
  };
}

function whyNoWord(card: Correspondence, table: WordTable): WhyNot {
  const rows = table.words.map((_, row) => row);
  const ruled = rows.find((row) => outcomeAt(table, row) === 'rule');
  const laid =
    ruled === undefined || table.shape.form === 'beats'
      ? null
      : layWord(
          table.shape,
          cardsAt(table, ruled).map((id) => correspondenceById.get(id) as Correspondence),
        );
  const why = laid && whyBroken(laid);
  return {
    code: 'no-word',
    message: `${nameOf(card)} makes no word with the cards that lie here.${why ? ` ${why}` : ''}`,
    cards: [],
    forbids: false,
  };
}

function forbid(code: WhyNot['code'], message: string): WhyNot {
  return { code, message, cards: [], forbids: true };
}

/** Letters, and the keyword where they have another sound first: `s as in nose`. */
function nameOf({ id, grapheme, keyword }: Correspondence): string {
  const isFirst = correspondencesByGrapheme.get(grapheme)?.[0]?.id === id;
  return keyword && !isFirst ? `${grapheme} as in ${keyword}` : grapheme;
}

function listOf(words: readonly string[], last: 'and' | 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
