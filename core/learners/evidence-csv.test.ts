import { describe, expect, it } from 'vitest';
import { atOnce } from '../paced.ts';
import { parseDay } from './day.ts';
import { parseEvidence, TABLE_GROUP } from './evidence-csv.ts';

const readTable = (text: string) => atOnce(parseEvidence(text));

const HEADER = 'date,pupil,cards,sounds,outcome,broke,heard';

describe('a table of evidence', () => {
  it('is read row by row', () => {
    const { observations, problems } = readTable(
      [
        HEADER,
        '2026-03-02,Mina,sh-i-p,SH IH P,right,,',
        '2026-03-03,Mina,m-a-t,M AE T,wrong,2,EH',
        '2026-03-03,Mina,m-a-t,M AE T,wrong,,',
      ].join('\n'),
    );
    expect(problems).toEqual([]);
    expect(observations[1]).toEqual({
      day: parseDay('2026-03-03'),
      child: 'Mina',
      groups: [TABLE_GROUP],
      task: 'read',
      cards: ['m=M', 'a=AE', 't=T'],
      right: false,
      broke: 2,
      heard: 'EH',
    });
    expect(observations.map(({ right, broke }) => [right, broke])).toEqual([
      [true, null],
      [false, 2],
      [false, null],
    ]);
  });

  it('may have its columns in another order, semicolons, capitals, and no last columns', () => {
    const { observations } = readTable(
      'Pupil;Date;Outcome;Cards\r\n"O’Neil, Jo";2026-03-02;Right;sh-i-p\r\n',
    );
    expect(observations[0]).toMatchObject({ child: 'O’Neil, Jo', right: true });
  });

  it.each([
    ['2026-02-30,Mina,m,M,right,,', 'no-date'],
    ['2026-03-02,,m,M,right,,', 'no-pupil'],
    ['2026-03-02,Mina,,M,right,,', 'no-cards'],
    ['2026-03-02,Mina,zq,,right,,', 'unknown-card'],
    ['2026-03-02,Mina,m,S,right,,', 'other-sounds'],
    ['2026-03-02,Mina,m,M,,,', 'no-outcome'],
    ['2026-03-02,Mina,m,M,wrong,2,', 'no-broke'],
    ['2026-03-02,Mina,m,M,wrong,x,', 'no-broke'],
    ['2026-03-02,Mina,m,M,right,1,', 'no-broke'],
    ['2026-03-02,"Mina,m,M,right,,', 'open-quote'],
  ])('says on which line what is wrong, and takes the others: %s', (row, code) => {
    const good = '2026-03-02,Mina,m,M,right,,';
    const { observations, problems } = readTable([HEADER, good, '', row, good].join('\n'));
    expect(observations).toHaveLength(2);
    expect(problems).toEqual([{ line: 4, code, message: expect.stringMatching(/\S/) }]);
  });

  it('must name its columns', () => {
    const { observations, problems } = readTable('2026-03-02,Mina,m,M,right,,');
    expect(observations).toEqual([]);
    expect(problems).toMatchObject([{ line: 1, code: 'no-column' }]);
    expect(problems[0]?.message).toContain('date, pupil, cards, outcome');
    expect(readTable('').problems).toMatchObject([{ code: 'no-column' }]);
  });
});
