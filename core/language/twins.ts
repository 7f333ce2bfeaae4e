import type { CardId } from './card-id.ts';
import { correspondenceById } from './correspondences.ts';

/** Those of these cards, by id, that share their letters with another: the two `th`, `s` as /s/ and /z/. */
export function twinsIn(ids: Iterable<CardId>): ReadonlySet<CardId> {
  const byLetters = new Map<string, CardId[]>();
  for (const id of new Set(ids)) {
    const letters = correspondenceById.get(id)?.grapheme;
    if (letters === undefined) continue;
    const alike = byLetters.get(letters);
    if (alike) alike.push(id);
    else byLetters.set(letters, [id]);
  }
  return new Set([...byLetters.values()].filter(({ length }) => length > 1).flat());
}
