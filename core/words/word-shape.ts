import type { CardId } from '../language/card-id.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isNucleus } from '../language/syllables.ts';

/**
 * The shape of a word in cards, as teachers write it: c for a consonant card,
 * v for a vowel card of one letter, vv for a vowel team, vr for a vowel with
 * its r, and the e of a silent e where it stands. *ship* is cvc, *stop* ccvc,
 * *make* cvce, *rain* cvvc, *car* cvr, *go* cv. Silent letters do not count.
 */
export function shapeOf(cardIds: readonly CardId[]): string {
  let shape = '';
  let silentE = false;
  for (const id of cardIds) {
    const card = correspondenceById.get(id);
    shape += card ? part(card) : 'c';
    if (silentE && shape.endsWith('c')) {
      shape += 'e';
      silentE = false;
    }
    if (card?.kind === 'silent-e') silentE = true;
  }
  return shape;
}

function part(card: Correspondence): string {
  if (card.phonemes.length === 0) return '';
  if (!isNucleus(card)) return 'c';
  if (card.kind === 'r-vowel') return 'vr';
  return card.kind === 'vowel-team' || card.kind === 'diphthong' ? 'vv' : 'v';
}

/** Reads a shape as a person writes it, `CVC`; null when it is none. */
export function parseShape(text: string): string | null {
  const shape = text.trim().toLowerCase();
  return /^[cver]*v[cver]*$/.test(shape) ? shape : null;
}
