/**
 * Words that belong together: a form and its base (*doing*, do), a compound and
 * its parts (*without*, with and out). What is known of the one is known of the
 * other.
 *
 * Method: a word is cut where an ending or a second word may begin, and
 * believed only when its cards are those of the parts: *friends* has the cards
 * of *friend* and s, *carpet* has those of car and pet and is said so too, which
 * does no harm, since both were then read. Cards count as the same where the
 * ending changes how they are written: nn for n, v for ve, o for o_e.
 * A word is looked at when it is asked for; who holds a word is found among those
 * with its first or last letters, so that no pass over the list is needed
 * but the one that puts them in heaps.
 */
import { type CardId, graphemeOf, soundsOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { keptByWord } from './kept-by-word.ts';
import type { Lexicon } from './lexicon.ts';

/** How a word is made of words of the list. */
export interface MadeOf {
  /** Indexes of its parts: the base alone, or both parts of a compound. */
  readonly parts: readonly number[];
  /** The cards of the ending; empty for a compound. */
  readonly ending: readonly CardId[];
  /** The ending as it is written: `ing`; empty for a compound. */
  readonly letters: string;
  /** Whether the ending is a beat of its own. */
  readonly beat: boolean;
}

/** How word `index` is made of others; none for most. Kept once found. */
export const madeOf = keptByWord<readonly MadeOf[]>((index, lexicon) => {
  const made = [...formsOf(index, lexicon), ...compoundOf(index, lexicon)];
  return made.length === 0 ? NONE : made;
});

const NONE: readonly MadeOf[] = [];

/** A word that is made of another, and how. */
export interface Holder {
  readonly holder: number;
  readonly made: MadeOf;
}

/** The words that are a form of word `index`, or a compound with it. Kept once found. */
export function holdersOf(index: number, lexicon: Lexicon): readonly Holder[] {
  const heaps = heapsOf(lexicon);
  let known = heaps.holders.get(index);
  if (!known) {
    const word = lexicon.word(index);
    const near = [
      ...(heaps.byStart.get(word.slice(0, HEAP)) ?? []).filter((other) =>
        lexicon.word(other).startsWith(word.replace(/[ey]$/, '')),
      ),
      ...(heaps.byEnd.get(word.slice(-HEAP)) ?? []).filter((other) =>
        lexicon.word(other).endsWith(word),
      ),
    ];
    known = [...new Set(near)].flatMap((holder) =>
      madeOf(holder, lexicon)
        .filter(({ parts }) => parts.includes(index))
        .map((made) => ({ holder, made })),
    );
    heaps.holders.set(index, known);
  }
  return known;
}

/** The card of its base that word `index` no longer shows: the ve of *having*; null for most. */
export function hiddenCard(index: number, lexicon: Lexicon): CardId | null {
  const ending = E_DROPPERS.exec(lexicon.word(index))?.[0];
  if (ending === undefined) return null;
  const base = lexicon.indexOf(`${lexicon.word(index).slice(0, -ending.length)}e`);
  if (base < 0) return null;
  const last = lexicon.cardIds(base).at(-1);
  if (!last || correspondenceById.get(last)?.kind !== 'consonant-e') return null;
  if (lexicon.cardIds(index).includes(last)) return null;
  const isForm = [...formsOf(index, lexicon)].some(({ parts }) => parts.includes(base));
  return isForm ? last : null;
}

const E_DROPPERS = /(?:ing|ed|er|est)$/;

/** Words by their first and their last letters. */
interface Heaps {
  readonly byStart: ReadonlyMap<string, readonly number[]>;
  readonly byEnd: ReadonlyMap<string, readonly number[]>;
  readonly holders: Map<number, readonly Holder[]>;
}

const HEAP = 3;
const allHeaps = new WeakMap<Lexicon, Heaps>();

function heapsOf(lexicon: Lexicon): Heaps {
  const known = allHeaps.get(lexicon);
  if (known) return known;
  const byStart = new Map<string, number[]>();
  const byEnd = new Map<string, number[]>();
  for (let index = 0; index < lexicon.size; index++) {
    const word = lexicon.word(index);
    push(byStart, word.slice(0, HEAP), index);
    if (word.length > 2) push(byStart, word.slice(0, 2), index);
    push(byEnd, word.slice(-HEAP), index);
    if (word.length > 2) push(byEnd, word.slice(-2), index);
  }
  const heaps: Heaps = { byStart, byEnd, holders: new Map() };
  allHeaps.set(lexicon, heaps);
  return heaps;
}

interface Ending {
  readonly letters: string;
  /** How many cards it has. */
  readonly cards: number;
  readonly ids: RegExp;
}

const ENDINGS: readonly Ending[] = [
  { letters: 'ing', cards: 2, ids: /^i=IH ng=NG$/ },
  { letters: 'ed', cards: 1, ids: /^ed=/ },
  { letters: 'es', cards: 1, ids: /^es=/ },
  { letters: 's', cards: 1, ids: /^s=[SZ]$/ },
  { letters: 'er', cards: 1, ids: /^er=ER$/ },
  { letters: 'est', cards: 3, ids: /^e=AX s=S t=T$/ },
];

/** Endings that are a beat of their own however their base ends. */
const BEATS = /^(ing|er|est)$|^(ed=IH|es=)/;

function* formsOf(index: number, lexicon: Lexicon): Generator<MadeOf> {
  const word = lexicon.word(index);
  for (const ending of ENDINGS) {
    if (!word.endsWith(ending.letters) || word.length < ending.letters.length + 2) continue;
    const bases = basesOf(word.slice(0, -ending.letters.length), ending.letters)
      .map((base) => lexicon.indexOf(base))
      .filter((part) => part >= 0 && part !== index);
    if (bases.length === 0) continue;
    const ids = lexicon.cardIds(index);
    const tail = ids.slice(-ending.cards);
    if (!ending.ids.test(tail.join(' '))) continue;
    const stem = plainCards(ids.slice(0, -ending.cards));
    const part = bases.find((base) => plainCards(lexicon.cardIds(base)) === stem);
    if (part === undefined) continue;
    const beat = BEATS.test(ending.letters) || BEATS.test(tail[0] ?? '');
    yield { parts: [part], ending: tail, letters: ending.letters, beat };
  }
}

/** How the base of a stem may be written. */
function basesOf(stem: string, ending: string): readonly string[] {
  if (ending === 's') return [stem];
  const bases = [stem, `${stem}e`];
  if (/([bdgmnprt])\1$/.test(stem)) bases.push(stem.slice(0, -1));
  return bases;
}

function* compoundOf(index: number, lexicon: Lexicon): Generator<MadeOf> {
  const word = lexicon.word(index);
  for (let letters = 2; letters <= word.length - 2 && word.length >= 5; letters++) {
    const first = lexicon.indexOf(word.slice(0, letters));
    if (first < 0) continue;
    const second = lexicon.indexOf(word.slice(letters));
    if (second < 0) continue;
    const parts = [...lexicon.cardIds(first), ...lexicon.cardIds(second)];
    if (!sameCards(lexicon.cardIds(index), parts)) continue;
    yield { parts: [first, second], ending: [], letters: '', beat: false };
    return;
  }
}

function sameCards(left: readonly CardId[], right: readonly CardId[]): boolean {
  return (
    left.length === right.length &&
    left.every((id, at) => voiceless(id) === voiceless(right[at] as CardId))
  );
}

/** th is said both ways at the end of *with*. */
function voiceless(id: CardId): CardId {
  return id === 'th=DH' ? 'th=TH' : id;
}

/** Cards as they are before any ending: written alike, whatever the ending did to the last letters. */
function plainCards(ids: readonly CardId[]): string {
  return ids.map(plainCard).join(' ');
}

function plainCard(id: CardId, at: number, all: readonly CardId[]): string {
  const kind = correspondenceById.get(id)?.kind;
  const grapheme = graphemeOf(id).replace('_e', '');
  if (kind === 'consonant-e') return `${grapheme.slice(0, -1)}=${soundsOf(id).join('+')}`;
  if (kind === 'double' && at === all.length - 1) return `${grapheme[0]}=${soundsOf(id).join('+')}`;
  return `${grapheme}=${soundsOf(id).join('+')}`;
}

function push<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
