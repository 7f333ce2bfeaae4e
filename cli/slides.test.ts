import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { drill } from './drill.ts';
import { Failure } from './failure.ts';
import { slides } from './slides.ts';

const folder = mkdtempSync(join(tmpdir(), 'slides-'));
const asked = ['--taught', 'step:40', '--seed', '7', '--flips', '4'];

describe('slides from the terminal', () => {
  test('show the run of the drill with the same options, byte for byte the same twice', async () => {
    const [one, other] = [join(folder, 'one.pptx'), join(folder, 'other.pptx')];
    const said = JSON.parse(await slides([...asked, '-o', one, '--json']));
    await slides([...asked, '--out', other]);
    const { run } = JSON.parse(drill([...asked, '--json']));
    expect(said.words).toEqual(run.map(({ word }: { word: string }) => word));
    expect(said.slides).toBe(2 + 2 * 4);
    expect(readFileSync(one).equals(readFileSync(other))).toBe(true);
  });

  test('a sound at a time, each click is a slide', async () => {
    const file = join(folder, 'sounds.pptx');
    const said = JSON.parse(await slides([...asked, '--by-sound', '-o', file, '--json']));
    const parts = Object.keys(unzipSync(readFileSync(file)));
    expect(parts.filter((name) => /^ppt\/slides\/slide\d+\.xml$/.test(name))).toHaveLength(
      said.slides,
    );
    expect(said.slides).toBeGreaterThan(2 + 4 * 3);
    expect(strFromU8(readFileSync(file).subarray(0, 2))).toBe('PK');
  });

  test('end with a kind message when there is nowhere to write or nothing to show', async () => {
    await expect(slides(asked)).rejects.toThrow('-o slides.pptx');
    await expect(slides([...asked, '-o', join(folder, 'no', 'x.pptx')])).rejects.toThrow('Cannot');
    await expect(slides(['--taught', 'm,s', '-o', join(folder, 'x.pptx')])).rejects.toThrow(
      Failure,
    );
  });
});
