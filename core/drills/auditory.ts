import type { CardId } from '../language/card-id.ts';
import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { partsOf } from '../language/laid-syllable.ts';
import { type Random, shuffled } from '../random.ts';
import type { AuditorySound } from './drill.ts';
import type { Practice } from './drill-spec.ts';

/** About how many of the sounds are vowels. */
const VOWEL_SHARE = 0.5;

/**
 * The sounds of the auditory drill: those of the `first` cards, then those of the
 * `next` ones and a random choice of the others, vowels and consonants in balance. Each comes
 * with every taught spelling, commonest first by `commonness` (a count of words,
 * by card id).
 */
export function chooseAuditory(
  taught: ReadonlySet<CardId>,
  { first, next }: Practice,
  count: number,
  commonness: (id: string) => number,
  random: Random,
): readonly AuditorySound[] {
  const sounds = soundsTaught(taught, commonness);
  const keyOf = new Map(
    sounds.flatMap((sound) => sound.spellings.map((id) => [id, sound] as const)),
  );
  const chosen = new Set<AuditorySound>();
  const choose = (id: CardId): void => {
    const card = taught.has(id) ? correspondenceById.get(id) : undefined;
    for (const part of card ? partsOf(card) : []) {
      const sound = keyOf.get(part.id);
      if (sound && chosen.size < count) chosen.add(sound);
    }
  };
  first.forEach(choose);
  const fresh = [...chosen];
  next.forEach(choose);
  const wished = [...chosen].slice(fresh.length);
  const others = shuffled(
    sounds.filter((sound) => !chosen.has(sound)),
    random,
  );
  const room = count - chosen.size;
  const chosenVowels = [...chosen].filter(isVowelSound).length;
  const vowels = others.filter(isVowelSound);
  const consonants = others.filter((sound) => !isVowelSound(sound));
  const wanted = Math.max(0, Math.round(count * VOWEL_SHARE) - chosenVowels);
  const taken = Math.min(vowels.length, Math.max(Math.min(wanted, room), room - consonants.length));
  const rest = [...wished, ...vowels.slice(0, taken), ...consonants.slice(0, room - taken)];
  return [...fresh, ...shuffled(rest, random)];
}

/**
 * Every sound that has a taught spelling, with all of them, one id per
 * grapheme. The parts of cluster cards count; silent letters and the vowel that
 * fades have no sound to ask for.
 */
export function soundsTaught(
  taught: ReadonlySet<CardId>,
  commonness: (id: string) => number,
): readonly AuditorySound[] {
  const bySounds = new Map<string, Correspondence[]>();
  const known = new Set<string>();
  for (const id of taught) {
    const card = correspondenceById.get(id);
    for (const part of card ? partsOf(card) : []) {
      if (known.has(part.id) || !isAsked(part)) continue;
      known.add(part.id);
      const key = part.phonemes.join(' ');
      const group = bySounds.get(key);
      if (group) group.push(part);
      else bySounds.set(key, [part]);
    }
  }
  return [...bySounds.values()].map((cards) => ({
    phonemes: (cards[0] as Correspondence).phonemes,
    spellings: cards
      .map(({ id }) => id)
      .sort((one, other) => commonness(other) - commonness(one) || (one < other ? -1 : 1)),
  }));
}

function isAsked({ phonemes }: Correspondence): boolean {
  return phonemes.length > 0 && phonemes[0] !== 'AX' && phonemes[1] !== 'AX';
}

function isVowelSound({ spellings }: AuditorySound): boolean {
  const card = correspondenceById.get(spellings[0] as CardId);
  return card !== undefined && isVowelCard(card);
}
