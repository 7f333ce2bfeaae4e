import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sheet } from './sheet.ts';

const folder = mkdtempSync(join(tmpdir(), 'sheets-'));
const taught = ['--taught', 'step:16', '--paper', 'A4'];

test.each(['plan', 'board', 'words', 'dictation', 'home', 'check'])(
  'sheet %s writes a PDF with as many pages as it says',
  async (kind) => {
    const file = join(folder, `${kind}.pdf`);
    const said = JSON.parse(await sheet([kind, ...taught, '-o', file, '--json']));
    expect(said).toMatchObject({ file, sheet: kind, paper: 'a4' });
    const pdf = readFileSync(file, 'latin1');
    expect(pdf.startsWith('%PDF-1.7')).toBe(true);
    expect(pdf).toMatch(new RegExp(`/Count ${said.pages}\\b`));
  },
);

test('ends with a message that says what to do', async () => {
  await expect(sheet([])).rejects.toThrow('plan, board, words, dictation, home, check');
  await expect(sheet(['plan', ...taught])).rejects.toThrow('-o plan.pdf');
  await expect(sheet(['words', '--taught', 'm', '-o', 'x.pdf'])).rejects.toThrow('Ask for less');
  const odd = ['plan', ...taught, '--for', 'Group ☃', '-o', 'x.pdf'];
  await expect(sheet(odd)).rejects.toThrow('☃');
});
