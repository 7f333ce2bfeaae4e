import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { screenKeys } from '../../lexicon/screen/keys.ts';
import { parseHarmlessList, parseScreenList } from '../../lexicon/screen/list.ts';
import { PHONEMES, type Phoneme, parseSounds } from '../language/phonemes.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { encodeScreen } from './screen-format.ts';
import { createWordScreen } from './word-screen.ts';

const screen = createWordScreen(SCREEN_DATA);
const read = (name: string) =>
  readFileSync(new URL(`../../lexicon/screen/${name}`, import.meta.url), 'utf8');
const rows = parseScreenList(read('list.tsv'));
const harmless = parseHarmlessList(read('harmless.tsv'));

function verdict(word: string, text: string): string {
  return screen.judge(word, parseSounds(text) ?? []).verdict;
}

describe('words fit for class stay', () => {
  test.each([
    ['duck', 'D AH K'],
    ['shift', 'SH IH F T'],
    ['ship', 'SH IH P'],
    ['sheet', 'SH IY T'],
    ['fit', 'F IH T'],
    ['fork', 'F AO R K'],
    ['punk', 'P AH NG K'],
    ['sit', 'S IH T'],
    ['tuck', 'T AH K'],
    ['beach', 'B IY CH'],
    ['coke', 'K OW K'],
    ['dock', 'D AA K'],
    ['cut', 'K AH T'],
    ['but', 'B AH T'],
    ['pink', 'P IH NG K'],
    ['kick', 'K IH K'],
    ['nick', 'N IH K'],
    ['shed', 'SH EH D'],
    ['come', 'K AH M'],
    ['class', 'K L AE S'],
    ['grass', 'G R AE S'],
    ['pass', 'P AE S'],
    ['assess', 'AX S EH S'],
    ['peacock', 'P IY K AA K'],
    ['cockpit', 'K AA K P IH T'],
    ['title', 'T AY T AX L'],
    ['muffin', 'M AH F AX N'],
    ['wit', 'W IH T'],
    ['tick', 'T IH K'],
    ['girls', 'G ER L Z'],
    ['black', 'B L AE K'],
    ['church', 'CH ER CH'],
    ['hers', 'HH ER Z'],
  ])('%s', (word, sounds) => {
    expect(verdict(word, sounds)).toBe('clear');
  });
});

describe('mild words are asked about', () => {
  test.each([
    ['kill', 'K IH L'],
    ['gun', 'G AH N'],
    ['fat', 'F AE T'],
    ['hell', 'HH EH L'],
    ['kiss', 'K IH S'],
    ['wine', 'W AY N'],
    ['kil', 'K IH L'],
    ['guns', 'G AH N Z'],
    ['shooting', 'SH UW T IH NG'],
  ])('%s', (word, sounds) => {
    expect(verdict(word, sounds)).toBe('ask');
  });
});

describe('what stops a word (rows are named by their place in the reviewed list)', () => {
  const stops = rows.filter(({ severity }) => severity !== 'ask');
  const grave = rows.filter(({ scope, sounds }) => scope === 'edge' && sounds.length > 0);
  const say = (sounds: readonly Phoneme[], ...more: readonly Phoneme[]) =>
    screen.judge('', [...sounds, ...more]).verdict;

  test('its spelling, whatever the cards say', () => {
    for (const [place, { spelling }] of stops.entries()) {
      expect([place, screen.judge(spelling, ['B', 'IH', 'M']).verdict]).toEqual([place, 'stop']);
      expect([place, screen.judge(spelling.toUpperCase(), []).verdict]).toEqual([place, 'stop']);
    }
  });

  test('its sounds, however it is spelled', () => {
    for (const [place, { sounds }] of stops.entries()) {
      for (const said of sounds) expect([place, say(said)]).toEqual([place, 'stop']);
    }
  });

  test('an ending behind its sounds', () => {
    for (const [place, { sounds, scope }] of stops.entries()) {
      if (scope === 'exact') continue;
      for (const said of sounds) {
        for (const ending of [['ER'], ['IH', 'NG'], ['S'], ['ER', 'Z']] as const) {
          expect([place, ending, say(said, ...ending)]).toEqual([place, ending, 'stop']);
        }
      }
    }
  });

  test('a grave syllable before or behind a harmless one', () => {
    for (const [place, { sounds }] of grave.entries()) {
      for (const said of sounds) {
        if (said.length > 5) continue;
        const before = screen.judge('', [...said, 'B', 'AE', 'P']).verdict;
        // n would become /ng/ before g and swallow it.
        const last = said[0] === 'G' ? 'P' : 'N';
        const behind = screen.judge('', ['M', 'AA', last, ...said]).verdict;
        expect([place, before, behind]).toEqual([place, 'stop', 'stop']);
      }
    }
  });

  test('a reason in general words, and never the word itself', () => {
    for (const { spelling, sounds } of stops) {
      for (const { reason } of [
        screen.judge(spelling, []),
        screen.judge('', sounds[0] ?? ['B', 'IH', 'M']),
      ]) {
        if (reason) expect(` ${reason} `).not.toContain(` ${spelling} `);
      }
    }
  });
});

describe('the screen as data', () => {
  test('what ships is what the reviewed lists make', () => {
    expect(SCREEN_DATA).toEqual(encodeScreen(screenKeys(rows, harmless)));
  });

  test('it holds no listed word in plain text and less than 40 KB', () => {
    const text = SCREEN_DATA.map(([, hashes]) => hashes).join(' ');
    expect(rows.filter(({ spelling }) => text.includes(spelling))).toEqual([]);
    const file = readFileSync(new URL('./screen-data.ts', import.meta.url), 'utf8');
    expect(file.length).toBeLessThan(40_000);
  });
});

test('any letters and sounds get a verdict, with a reason unless it is clear', () => {
  const sounds = fc.array(fc.constantFrom(...PHONEMES), { maxLength: 90 });
  fc.assert(
    fc.property(fc.string({ maxLength: 90 }), sounds, (word, said) => {
      const first = screen.judge(word, said);
      expect(first.reason === null).toBe(first.verdict === 'clear');
      expect(screen.judge(word, said)).toEqual(first);
    }),
  );
});
