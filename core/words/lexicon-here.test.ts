import { describe, expect, it } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import type { Accent } from '../language/accent/accent.ts';
import { saidHere } from '../language/accent/said-here.ts';
import type { Reading } from '../language/reading.ts';
import { lexiconHere } from './lexicon-here.ts';
import { SCREEN_DATA } from './screen-data.ts';
import { screenHere } from './screen-here.ts';
import { createWordScreen } from './word-screen.ts';

const saidAs = (sounds: string, accent: Accent): readonly string[] => {
  const here = lexiconHere(lexicon, accent);
  return here.saidAs(sounds).map((index) => here.word(index));
};

describe('the word list of a class', () => {
  it('is the list itself in American', () => {
    expect(lexiconHere(lexicon, [])).toBe(lexicon);
  });

  it('has as one what is one there', () => {
    expect(saidAs('P EH N', ['pin-pen'])).toEqual(['pen', 'pin']);
    expect(saidAs('P EH N', ['th-fronted'])).toEqual(['pen']);
    expect(saidAs('S AO S', ['r-dropped'])).toEqual(expect.arrayContaining(['source', 'sauce']));
    expect(saidAs('K AO T', ['southern-british'])).toEqual(
      expect.arrayContaining(['court', 'caught']),
    );
  });

  it('finds at least what the list finds, whatever the accent', () => {
    const here = lexiconHere(lexicon, ['r-dropped', 'pin-pen', 'th-fronted']);
    for (let index = 0; index < lexicon.size; index += 97) {
      const sounds = lexicon.readings(index)[0]?.sounds.join(' ') ?? '';
      expect(here.saidAs(sounds)).toEqual(expect.arrayContaining([...lexicon.saidAs(sounds)]));
    }
  });

  it('of southern Britain is spelled as there, from cards that make the word', () => {
    const here = lexiconHere(lexicon, ['southern-british']);
    expect(here.indexOf('colour')).toBe(lexicon.indexOf('color'));
    expect(here.indexOf('color')).toBe(-1);
    expect(here.cardIds(here.indexOf('centre'))).toEqual(['c=S', 'e=EH', 'n=N', 't=T', 're=ER']);
    let changed = 0;
    for (let index = 0; index < here.size; index++) {
      if (here.word(index) === lexicon.word(index)) continue;
      changed++;
      for (const reading of here.readings(index)) {
        expect(reading.word).toBe(here.word(index));
        const lengths = lexicon.readings(index).map(({ sounds }) => sounds.length);
        expect(lengths, here.word(index)).toContain(reading.sounds.length);
      }
    }
    expect(changed).toBeGreaterThan(500);
  });
});

describe('cards of southern Britain', () => {
  const here = lexiconHere(lexicon, ['southern-british']);
  const cards = (word: string) =>
    here
      .readings(here.indexOf(word))[0]
      ?.cards.map(({ id, regular }) => `${id}${regular ? '' : '!'}`);

  // National Curriculum in England, English Appendix 1, Year 2: exception words whose a is that of father.
  it.each(['after', 'fast', 'last', 'past', 'class', 'grass', 'pass', 'plant', 'path', 'bath'])(
    '%s has the a of father, and is an exception word',
    (word) => {
      expect(cards(word)).toContain('a=AA!');
      expect(here.isRegular(here.indexOf(word))).toBe(false);
    },
  );

  it('make regular what is regular there', () => {
    expect(cards('from')).toEqual(['f=F', 'r=R', 'o=AA', 'm=M']);
    expect(cards('been')).toEqual(['b=B', 'ee=IY', 'n=N']);
    expect(cards('cat')).toEqual(['c=K', 'a=AE', 't=T']);
  });

  it('say what the list’s cards said there, and are found by either sounds', () => {
    for (let index = 0; index < here.size; index++) {
      const listed = lexicon.readings(index);
      if (here.word(index) !== lexicon.word(index) || here.readings(index) === listed) continue;
      here.readings(index).forEach((reading, at) => {
        const said = (one: Reading) => saidHere(one, ['southern-british']).join(' ');
        expect(said(reading), reading.word).toBe(said(listed[at] as Reading));
      });
    }
    for (const sounds of ['B AE TH', 'B AA TH']) {
      expect(here.saidAs(sounds).map(here.word)).toContain('bath');
    }
  });
});

describe('the word screen of a class', () => {
  const screen = createWordScreen(SCREEN_DATA);
  const verdict = (word: string, sounds: string, accent: Accent) =>
    screenHere(screen, lexicon, accent).judge(word, sounds.split(' ') as never).verdict;

  it('hides what is heard there as a word for nobody, and asks where it is a word', () => {
    expect(verdict('pawn', 'P AO N', [])).toBe('clear');
    expect(verdict('pawn', 'P AO N', ['r-dropped'])).toBe('ask');
    expect(verdict('pawn', 'P AO N', ['southern-british'])).toBe('ask');
    expect(verdict('paun', 'P AO N', ['r-dropped'])).toBe('stop');
  });

  it('leaves real words that only come near', () => {
    const harmless = ['fork', 'full', 'court', 'caught', 'deaf', 'bent', 'keel', 'sword'];
    for (const word of harmless) {
      const sounds = lexicon.readings(lexicon.indexOf(word))[0]?.sounds.join(' ') ?? '';
      for (const habit of ['r-dropped', 'pin-pen', 'pull-pool', 'southern-british'] as const) {
        expect(verdict(word, sounds, [habit]), word).toBe(verdict(word, sounds, []));
      }
    }
  });
});
