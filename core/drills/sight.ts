import { type CardId, graphemeOf, isSightId, makeSightId } from '../language/card-id.ts';
import { type Random, shuffled } from '../random.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { AuditorySound } from './drill.ts';
import type { Practice } from './drill-spec.ts';

/**
 * The words known by sight of a part: the `first` ones in the order given, then the `next` ones, most
 * wanted first, and a random choice of the others. At most `count` ids; fewer when fewer were taught.
 */
export function chooseSight(
  words: ReadonlySet<string>,
  { first, next }: Practice,
  count: number,
  random: Random,
): readonly CardId[] {
  const taught = new Set([...words].map(makeSightId));
  const wished = [...first, ...next].filter((id) => isSightId(id) && taught.has(id));
  return [...new Set([...wished, ...shuffled([...taught], random)])].slice(0, count);
}

/**
 * A word known by sight as something to say and have written: its only spelling is the word itself. Its
 * sounds are those of the ordinary reading; none of a word that the list has not.
 */
export function sightSaid(id: CardId, lexicon: Lexicon): AuditorySound {
  const index = lexicon.indexOf(graphemeOf(id));
  const phonemes = index < 0 ? [] : (lexicon.readings(index)[0]?.sounds ?? []);
  return { phonemes, spellings: [id] };
}

/** The word that is said where something to write is a word known by sight; null for a sound. */
export function sightIn({ spellings }: Pick<AuditorySound, 'spellings'>): CardId | null {
  const [id] = spellings;
  return id !== undefined && isSightId(id) ? id : null;
}

/** Equal for what is asked the same way: a sound by its phonemes, a word by its spelling (*to* is not *two*). */
export function soundKey(sound: AuditorySound): string {
  return sightIn(sound) ?? sound.phonemes.join(' ');
}
