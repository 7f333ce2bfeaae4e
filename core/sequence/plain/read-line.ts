/**
 * Reads one line of an order as teachers write it: *t – the*, *ch as in chin*,
 * *blends*, *soft c*, *does, they*.
 *
 * Method: from left to right, the phrases of the trade first, then single
 * pieces: letters of a card, a word by heart, an item in its exact form. Each
 * piece is read on its own, so that one that is wrong leaves the rest in place.
 * What letters mean may depend on the lines before: the second *c* is the soft one.
 * Linear in the line: a phrase is looked for in what lies near, and what stands beyond the longest line
 * that means anything is one unknown piece.
 */
import { type CardId, graphemeOf, lettersShown } from '../../language/card-id.ts';
import { correspondenceById, correspondencesByGrapheme } from '../../language/correspondences.ts';
import { parseItem, splitItems } from '../item.ts';
import { nearMisses } from '../near-misses.ts';
import type { Item } from '../sequence.ts';
import { BY_HEART, FILLERS, PHRASES } from './phrases.ts';
import { meaningOf, type SoundQuestion, WORD_FIRST } from './sound-question.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A piece of a line: what was written, and what it was read as. */
export type LinePiece =
  | {
      readonly kind: 'items';
      readonly written: string;
      /** Empty for what is understood and teaches no card of its own. */
      readonly items: readonly Item[];
      readonly note: string | null;
    }
  | { readonly kind: 'asks'; readonly written: string; readonly question: SoundQuestion }
  | { readonly kind: 'unknown'; readonly written: string; readonly nearMisses: readonly string[] };

/** The pieces of a line, in its order; `before` are the cards that earlier lines taught. */
export function readLine(
  line: string,
  before: ReadonlySet<CardId>,
  vocabulary: Vocabulary,
): readonly LinePiece[] {
  const pieces: LinePiece[] = [];
  const known = new Set(before);
  const whole = line.trim();
  const beyond = whole.slice(LONGEST_LINE);
  let rest = whole.slice(0, LONGEST_LINE).replace(NUMBERING, '');
  const explicit = rest.toLowerCase().replace(/\s*=\s*/g, '=');
  let byHeart = false;
  while (rest !== '') {
    const heart = BY_HEART.exec(rest.slice(0, NEAR).toLowerCase());
    if (heart && heart[0] !== '' && !/^words?$/.test(heart[0].trim())) {
      byHeart = true;
      rest = rest.slice(heart[0].length);
      continue;
    }
    const [piece, taken] = nextPiece(rest, known, vocabulary, byHeart, explicit);
    if (piece) pieces.push(piece);
    for (const item of piece?.kind === 'items' ? piece.items : []) {
      if (item.kind === 'card') known.add(item.id);
    }
    rest = rest.slice(Math.max(taken, 1)).replace(BETWEEN, '');
  }
  if (beyond !== '') pieces.push({ kind: 'unknown', written: beyond, nearMisses: [] });
  return pieces;
}

/** Signs of a line that are read: longer than anyone's, a thousand cards with their commas. */
export const LONGEST_LINE = 4000;
/** No phrase of the trade is so long, in signs. */
const NEAR = 200;

/** *12.*, *Lesson 3:*, *Week 2 –*, a bullet. */
const NUMBERING =
  /^(?:[•*·–—-]\s+|(?:lesson|week|day|step|unit|line|group|set)\s*\d+[a-z]?\s*[:.)–—-]*\s*|\d+[a-z]?\s*(?:[:.)–—-]\s*|\s+(?=\D)|$))+/i;
const BETWEEN = /^(?:[\s,;&|·•]+|\/(?=\s)|[–—](?=\s|$)|-(?=\s|$)|:(?=\s|$))+/;

function nextPiece(
  rest: string,
  known: ReadonlySet<CardId>,
  vocabulary: Vocabulary,
  byHeart: boolean,
  explicit: string,
): readonly [LinePiece | null, number] {
  const lower = rest.slice(0, NEAR).toLowerCase();
  if (!byHeart) {
    for (const { said, items, note } of PHRASES) {
      const match = said.exec(lower);
      if (!match) continue;
      const end = match[0].length;
      return [pieceOf(rest.slice(0, end), splitItems(items).map(exactItem), note), end];
    }
  }
  const exact = EXACT.exec(rest);
  if (exact) {
    const read = parseItem(exact[0]);
    const piece: LinePiece =
      'item' in read
        ? pieceOf(exact[0], [read.item], null)
        : { kind: 'unknown', written: exact[0], nearMisses: read.error.nearMisses };
    return [piece, exact[0].length];
  }
  const token = /^[^\s,;&|:·•()]+/.exec(rest)?.[0] ?? rest[0] ?? '';
  const asIn = AS_IN.exec(rest.slice(token.length));
  const end = token.length + (asIn?.[0].length ?? 0);
  const written = rest.slice(0, end);
  const letters = plainLetters(token);
  if (letters === '' || FILLERS.has(token.toLowerCase())) return [null, end];
  if (asIn) return [readAsIn(written, letters, asIn, vocabulary), end];
  if (byHeart) return [wordPiece(written, letters, vocabulary), end];
  return [readToken(written, letters, known, vocabulary, explicit), end];
}

/** An item in its exact form: `ea=EH`, `word:said`, `habit:schwa`. */
const EXACT = /^(?:(?:word|habit)\s*:\s*[^\s,;]+|[a-z_]+\s*=\s*[a-z+-]+)/i;
/** *as in chin*, *(thumb)*, *like chin*, *says chin*, *(voiced)*. */
const AS_IN =
  /^\s*(?:(?:as in|like|for|says?|in)\s+[“"'‘]?([a-z']+)[”"'’]?|[([]\s*(?:as in |like |for )?([a-z' ]+?)\s*[)\]])/i;

function plainLetters(token: string): string {
  return token
    .toLowerCase()
    .replace(/^[/“"'‘[]+|[/”"'’\].!?*]+$/g, '')
    .replace(/^([aeiouy])(?:[-–—_]|_?c)e$/, '$1_e')
    .replace(/^[-–—_]+|[-–—_]+$/g, '');
}

function readAsIn(
  written: string,
  letters: string,
  asIn: RegExpExecArray,
  vocabulary: Vocabulary,
): LinePiece {
  const word = (asIn[1] ?? asIn[2] ?? '').toLowerCase();
  const id = VOICED.get(`${letters} ${word}`) ?? vocabulary.cardIn(word, letters);
  if (word === 'both' && letters === 'th')
    return pieceOf(written, ['th', 'th=DH'].map(exactItem), null);
  if (id !== null) {
    const keyword = correspondenceById.get(id)?.keyword ?? null;
    const note = keyword === null || keyword === word ? null : `the sound of ${keyword}`;
    return pieceOf(written, [{ kind: 'card', id }], note);
  }
  const near = (correspondencesByGrapheme.get(letters) ?? [])
    .filter(({ tier, keyword }) => tier <= 3 && keyword !== null)
    .map(({ keyword }) => `${letters} as in ${keyword}`);
  return { kind: 'unknown', written, nearMisses: near.slice(0, 3) };
}

const VOICED: ReadonlyMap<string, CardId> = new Map([
  ['th voiced', 'th=DH'],
  ['th unvoiced', 'th=TH'],
  ['th voiceless', 'th=TH'],
  ['th quiet', 'th=TH'],
  ['th loud', 'th=DH'],
]);

function readToken(
  written: string,
  letters: string,
  known: ReadonlySet<CardId>,
  vocabulary: Vocabulary,
  explicit: string,
): LinePiece {
  const single = correspondencesByGrapheme.get(letters)?.find(({ tier }) => tier <= 3);
  if (/^I$/.test(written.trim()) && known.has('i=IH')) return wordPiece(written, 'i', vocabulary);
  if (!WORD_FIRST.has(letters)) {
    if (explicit.includes(`${letters}=`) && single) {
      return pieceOf(written, [{ kind: 'card', id: single.id }], null);
    }
    const meant = meaningOf(letters, single?.id, known);
    if (meant && 'asks' in meant) return { kind: 'asks', written, question: meant };
    if (meant) {
      const items = meant.ids.map((id): Item => ({ kind: 'card', id }));
      return pieceOf(written, items, noteOn(meant.ids, meant.again));
    }
  }
  const read = parseItem(letters);
  if (!WORD_FIRST.has(letters) && 'item' in read && read.item.kind === 'habit') {
    return pieceOf(written, [read.item], null);
  }
  return wordPiece(written, letters, vocabulary);
}

function wordPiece(written: string, letters: string, vocabulary: Vocabulary): LinePiece {
  const word = letters.replaceAll('’', "'");
  if (!vocabulary.isWord(word))
    return { kind: 'unknown', written, nearMisses: nearMisses(letters) };
  return pieceOf(written, [{ kind: 'word', word }], 'known by sight');
}

function noteOn(ids: readonly CardId[], again: boolean): string | null {
  const card = correspondenceById.get(ids[0] as CardId);
  if (again && card?.keyword) return `once more: now as in ${card.keyword}`;
  if (card?.kind === 'welded') return 'joined: the letters are read as one';
  if (ids.length > 1 && ids.every((id) => graphemeOf(id) === graphemeOf(ids[0] as CardId))) {
    return `${lettersShown(ids[0] as CardId)} with both its sounds`;
  }
  return null;
}

function pieceOf(written: string, items: readonly Item[], note: string | null): LinePiece {
  return { kind: 'items', written: written.trim(), items, note };
}

function exactItem(text: string): Item {
  const read = parseItem(text);
  if ('error' in read) throw new Error(read.error.message);
  return read.item;
}
