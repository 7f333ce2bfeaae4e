/**
 * The word list as a class hears and spells it: which words sound alike, and with southern British how a
 * word is spelled, and by which cards it is read. American as it is listed gives the list itself. What is
 * stored, the cards and the sounds of a word, stays; a word that is spelled otherwise in Britain is cut anew,
 * from the same sounds, and *bath* is read with the a of *father*.
 */
import { type Accent, isBritish } from '../language/accent/accent.ts';
import { alsoHeard } from '../language/accent/also-heard.ts';
import { britishReading } from '../language/accent/british-reading.ts';
import { britishSpelling } from '../language/accent/british-spelling.ts';
import { britishChanges } from '../language/accent/southern-british-words.ts';
import { align } from '../language/align.ts';
import { isVowelPhoneme, type Phoneme } from '../language/phonemes.ts';
import { type Morphemes, ONE_PART, type Pronunciation } from '../language/pronunciation.ts';
import type { Reading } from '../language/reading.ts';
import type { Lexicon } from './lexicon.ts';

/** The word list in a class with this accent; made once for each, so that what is known of it is kept. */
export function lexiconHere(lexicon: Lexicon, accent: Accent): Lexicon {
  if (accent.length === 0) return lexicon;
  const key = accent.join(' ');
  const known = made.get(lexicon)?.get(key);
  if (known) return known;
  const here = makeHere(lexicon, accent);
  made.set(lexicon, new Map([...(made.get(lexicon) ?? []), [key, here]]));
  return here;
}

const made = new WeakMap<Lexicon, ReadonlyMap<string, Lexicon>>();

function makeHere(lexicon: Lexicon, accent: Accent): Lexicon {
  const spelled = isBritish(accent) ? readInBritain(spelledInBritain(lexicon)) : lexicon;
  return {
    ...spelled,
    saidAs(sounds) {
      const ways = alsoHeard(sounds.split(' ') as Phoneme[], accent);
      const [own] = ways as [readonly Phoneme[]];
      if (ways.length === 1) return spelled.saidAs(own.join(' '));
      const found = new Set(ways.flatMap((way) => spelled.saidAs(way.join(' '))));
      return [...found].sort((one, other) => one - other);
    },
  };
}

/** The list with British spellings; of words that are spelled alike on both sides nothing changes. */
function spelledInBritain(lexicon: Lexicon): Lexicon {
  const british = new Map<number, string>();
  const byWord = new Map<string, number>();
  for (let index = 0; index < lexicon.size; index++) {
    const word = britishSpelling(lexicon.word(index));
    if (word === null || lexicon.indexOf(word) >= 0) continue;
    british.set(index, word);
    byWord.set(word, index);
  }
  const made = new Map<number, readonly Reading[]>();
  const readings = (index: number): readonly Reading[] => {
    const word = british.get(index);
    if (word === undefined) return lexicon.readings(index);
    let here = made.get(index);
    if (!here) {
      here = lexicon
        .readings(index)
        .map((reading) => align(word, spoken(reading.sounds), partsOf(word, reading)));
      made.set(index, here);
    }
    return here;
  };
  const ordinary = (index: number): Reading => readings(index)[0] as Reading;
  return {
    ...lexicon,
    word: (index) => british.get(index) ?? lexicon.word(index),
    indexOf(word) {
      const here = byWord.get(word);
      if (here !== undefined) return here;
      const index = lexicon.indexOf(word);
      return british.has(index) ? -1 : index;
    },
    readings,
    cardIds: (index) =>
      british.has(index) ? ordinary(index).cards.map(({ id }) => id) : lexicon.cardIds(index),
    isRegular: (index) =>
      british.has(index)
        ? ordinary(index).cards.every(({ regular }) => regular)
        : lexicon.isRegular(index),
    syllableCount: (index) =>
      british.has(index) ? ordinary(index).syllables.length : lexicon.syllableCount(index),
  };
}

/** The list with the cards by which southern Britain reads a word; a word is found by its American sounds too. */
function readInBritain(lexicon: Lexicon): Lexicon {
  const british = new Map<number, readonly Reading[]>();
  const bySounds = new Map<string, number[]>();
  for (let index = 0; index < lexicon.size; index++) {
    if (!britishChanges(lexicon.word(index))) continue;
    const listed = lexicon.readings(index);
    const here = listed.map(britishReading);
    if (here.every((reading, at) => reading === listed[at])) continue;
    british.set(index, here);
    for (const { sounds } of here) {
      const key = sounds.join(' ');
      bySounds.set(key, [...(bySounds.get(key) ?? []), index]);
    }
  }
  return {
    ...lexicon,
    readings: (index) => british.get(index) ?? lexicon.readings(index),
    cardIds: (index) =>
      british.get(index)?.[0]?.cards.map(({ id }) => id) ?? lexicon.cardIds(index),
    isRegular: (index) =>
      british.get(index)?.[0]?.cards.every(({ regular }) => regular) ?? lexicon.isRegular(index),
    saidAs(sounds) {
      const here = bySounds.get(sounds);
      const listed = lexicon.saidAs(sounds);
      return here ? [...new Set([...listed, ...here])].sort((one, two) => one - two) : listed;
    },
  };
}

/** Where an ending begins, as the American cards have it. */
function partsOf(word: string, { cards }: Reading): Morphemes {
  const last = cards.at(-1)?.grapheme ?? '';
  const ending = /^(s|es|ed)$/.test(last) ? last : last === 'ng' ? 'ing' : '';
  if (ending === '' || !word.endsWith(ending)) return ONE_PART;
  const suffixAt = word.length - ending.length;
  return { breaks: [suffixAt], suffixAt };
}

/** Sounds with the stress that tells the aligner which vowels fade: the schwa and what follows it. */
function spoken(sounds: readonly Phoneme[]): Pronunciation {
  const stress = sounds.map((sound) => {
    if (!isVowelPhoneme(sound)) return -1 as const;
    return sound === 'AX' || sound === 'ER' ? (0 as const) : (1 as const);
  });
  return { sounds, stress };
}
