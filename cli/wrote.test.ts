import { describe, expect, it } from 'vitest';
import { Failure } from './failure.ts';
import { wrote } from './wrote.ts';

/** The keys that docs/cli.md promises. */
describe('the wrote command', () => {
  it('reads attempts card by card, in the order given', () => {
    const [sip, rane] = JSON.parse(wrote(['ship=sip', 'rain=rane', '--json']));
    expect(sip).toEqual({
      word: 'ship',
      wrote: 'sip',
      sounds: 'SH IH P',
      cards: [
        {
          id: 'sh=SH',
          letters: 's',
          verdict: 'other-sound',
          heard: false,
          taught: null,
          habit: null,
        },
        { id: 'i=IH', letters: 'i', verdict: 'same', heard: true, taught: null, habit: null },
        { id: 'p=P', letters: 'p', verdict: 'same', heard: true, taught: null, habit: null },
      ],
      added: [],
      sequences: { right: 3, of: 5 },
      wordRight: false,
    });
    expect(rane.cards[1]).toMatchObject({ letters: 'a_e', verdict: 'same-sound', heard: true });
  });

  it('says whether a card was taught, once it knows what was', () => {
    const [{ cards }] = JSON.parse(wrote(['ship=sip', '--taught', 'i,p,s', '--json']));
    expect(cards.map(({ taught }: { taught: boolean }) => taught)).toEqual([false, true, true]);
  });

  it('says in plain words what an attempt shows', () => {
    expect(wrote(['lake=lak'])).toContain('heard every sound; silent e not yet');
    expect(wrote(['ship=sip'])).toContain('sh not heard');
    expect(wrote(['ship='])).toContain('nothing written');
    expect(wrote(['ship=dog'])).toContain('another word: dog');
    expect(wrote(['bed=ded'])).toContain('b turned');
    expect(wrote(['zog=zog'])).toContain('right');
  });

  it('ends with a message that says what to write', () => {
    expect(() => wrote(['ship'])).toThrow(Failure);
    expect(() => wrote(['ship'])).toThrow('ship=sip');
    expect(() => wrote(['sh1p=sip'])).toThrow('sh1p');
  });
});
