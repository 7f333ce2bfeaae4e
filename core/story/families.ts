import { type CardId, isSightId } from '../language/card-id.ts';
import type { Kind } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';

/** Cards that are spoken of together, and what they are called then. */
const FAMILIES = {
  'short-vowel': 'short vowels',
  consonant: 'single consonants',
  double: 'doubled consonants',
  digraph: 'digraphs',
  cluster: 'blends',
  'silent-e': 'silent-e spellings',
  'long-vowel': 'long vowels',
  'vowel-team': 'vowel teams',
  'r-vowel': 'vowels with r',
  ending: 'endings',
  sight: 'words by sight',
} as const satisfies Partial<Record<Kind | 'sight', string>>;
export type Family = keyof typeof FAMILIES;

/** The family of a card; null for the few kinds that make none. */
export function familyOf(id: CardId): Family | null {
  if (isSightId(id)) return 'sight';
  const kind = correspondenceById.get(id)?.kind;
  if (kind === undefined) return null;
  const wide = WIDER[kind] ?? kind;
  return wide in FAMILIES ? (wide as Family) : null;
}

/** What a family is called in a sentence. */
export function familyName(family: Family): string {
  return FAMILIES[family];
}

const WIDER: Partial<Record<Kind, Family>> = {
  trigraph: 'digraph',
  welded: 'digraph',
  diphthong: 'vowel-team',
};
