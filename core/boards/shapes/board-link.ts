/**
 * A board as text for an address: its shape and its cards, and nothing else, so
 * that it can be handed on without telling anything of the class or the person.
 *
 * Form: `v=1&piles=b.d.sh,a.e,t.ck&shape=closed`. A card that has the first
 * sound of its letters is its letters alone; any other adds its sounds,
 * `th!DH`, `ar!AO-R`, `b!0` for none. A syllable is its cards, each behind a tilde: `~n~a~p`. All signs stand in an address as they are.
 */
import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById, correspondencesByGrapheme } from '../../language/correspondences.ts';
import { laySyllable } from '../../language/laid-syllable.ts';
import { cardsOnCard, isSyllableId, makeSyllableId } from '../../language/syllable-card.ts';
import type { Board } from './board.ts';
import { shapeById } from './shape-list.ts';

/** A board that a link names, or why it names none. */
export type ReadLink =
  | { readonly kind: 'board'; readonly board: Board }
  | {
      readonly kind: 'refused';
      readonly code: 'form' | 'version' | 'shape' | 'card' | 'place';
      /** What is wrong and what to do, in a teacher's words. */
      readonly message: string;
    };

/** A board as link text. Its shape and cards must be known. */
export function makeBoardLink({ shape, piles }: Board): string {
  const cards = piles.map((pile) => pile.map(makeCard).join('.')).join(',');
  return `v=${VERSION}&piles=${cards}&shape=${shape}`;
}

/** Reads link text. Never throws, whatever the text. */
export function parseBoardLink(text: string): ReadLink {
  if (text.length > MOST_LETTERS) return refuse('form', 'This link is too long for a board.');
  const parts = new Map(text.split('&').map((part) => cutAt(part, '=')));
  const version = parts.get('v');
  if (version !== undefined && version !== VERSION) {
    return refuse(
      'version',
      'This link was made by a newer Sweepline. Close all its windows and open it again to get the newest.',
    );
  }
  const piles = parts.get('piles')?.split(',');
  const shape = shapeById.get(parts.get('shape') ?? '');
  if (version === undefined || !piles || !parts.has('shape')) {
    return refuse('form', 'Part of this link is missing. Copy the whole link and open it again.');
  }
  if (!shape || shape.piles.length !== piles.length) {
    return refuse('shape', 'This link names a kind of board that is not known here.');
  }
  const ids: CardId[][] = [];
  for (const [at, pile] of piles.entries()) {
    const own = new Set<CardId>();
    for (const name of pile === '' ? [] : pile.split('.')) {
      if (name.startsWith('~') && shape.form === 'beats') {
        const syllable = parseSyllable(name);
        if (!syllable) return refuse('card', 'This link names a card that is not known here.');
        own.add(syllable);
        continue;
      }
      const card = parseCard(name);
      if (!card) return refuse('card', 'This link names a card that is not known here.');
      if (!shape.piles[at]?.takes(card)) {
        return refuse(
          'place',
          `This link puts the card ${card.grapheme} where it cannot lie. Ask for the link again.`,
        );
      }
      own.add(card.id);
    }
    ids.push([...own]);
  }
  return { kind: 'board', board: { shape: shape.id, piles: ids } };
}

const VERSION = '1';
/** Longer than the link of any board that fits a table. */
const MOST_LETTERS = 4000;

function makeCard(id: CardId): string {
  if (isSyllableId(id))
    return cardsOnCard(id)
      .map((own) => `~${makeCard(own)}`)
      .join('');
  const [grapheme, sounds] = cutAt(id, '=');
  if (correspondencesByGrapheme.get(grapheme)?.[0]?.id === id) return grapheme;
  return `${grapheme}!${sounds === '-' ? '0' : sounds.replaceAll('+', '-')}`;
}

function parseCard(name: string): Correspondence | undefined {
  if (!name.includes('!')) return correspondencesByGrapheme.get(name)?.[0];
  const [grapheme, sounds] = cutAt(name, '!');
  return correspondenceById.get(
    `${grapheme}=${sounds === '0' ? '-' : sounds.replaceAll('-', '+')}`,
  );
}

/** A syllable, its cards each behind a tilde; null where they are no syllable. */
function parseSyllable(name: string): CardId | null {
  const cards = name.slice(1).split('~').map(parseCard);
  const known = cards.flatMap((card) => card ?? []);
  if (known.length < cards.length || !laySyllable(known)) return null;
  return makeSyllableId(known.map(({ id }) => id));
}

/** The text before and after the first such sign. */
function cutAt(text: string, sign: string): [before: string, after: string] {
  const at = text.indexOf(sign);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + 1)];
}

function refuse(code: Extract<ReadLink, { kind: 'refused' }>['code'], message: string): ReadLink {
  return { kind: 'refused', code, message };
}
