import { expect, it } from 'vitest';
import { isLongByRule } from './regularity.ts';

// What is taught of long vowels (open syllables, VCV, old, most, kind, range): common practice, no source.
it.each([
  // open, at the end, before a plural s, before a vowel
  ['o=OW', '', false, true, 'go'],
  ['o=OW', 's', false, true, 'solos, the second'],
  ['i=AY', 'ant', false, true, 'giant'],
  ['a=EY', 'dybug', true, true, 'la·dybug'],
  ['a=EY', 'mbridge', true, true, 'open by its syllable, whatever follows'],
  // one consonant, or two that begin a syllable, before a vowel letter
  ['a=EY', 'con', false, true, 'bacon'],
  ['a=EY', 'ble', false, true, 'table'],
  ['a=EY', 'ste', false, true, 'paste'],
  ['a=EY', 'the', false, true, 'bathe'],
  ['e=IY', 'qual', false, true, 'equal: qu is one consonant'],
  ['i=AY', 'cle', false, true, 'cycle'],
  ['a=EY', 'mber', false, false, 'chamber'],
  ['a=EY', 'n', false, false, 'a closed syllable'],
  // across gu and qu
  ['a=EY', 'gue', false, true, 'vague'],
  ['o=OW', 'gues', false, true, 'rogues'],
  ['a=EY', 'que', false, true, 'opaque'],
  ['a=EY', 'guest', false, false, 'gu before more letters'],
  // the few pairs
  ['i=AY', 'ld', false, true, 'child'],
  ['i=AY', 'nd', false, true, 'kind'],
  ['i=AY', 'gn', false, true, 'sign'],
  ['i=AY', 'ghs', false, true, 'with gh'],
  ['i=AY', 'nt', false, false, 'pint'],
  ['i=AY', 'mb', false, false, 'climb'],
  ['o=OW', 'ld', false, true, 'old'],
  ['o=OW', 'st', false, true, 'most'],
  ['o=OW', 'lt', false, true, 'bolt'],
  ['o=OW', 'll', false, true, 'roll'],
  ['o=OW', 'lk', false, true, 'folk'],
  ['o=OW', 'mb', false, false, 'comb'],
  ['o=OW', 'nd', false, false, 'not as in kind'],
  ['a=EY', 'nge', false, true, 'range'],
  ['a=EY', 'nging', false, true, 'changing'],
  ['a=EY', 'ngs', false, false, 'ng without e or i'],
  ['u=UW', 'nge', false, false, 'range is for a alone'],
  // i as in piano, and y
  ['i=IY', 'ano', false, true, 'piano'],
  ['i=IY', 'ne', false, false, 'machine'],
  ['i=IY', 'que', false, false, 'unique'],
  ['y=IY', 'land', false, true, 'fairyland'],
] as const)(
  '%s before “%s”, syllable open: %s → %s (%s)',
  (id, right, open, expected, _example) => {
    expect(isLongByRule(id, right, open)).toBe(expected);
  },
);
