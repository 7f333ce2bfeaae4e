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
    expect(said.slides).toBe(2 + 4);
    expect(readFileSync(one).equals(readFileSync(other))).toBe(true);
  });

  test('a sound at a time, built of a slide for each click', async () => {
    const file = join(folder, 'sounds.pptx');
    const said = JSON.parse(
      await slides([...asked, '--by-sound', '--build', '-o', file, '--json']),
    );
    const parts = Object.keys(unzipSync(readFileSync(file)));
    expect(parts.filter((name) => /^ppt\/slides\/slide\d+\.xml$/.test(name))).toHaveLength(
      said.slides,
    );
    expect(said.slides).toBeGreaterThan(2 + 4 * 3);
    expect(strFromU8(readFileSync(file).subarray(0, 2))).toBe('PK');
  });

  test('as OpenDocument where the file is called so, for a screen of 4 : 3', async () => {
    const file = join(folder, 'four.odp');
    const said = JSON.parse(await slides([...asked, '--screen', '4:3', '-o', file, '--json']));
    const parts = unzipSync(readFileSync(file));
    expect(strFromU8(parts.mimetype!)).toBe('application/vnd.oasis.opendocument.presentation');
    expect(strFromU8(parts['content.xml']!).match(/<draw:page /g)).toHaveLength(said.slides);
    expect(strFromU8(parts['styles.xml']!)).toContain('fo:page-width="254mm"');
    await expect(slides([...asked, '--screen', '5:4', '-o', file])).rejects.toThrow('16:9, 4:3');
  });

  test('end with a kind message when there is nowhere to write or nothing to show', async () => {
    await expect(slides(asked)).rejects.toThrow('-o slides.pptx');
    await expect(slides([...asked, '-o', join(folder, 'no', 'x.pptx')])).rejects.toThrow('Cannot');
    await expect(slides(['--taught', 'm,s', '-o', join(folder, 'x.pptx')])).rejects.toThrow(
      Failure,
    );
  });
});
