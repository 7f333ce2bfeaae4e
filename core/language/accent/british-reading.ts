import type { CardId } from '../card-id.ts';
import { correspondenceById } from '../correspondences.ts';
import type { Phoneme } from '../phonemes.ts';
import type { CardReading, Reading } from '../reading.ts';
import { isRegular } from '../regularity.ts';
import type { LaidCard } from '../syllables.ts';
import type { HereSound } from './here-sound.ts';
import { saidInBritain } from './southern-british.ts';
import { britishChanges } from './southern-british-words.ts';

/**
 * A word by the cards that southern Britain reads it with: *bath* with the a of *father*, *from* with the o of
 * *hot*. England's National Curriculum, English Appendix 1, lists *bath*, *path*, *fast* and their like beside
 * *father* as exception words of Year 2; they are irregular there too. Where our table has no card for what is
 * said, and for all other words, the reading itself.
 */
export function britishReading(reading: Reading): Reading {
  const changes = britishChanges(reading.word);
  if (!changes) return reading;
  const cards = reading.cards.map((card, at): CardReading => {
    const said = changes.get(card.id);
    const isLast = reading.cards.findLastIndex(({ id }) => id === card.id) === at;
    const id = said && isLast ? cardSaying(card.grapheme, said) : null;
    return id === null || id === card.id
      ? card
      : { ...card, id, phonemes: correspondenceById.get(id)?.phonemes ?? [] };
  });
  if (cards.every((card, at) => card === reading.cards[at])) return reading;
  const here = { ...reading, cards: judged(cards, reading), sounds: soundsOf(cards) };
  // A card that is said otherwise where it stands now is none of these: then the word keeps its own.
  return saidInBritain(here).join() === saidInBritain(reading).join() ? here : reading;
}

/** The card of these letters whose sound is this one in southern Britain; null where there is none. */
function cardSaying(grapheme: string, said: readonly HereSound[]): CardId | null {
  const listed = said.map((sound) => (sound === 'OH' ? 'AA' : sound));
  const card = correspondenceById.get(`${grapheme}=${listed.join('+')}`);
  return card?.id ?? null;
}

function soundsOf(cards: readonly CardReading[]): readonly Phoneme[] {
  return cards.flatMap(({ phonemes }) => phonemes);
}

/** The same cards, those that changed judged by the rules. */
function judged(cards: readonly CardReading[], was: Reading): readonly CardReading[] {
  const laid = cards.flatMap(({ id, letters }): readonly LaidCard[] => {
    const card = correspondenceById.get(id);
    return card ? [{ card, letters }] : [];
  });
  if (laid.length < cards.length) return cards;
  const breaks = was.syllables.slice(1).map(({ from }) => from);
  return cards.map((card, at) =>
    card === was.cards[at] ? card : { ...card, regular: isRegular(was.word, laid, at, breaks) },
  );
}
