import type { CardId } from './card-id.ts';
import { CLUSTER_ROWS } from './clusters.ts';
import { CONSONANT_ROWS } from './consonants.ts';
import type { Correspondence } from './correspondence.ts';
import { ENDING_ROWS } from './endings.ts';
import { R_VOWEL_ROWS } from './r-vowels.ts';
import { makeRow, type TableRow } from './row.ts';
import { VOWEL_ROWS } from './vowels.ts';

/** Rows that the aligner may use; their order is part of the word-list format. */
export const ROWS: readonly TableRow[] = uniqueById(
  [...CONSONANT_ROWS, ...ENDING_ROWS, ...VOWEL_ROWS, ...R_VOWEL_ROWS].map(makeRow),
);

/** Rows by id, with their contexts. */
export const rowById: ReadonlyMap<CardId, TableRow> = new Map(ROWS.map((row) => [row.id, row]));

/** Cards that carry several correspondences: clusters and welded endings. */
export const COMPOUND_CARDS: readonly TableRow[] = CLUSTER_ROWS.map(makeRow);

/** Every card there is. */
export const CORRESPONDENCES: readonly Correspondence[] = [...ROWS, ...COMPOUND_CARDS];

/** Cards by id: `sh=SH`, `a_e=EY`, `st=S+T`. */
export const correspondenceById: ReadonlyMap<CardId, Correspondence> = new Map(
  CORRESPONDENCES.map((card) => [card.id, card]),
);

/** The sounds of each grapheme in the order they are taught; a plain grapheme means the first. */
export const correspondencesByGrapheme: ReadonlyMap<string, readonly Correspondence[]> =
  groupByGrapheme();

function groupByGrapheme(): Map<string, Correspondence[]> {
  const groups = new Map<string, Correspondence[]>();
  const byTier = [...CORRESPONDENCES].sort((left, right) => left.tier - right.tier);
  for (const card of byTier) {
    const group = groups.get(card.grapheme);
    if (group) group.push(card);
    else groups.set(card.grapheme, [card]);
  }
  return groups;
}

function uniqueById(rows: readonly TableRow[]): TableRow[] {
  const byId = new Map<CardId, TableRow>();
  for (const row of rows) if (!byId.has(row.id)) byId.set(row.id, row);
  return [...byId.values()];
}
