import { type CardId, isSightId, lettersShown } from '../language/card-id.ts';
import { correspondenceById, correspondencesByGrapheme } from '../language/correspondences.ts';
import { type SoundStyle, soundLabel } from '../language/phonemes.ts';

/**
 * A card in a sentence: its letters, and what sets it apart where the same
 * letters have another sound: `sh`, `short i`, `s as in nose`, `a_e`; a word known by sight as “was”.
 */
function cardSaid(id: CardId, style: SoundStyle): string {
  if (isSightId(id)) return `“${lettersShown(id)}”`;
  const card = correspondenceById.get(id);
  if (card === undefined) return id;
  const { grapheme, kind, phonemes, keyword } = card;
  if (kind === 'short-vowel' && grapheme.length === 1) return `short ${grapheme}`;
  if (correspondencesByGrapheme.get(grapheme)?.[0]?.id === id) return grapheme;
  return keyword === null
    ? `${grapheme} ${soundLabel(phonemes, style, grapheme)}`
    : `${grapheme} as in ${keyword}`;
}

/** Things in a row, as they are said: `st`, `st and bl`, `st, bl and fl`. */
export function listSaid(things: readonly string[], joined: 'and' | 'or' = 'and'): string {
  if (things.length < 2) return things.join('');
  return `${things.slice(0, -1).join(', ')} ${joined} ${things.at(-1)}`;
}

/** Cards in a row, four at most by name: `st, bl, fl and 2 more`. */
export function cardsSaid(
  ids: readonly CardId[],
  style: SoundStyle,
  joined: 'and' | 'or' = 'and',
): string {
  const named = ids.length > MOST_NAMED ? ids.slice(0, MOST_NAMED - 1) : ids;
  const rest = ids.length - named.length;
  const said = named.map((id) => cardSaid(id, style));
  return listSaid(rest > 0 ? [...said, `${rest} more`] : said, joined);
}

const MOST_NAMED = 4;
