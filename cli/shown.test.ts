import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fromRoot } from '../house/root.mjs';
import { shown } from './shown.ts';

describe('a text in the terminal', () => {
  it.each([
    ['\u001b[2J\u001b[31mred', '\\u001b[2J\\u001b[31mred'],
    ['\u0007\u0000\u007f\u009b', '\\u0007\\u0000\\u007f\\u009b'],
    ['over\rwritten', 'over\\u000dwritten'],
    ['\u202egnp\u2066', '\\u202egnp\\u2066'],
    ['a\tb\nc', 'a\tb\nc'],
    ['“naïve” — 猫 😀', '“naïve” — 猫 😀'],
  ])('%j is shown as %j', (text, expected) => {
    expect(shown(text)).toBe(expected);
  });

  it('is the same value in JSON', () => {
    fc.assert(
      fc.property(fc.json(), fc.string({ unit: 'binary' }), (json, text) => {
        expect(JSON.parse(shown(json))).toEqual(JSON.parse(json));
        expect(JSON.parse(shown(JSON.stringify(text)))).toBe(text);
      }),
    );
  });
});

describe('the terminal program', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'shown-'));
    writeFileSync(join(folder, 'deep.json'), '['.repeat(200_000) + ']'.repeat(200_000));
    writeFileSync(
      join(folder, 'escapes.txt'),
      'mat \u001b[2J\u001b]0;owned\u0007 \u009b31m\r\u202e',
    );
    writeFileSync(
      join(folder, 'bytes.bin'),
      Uint8Array.from({ length: 512 }, (_, at) => at % 256),
    );
    mkdirSync(join(folder, 'kept'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const run = (args: readonly string[], input = '', cwd = folder) =>
    spawnSync(process.execPath, [fromRoot('house', 'sweepline.mjs'), ...args], {
      cwd,
      input,
      encoding: 'utf8',
      env: { ...process.env, INIT_CWD: cwd },
    });

  const escapes = 'x\u001b[31m\u0007\u009b\u202e\r';

  it.each([
    [['check', 'score', 'deep.json']],
    [['words', '--taught', '@deep.json']],
    [['mastery', '--evidence', 'kept', '--now', '2026-03-02']],
    [['cards', '--taught', 'step:9', '-o', 'gone/cards.pdf']],
    [['passage', 'escapes.txt', '--taught', 'step:9', '--json']],
    [['passage', 'escapes.txt', '--taught', 'step:9']],
    [['mastery', '--evidence', 'bytes.bin', '--now', '2026-03-02']],
    [['spell', escapes]],
    [[escapes]],
    [['words', `--${escapes}`]],
    [['screen'], escapes],
    [['wrote'], `${escapes}\nship=${escapes}\n${escapes}=ship\n`],
  ])('says %j without a raw sign or a stack', (args, input = '') => {
    const { status, stdout, stderr } = run(args, input);
    expect([0, 1, 2]).toContain(status);
    expect(stdout + stderr).not.toBe('');
    expect(stdout + stderr).not.toMatch(/[^\P{Cc}\n\t]|[\u202a-\u202e\u2066-\u2069]/u);
    expect(stderr).not.toMatch(/^\s+at |node:internal|file:\/\//m);
    if (status !== 0) expect(stderr.trim().split('\n').length).toBeLessThan(40);
  });

  it('says in one line that the folder it was started in is gone', () => {
    const cwd = join(folder, 'vanishing');
    mkdirSync(cwd);
    const line = `rmdir "${cwd}" && exec "${process.execPath}" "${fromRoot('house', 'sweepline.mjs')}" spell ship`;
    const { INIT_CWD: _, ...env } = process.env;
    const { stdout, stderr } = spawnSync('sh', ['-c', line], { cwd, encoding: 'utf8', env });
    expect(stderr).not.toMatch(/^\s+at |node:internal|file:\/\//m);
    expect(stdout + stderr).toMatch(/ship|folder/);
  });
});
