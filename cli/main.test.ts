import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { fromRoot } from '../house/root.mjs';

const sweepline = `"${process.execPath}" "${fromRoot('house', 'sweepline.mjs')}"`;

function shell(line: string) {
  const { stdout, stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' });
  return { stdout, stderr };
}

test('a reader who has seen enough ends the program quietly', () => {
  const all = `step:${SEQUENCE.steps.length}`;
  const { stdout, stderr } = shell(`${sweepline} words --taught ${all} --json | head -c 9`);
  expect(stdout).toBe('[{"word":');
  expect(stderr).toBe('');
});

test('what is unknown is said on standard error, with an exit code that scripts can tell', () => {
  const { stdout, stderr } = shell(`${sweepline} wrods; echo "code $?"`);
  expect(stdout).toBe('code 2\n');
  expect(stderr).toContain('There is no command “wrods”.');
});
