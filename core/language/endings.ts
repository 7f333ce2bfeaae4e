import type { RowSpec } from './row.ts';

/**
 * Cards that only end a word or a base: consonant-le, -ed and -es, and the
 * consonant whose card carries a final e (dan·ce, hou·se, ha·ve). The aligner
 * allows a consonant-e card only at the end of a base, and ed and es only where
 * an ending begins; ge also keeps its sound before a and o (*pi·geon*).
 */
export const ENDING_ROWS: readonly RowSpec[] = [
  ['le', 'AX L', 'consonant-le', 1, '', 'table', { before: /[^aeiouyrlwmnh]$|[^aeiou]h$/ }],
  ['l', 'AX L', 'consonant-le', 2, '', null, { after: /^ed$/, only: true }],
  ['ed', 'T', 'ending', 1, '', 'popped'],
  ['ed', 'D', 'ending', 1, '', 'spilled'],
  ['ed', 'IH D', 'ending', 1, '', 'melted', { also: ['AX D'] }],
  ['es', 'IH Z', 'ending', 1, '', 'boxes', { also: ['AX Z'] }],
  ['ce', 'S', 'consonant-e', 2, 'e', 'fence'],
  ['ge', 'JH', 'consonant-e', 2, 'e', 'orange', { inside: /^[ao]/ }],
  ['se', 'S', 'consonant-e', 2, 'e', 'mouse'],
  ['se', 'Z', 'consonant-e', 2, 'e', 'cheese'],
  ['ve', 'V', 'consonant-e', 1, 'e', 'glove'],
  ['ze', 'Z', 'consonant-e', 2, 'e', 'sneeze', { before: /[^y]$/, only: true }],
  ['the', 'DH', 'consonant-e', 2, '', 'breathe'],
  ['ge', 'ZH', 'consonant-e', 3, '', 'garage'],
  ['be', 'B', 'consonant-e', 4, '', null],
  ['de', 'D', 'consonant-e', 4, '', null],
  ['fe', 'F', 'consonant-e', 4, '', null],
  ['he', '', 'consonant-e', 4, '', null],
  ['ke', 'K', 'consonant-e', 4, '', null],
  ['le', 'L', 'consonant-e', 3, '', null],
  ['me', 'M', 'consonant-e', 3, '', null],
  ['ne', 'N', 'consonant-e', 3, '', 'medicine'],
  ['pe', 'P', 'consonant-e', 4, '', null],
  ['te', 'T', 'consonant-e', 3, '', 'chocolate'],
  ['che', 'SH', 'consonant-e', 3, '', 'mustache'],
  ['che', 'K', 'consonant-e', 4, '', null],
  ['que', 'K', 'consonant-e', 3, '', 'antique'],
  ['gue', 'G', 'consonant-e', 3, '', 'league'],
  ['ngue', 'NG', 'consonant-e', 3, '', 'tongue'],
  ['ffe', 'F', 'consonant-e', 3, '', 'giraffe'],
  ['lle', 'L', 'consonant-e', 3, '', 'gazelle'],
  ['mme', 'M', 'consonant-e', 4, '', null],
  ['nne', 'N', 'consonant-e', 4, '', null],
  ['sse', 'S', 'consonant-e', 4, '', null],
  ['tte', 'T', 'consonant-e', 3, '', 'palette'],
  ['ppe', 'P', 'consonant-e', 4, '', null],
];
