import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { Failure } from './failure.ts';
import { mastery } from './mastery.ts';

const folder = mkdtempSync(join(tmpdir(), 'sweepline-mastery-'));
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => vi.restoreAllMocks());

const HEADER = 'date,pupil,cards,sounds,outcome,broke,heard';

function fileOf(...rows: readonly string[]): string {
  const path = join(folder, 'readings.csv');
  writeFileSync(path, [HEADER, ...rows, ''].join('\n'));
  return path;
}

/** What goes to standard error, kept away from the test's own. */
function listen(): string[] {
  const said: string[] = [];
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.push(String(text));
    return true;
  });
  return said;
}

const days = Array.from({ length: 20 }, (_, n) => `2026-03-${String(n + 1).padStart(2, '0')}`);
const wellRead = days.map((day) => `${day},Mina,sh-i-p,SH IH P,right,,`);
const badlyRead = days.map((day) => `${day},Tariq,sh-e-p,SH EH P,wrong,2,IH`);

describe('mastery', () => {
  it('says for each pupil and card what the promised keys hold', () => {
    const file = fileOf(...wellRead, ...badlyRead);
    const rows = JSON.parse(mastery(['--evidence', file, '--now', '2026-03-21', '--json']));
    expect(rows.map(({ pupil, id }: { pupil: string; id: string }) => `${pupil} ${id}`)).toEqual([
      'Mina i=IH',
      'Mina p=P',
      'Mina sh=SH',
      'Tariq e=EH',
      'Tariq p=P',
      'Tariq sh=SH',
    ]);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual([
        'pupil',
        'id',
        'p',
        'low',
        'high',
        'n',
        'last',
        'due',
        'word',
        'right',
        'missed',
        'lastThree',
        'dueBecause',
      ]);
      expect(row.low <= row.p && row.p <= row.high).toBe(true);
    }
    expect(rows[0]).toMatchObject({ n: 20, last: '2026-03-20', word: 'secure' });
    expect(rows[0].due > '2026-03-21').toBe(true);
    expect(rows[3]).toMatchObject({ n: 20, word: 'shaky', due: '2026-03-23' });
    expect(rows[4]).toMatchObject({ n: 0, word: 'not yet seen' });
    expect(rows[5].word).toBe('secure');
  });

  it('takes thresholds of her own', () => {
    const file = fileOf(...wellRead);
    const now = ['--evidence', file, '--now', '2026-03-21', '--json'];
    const [strict] = JSON.parse(mastery([...now, '--secure', '1']));
    expect(strict.word).toBe('growing');
  });

  it('leaves out what is later than the day that is asked for, and says so', () => {
    const said = listen();
    const file = fileOf(...wellRead);
    const rows = JSON.parse(mastery(['--evidence', file, '--now', '2026-03-05', '--json']));
    expect(rows[0].n).toBe(5);
    expect(said.join('')).toContain('15 of the rows');
  });

  it('takes the good rows and names the lines of the others on standard error', () => {
    const said = listen();
    const file = fileOf(
      '2026-03-02,Mina,sh-i-p,SH IH P,right,,',
      '2026-03-02,Mina,sh-i-p,SH IH P,perhaps,,',
      '2026-03-02,Mina,zq-i-p,,right,,',
    );
    const rows = JSON.parse(mastery(['--evidence', file, '--now', '2026-03-03', '--json']));
    expect(rows).toHaveLength(3);
    expect(said.join('')).toMatch(/Line 3: .*perhaps.*\nLine 4: .*zq/);
  });

  it('knows places, habits and confusions too', () => {
    const stop = '2026-03-20,Tariq,s-t-o-p,S T AA P,wrong,2,';
    const file = fileOf(...badlyRead, stop, '2026-03-20,Tariq,m-a-t,M AE T,right,,');
    const now = ['--evidence', file, '--now', '2026-03-21', '--json'];
    const places = JSON.parse(mastery([...now, '--by', 'place']));
    expect(places.map(({ id }: { id: string }) => id)).toEqual(['beginning', 'middle', 'ending']);
    expect(places[1].p).toBeLessThan(places[0].p);
    const habits = JSON.parse(mastery([...now, '--by', 'habit']));
    const clusters = habits.find(({ id }: { id: string }) => id === 's-clusters');
    expect(clusters.n).toBeGreaterThan(0);
    expect(JSON.parse(mastery([...now, '--confusions']))).toEqual([
      { pupil: 'Tariq', id: 'e=EH', heard: 'IH', count: 20 },
    ]);
  });

  it('prints lines for people, with what the figures are not', () => {
    const text = mastery(['--evidence', fileOf(...wellRead), '--now', '2026-03-21']);
    expect(text).toMatch(
      /Mina {2}sh=SH {2}right 20 of 20 {2}secure, about \d+% \(\d+%–\d+%\) {2}back by 2026-/,
    );
    expect(text).toContain('not a diagnosis');
  });

  it('brings nothing back on days without school, and says why then', () => {
    const args = ['--evidence', fileOf(...badlyRead, ...wellRead), '--now', '2026-03-21'];
    const dueOf = (...off: string[]) =>
      JSON.parse(mastery([...args, ...off, '--json'])).find(
        ({ id }: { id: string }) => id === 'e=EH',
      );
    expect(dueOf()).toMatchObject({ due: '2026-03-23', dueBecause: 'weak' });
    expect(dueOf('--off', '2026-03-23..2026-03-27,2026-03-30').due).toBe('2026-03-31');
    expect(mastery(args)).toContain('back by 2026-03-23: it is not yet sure');
  });

  it('says where only mistakes are marked that levels cannot be known', () => {
    const text = mastery(['--evidence', fileOf(...badlyRead), '--now', '2026-03-21']);
    expect(text).toContain('Only mistakes are marked here.');
    expect(mastery(['--evidence', fileOf(...wellRead), '--now', '2026-03-21'])).not.toContain(
      'Only',
    );
  });

  it.each([
    ['no file', ['--now', '2026-03-02'], '--evidence'],
    ['no day', ['--evidence', 'x.csv'], '--now'],
    ['no such day', ['--evidence', 'x.csv', '--now', 'today'], '2026-03-02'],
    ['a file that is not there', ['--evidence', 'none.csv', '--now', '2026-03-02'], 'none.csv'],
    ['no days off', ['--evidence', 'x.csv', '--now', '2026-03-02', '--off', 'May'], 'x.csv'],
    ['a stray word', ['--now', '2026-03-02', 'Mina'], 'Mina'],
  ])('tells what to do: %s', (_, args, hint) => {
    expect(() => mastery(args)).toThrow(Failure);
    expect(() => mastery(args)).toThrow(hint);
  });

  it('tells which columns it needs, and which breakdowns it has', () => {
    const path = join(folder, 'bare.csv');
    writeFileSync(path, 'name,word\nMina,ship\n');
    expect(() => mastery(['--evidence', path, '--now', '2026-03-02'])).toThrow('date,pupil,cards');
    const file = fileOf(...wellRead);
    const args = ['--evidence', file, '--now', '2026-03-21', '--by', 'week'];
    expect(() => mastery(args)).toThrow('card, place, habit');
  });
});
