import { describe, expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { childId, classId, eventId, groupId, papersId } from '../ids.ts';
import type { EventSpec, LogEvent, PaperAnswer, PapersChange } from '../log/event.ts';
import { answerKey } from '../log/papers-record.ts';
import { replay } from '../log/replay.ts';
import { attemptsOf } from './attempts.ts';
import { parseWords } from './said-words.ts';
import { cardsShown, commonSlips, paperScore } from './spelling-shown.ts';

const { words } = parseWords('ship, rain lake\nship', builtLexicon);

type Told = readonly [child: string, word: number, answer: PaperAnswer] | PapersChange;

const said = (word: string) => parseWords(word, builtLexicon).words[0]!;

/** A class that has begun a pile, with what was then told of it: `child word answer`, or a change. */
function classWith(...told: Told[]) {
  const begun: EventSpec = {
    kind: 'papers-begun',
    body: { papersId: papersId('pile'), groupId: groupId('whole-class'), day: '2026-03-02', words },
  };
  const read = told.map((one): EventSpec => {
    if ('of' in one)
      return { kind: 'papers-changed', body: { papersId: papersId('pile'), change: one } };
    const [child, word, answer] = one;
    return {
      kind: 'papers-read',
      body: { papersId: papersId('pile'), child: childId(child), word, answer },
    };
  });
  const names = [childId('ann'), childId('ben')].map((id): EventSpec => {
    return { kind: 'set', body: { of: 'child', id, field: 'name', value: id } };
  });
  const events = [...names, begun, ...read].map(
    (spec, at): LogEvent => ({
      id: eventId(`e${at}`),
      classId: classId('class'),
      at,
      by: 'desk',
      ...spec,
    }),
  );
  return { events, state: replay(classId('class'), events) };
}

const wrote = (text: string, isWord?: boolean): PaperAnswer => ({
  kind: 'wrote',
  text,
  ...(isWord === undefined ? {} : { isWord }),
});

const attempts = (...told: Told[]) => {
  const pile = classWith(...told).state.papers.get(papersId('pile'))!;
  return attemptsOf(pile, ['ann', 'ben'].map(childId), []);
};

describe('a list of words', () => {
  it('is read once each, with cards; what has none is told', () => {
    expect(words.map(({ word }) => word)).toEqual(['ship', 'rain', 'lake']);
    expect(words[2]?.cards).toEqual(['l=L', 'a_e=EY', 'k=K']);
    expect(parseWords('sh1p', builtLexicon).problems[0]?.message).toContain('sh1p');
  });
});

describe('a pile of papers', () => {
  it('keeps the last answer; one taken back is unread again', () => {
    const { state } = classWith(
      ['ann', 0, wrote('sip')],
      ['ann', 0, wrote('ship')],
      ['ben', 1, wrote('rane')],
      ['ben', 1, { kind: 'unread' }],
    );
    const { answers } = state.papers.get(papersId('pile'))!;
    expect(answers.get(answerKey(childId('ann'), 0))).toMatchObject({ text: 'ship' });
    expect(answers.has(answerKey(childId('ben'), 1))).toBe(false);
  });

  it('a word set right keeps what was written for it, read again, but not which card broke', () => {
    const { state } = classWith(
      ['ann', 0, wrote('sip')],
      ['ben', 0, { kind: 'broke', cards: [1] }],
      { of: 'word', word: 0, said: said('sip') },
    );
    const pile = state.papers.get(papersId('pile'))!;
    expect(pile.words.map(({ word }) => word)).toEqual(['sip', 'rain', 'lake']);
    expect(
      attemptsOf(pile, ['ann', 'ben'].map(childId), []).map(({ read }) => read?.wordRight),
    ).toEqual([true]);
  });

  it('a word taken out leaves the others where they are; one added comes last', () => {
    const { state } = classWith(
      ['ann', 0, wrote('sip')],
      ['ann', 2, wrote('lak')],
      { of: 'word', word: 0, said: null },
      { of: 'word', word: 3, said: said('them') },
      ['ann', 3, wrote('dem')],
      { of: 'word', word: 9, said: said('ship') },
    );
    const pile = state.papers.get(papersId('pile'))!;
    expect(pile.words.map(({ word, slot }) => [word, slot])).toEqual([
      ['rain', 1],
      ['lake', 2],
      ['them', 3],
    ]);
    expect(pile.nextSlot).toBe(4);
    expect(
      attemptsOf(pile, [childId('ann')], []).map(({ said, wrote }) => [said.word, wrote]),
    ).toEqual([
      ['lake', 'lak'],
      ['them', 'dem'],
    ]);
  });

  it('its day can be set later, and taken away', () => {
    const dayOf = (...told: Told[]) => classWith(...told).state.papers.get(papersId('pile'))!.day;
    expect(dayOf({ of: 'day', day: '2026-03-09' })).toBe('2026-03-09');
    expect(dayOf({ of: 'day', day: '2026-03-09' }, { of: 'day', day: null })).toBeNull();
  });

  it('taken out, it is gone; the taking out undone, it is back with all that was read', () => {
    const { events } = classWith(['ann', 0, wrote('sip')]);
    const begun = events.find(({ kind }) => kind === 'papers-begun')!;
    const undo = (id: string, event: string): LogEvent => {
      return {
        id: eventId(id),
        classId: classId('class'),
        at: 99,
        by: 'desk',
        kind: 'undone',
        body: { event },
      };
    };
    expect(replay(classId('class'), [...events, undo('x', begun.id)]).papers.size).toBe(0);
    const back = replay(classId('class'), [...events, undo('x', begun.id), undo('y', 'x')]);
    expect(back.papers.get(papersId('pile'))?.answers.size).toBe(1);
  });

  it('whose words are not the letters of their cards is not believed', () => {
    const body = {
      papersId: 'odd',
      groupId: groupId('whole-class'),
      day: null,
      words: [{ word: 'ship', cards: ['s=S'], breaks: [] }],
    };
    const event = {
      id: eventId('e'),
      classId: classId('class'),
      at: 1,
      by: 'desk',
      kind: 'papers-begun',
      body,
    };
    expect(replay(classId('class'), [event]).papers.size).toBe(0);
  });
});

describe('what papers show', () => {
  it('hearing a sound and knowing its spelling are two figures', () => {
    const shown = cardsShown(attempts(['ann', 1, wrote('rane')], ['ben', 1, wrote('ran', true)]));
    expect(shown.find(({ id }) => id === 'ai=EY')).toEqual({
      id: 'ai=EY',
      hears: { times: 1, of: 2 },
      knows: { times: 0, of: 1 },
    });
  });

  it('of an irregular word it says which part is to be learned by heart', () => {
    const { words } = parseWords('said', builtLexicon);
    const events: LogEvent[] = [
      {
        kind: 'papers-begun',
        body: { papersId: 'pile', groupId: 'whole-class', day: null, words },
      } as const,
      {
        kind: 'papers-read',
        body: { papersId: 'pile', child: 'ann', word: 0, answer: wrote('sed') },
      } as const,
    ].map((spec, at) => ({
      id: eventId(`e${at}`),
      classId: classId('class'),
      at,
      by: 'desk',
      ...spec,
    }));
    const pile = replay(classId('class'), events).papers.get(papersId('pile'))!;
    const [slip] = commonSlips(attemptsOf(pile, [childId('ann')], []));
    expect(slip).toMatchObject({ need: 'spelling', cards: ['ai=EH'], byHeart: ['said'] });
    expect(commonSlips(attempts(['ann', 1, wrote('rane')]))[0]?.byHeart).toEqual([]);
  });

  it('a sound that she says was heard counts as heard, its spelling as not known', () => {
    const shown = cardsShown(attempts(['ann', 0, { kind: 'wrote', text: 'sip', meant: [1] }]));
    expect(shown.find(({ id }) => id === 'sh=SH')).toEqual({
      id: 'sh=SH',
      hears: { times: 1, of: 1 },
      knows: { times: 0, of: 1 },
    });
  });

  it('the slip that most children share comes first; a habit is one slip', () => {
    const [first] = commonSlips(
      attempts(['ann', 0, wrote('sip')], ['ann', 2, wrote('lak')], ['ben', 2, wrote('lak')]),
    );
    expect(first).toMatchObject({
      need: 'spelling',
      about: { habit: 'silent-e' },
      times: 2,
      examples: [{ word: 'lake', wrote: 'lak' }],
    });
    expect(first?.children.map(({ child }) => child)).toEqual(['ann', 'ben'].map(childId));
  });

  it('a blank, another word and a child who was away tell nothing of single sounds', () => {
    const told = attempts(
      ['ann', 0, wrote('')],
      ['ann', 1, wrote('dog', true)],
      ['ben', 0, { kind: 'absent' }],
    );
    expect(cardsShown(told)).toEqual([]);
    expect(paperScore(told).words).toEqual({ times: 0, of: 2 });
  });

  it('scores words right and letter sequences', () => {
    const score = paperScore(attempts(['ann', 0, wrote('ship')], ['ann', 1, wrote('rane')]));
    expect(score).toEqual({ words: { times: 1, of: 2 }, sequences: { times: 7, of: 10 } });
  });
});
