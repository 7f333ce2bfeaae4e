import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Flip } from '../core/boards/shapes/board.ts';
import type { CardId } from '../core/language/card-id.ts';
import type { Phoneme } from '../core/language/phonemes.ts';
import { type OutlineStep, readLetters } from './glyphs.ts';
import { boundsOf } from './outline.ts';
import { SLIDE, type Slide } from './slide.ts';
import { slideFile } from './slide-file.ts';
import { runSlides, type SlidesSpec } from './slides.ts';

const letters = readLetters([
  readFileSync(
    new URL(
      '../node_modules/@fontsource/andika/files/andika-latin-400-normal.woff',
      import.meta.url,
    ),
  ),
]);

function flip(kind: Flip['kind'], word: string, cards: CardId[], sounds: Phoneme[]): Flip {
  return { kind, word, cards, sounds };
}

/** Laid by hand: a long cluster, a silent e, and a vowel turned. */
const run: readonly Flip[] = [
  flip('real', 'ship', ['sh=SH', 'i=IH', 'p=P'], ['SH', 'IH', 'P']),
  flip('nonsense', 'thip', ['th=TH', 'i=IH', 'p=P'], ['TH', 'IH', 'P']),
  flip('real', 'stripe', ['str=S+T+R', 'i_e=AY', 'p=P'], ['S', 'T', 'R', 'AY', 'P']),
];
const spec: SlidesSpec = {
  run,
  piles: 3,
  blending: 'whole',
  style: 'classroom',
  meaningOf: (word) => (word === 'stripe' ? 'a long band' : null),
};
const whole = runSlides(spec, letters);
const bySound = runSlides({ ...spec, blending: 'by-sound' }, letters);

const shown = ({ shapes }: Slide) =>
  shapes.flatMap(({ name }) => (name.startsWith('card ') ? [name.slice(5)] : []));
const lineOf = ({ shapes }: Slide) => {
  const steps = shapes.filter(({ name }) => name === 'sweep line').flatMap((line) => line.steps);
  return boundsOf(steps) as NonNullable<ReturnType<typeof boundsOf>>;
};

describe('the slides of a run', () => {
  test('show every flip in order, between two quiet sheets', () => {
    expect(whole).toHaveLength(2 + 2 * 3);
    expect(whole.slice(1, -1).map((slide) => shown(slide).join('-'))).toEqual([
      'sh-i-p',
      'sh-i-p',
      'th-i-p',
      'th-i-p',
      'str-i-p-e',
      'str-i-p-e',
    ]);
    expect([whole[0], whole.at(-1)].map((slide) => shown(slide as Slide))).toEqual([[], []]);
  });

  test('a sound at a time, cards open one after another and the line goes with them', () => {
    expect(bySound.slice(1, 5).map((slide) => shown(slide).join(' '))).toEqual([
      'sh face down face down',
      'sh i face down',
      'sh i p',
      'sh i p',
    ]);
    const lefts = bySound.slice(1, 4).map((slide) => lineOf(slide).left);
    expect(lefts).toEqual([...lefts].sort((one, other) => one - other));
    expect(new Set(lefts).size).toBe(3);
  });

  test('the line moves at every click of a word, and at the end lies under the whole row', () => {
    for (const deck of [whole, bySound]) {
      deck.slice(1, -1).forEach((slide, at) => {
        const next = deck[at + 2] as Slide;
        expect(lineOf(slide)).not.toEqual(lineOf(next));
      });
    }
    const frames = whole[2]?.shapes.filter(({ name }) => name.startsWith('card ')) ?? [];
    const row = boundsOf(frames.flatMap(({ steps }) => steps)) as NonNullable<
      ReturnType<typeof boundsOf>
    >;
    const line = lineOf(whole[2] as Slide);
    expect(line.right - line.left).toBeGreaterThan((row.right - row.left) * 0.98);
    expect(line.top).toBeGreaterThan(row.bottom);
  });

  test('stay on the slide whatever the row, and letters are large', () => {
    const long: Flip[] = [
      flip(
        'nonsense',
        'stroughdge',
        ['str=S+T+R', 'ough=AO', 'dge=JH'],
        ['S', 'T', 'R', 'AO', 'JH'],
      ),
      ...run,
    ];
    for (const { shapes } of runSlides({ ...spec, run: long }, letters)) {
      for (const { steps, name } of shapes) {
        const at = boundsOf(steps) as NonNullable<ReturnType<typeof boundsOf>>;
        const inside =
          at.left >= 0 && at.top >= 0 && at.right <= SLIDE.width && at.bottom <= SLIDE.height;
        expect([name, inside]).toEqual([name, true]);
      }
    }
    const h = boundsOf(shapesNamed(whole[1] as Slide, 'letters sh'));
    expect((h?.bottom ?? 0) - (h?.top ?? 0)).toBeGreaterThan(SLIDE.height / 4);
  });

  test('notes say what is asked, whether the word is real, and what comes next', () => {
    expect(whole[0]?.notes).toContain('3 words, 2 real');
    expect(whole[1]?.notes).toContain('1 of 3: ship: real word');
    expect(whole[1]?.notes).toContain('Next (sh turns to th): thip: nonsense word, /thĭp/');
    expect(whole[3]?.notes).toContain('2 of 3: thip: nonsense word');
    expect(whole[3]?.notes).toContain('stripe: real word, a long band');
    expect(whole.at(-2)?.notes).toContain('This is the last word.');
    expect(bySound[1]?.notes).toContain('They say the sound of sh.');
  });

  test('an empty run has none', () => {
    expect(runSlides({ ...spec, run: [] }, letters)).toEqual([]);
  });
});

function shapesNamed({ shapes }: Slide, wanted: string): readonly OutlineStep[] {
  return shapes.filter(({ name }) => name === wanted).flatMap(({ steps }) => steps);
}

const bytes = await slideFile(whole, 'Blending drill');
const parts = Object.fromEntries(
  Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]),
);
const slideParts = whole.map((_, at) => parts[`ppt/slides/slide${at + 1}.xml`] as string);

/** ECMA-376: part 2 for the package, part 1 §20.1.9 for shapes of one's own (custGeom). */
describe('the file', () => {
  test('names no part that is not there, and gives every part a type', () => {
    const types = parts['[Content_Types].xml'] as string;
    const overrides = [...types.matchAll(/<Override PartName="\/([^"]+)"/g)].map(
      ([, name]) => name,
    );
    const endings = [...types.matchAll(/<Default Extension="([^"]+)"/g)].map(
      ([, ending]) => ending,
    );
    for (const name of overrides) expect(parts, name).toHaveProperty([name as string]);
    for (const name of Object.keys(parts)) {
      if (name === '[Content_Types].xml') continue;
      const typed = overrides.includes(name) || endings.includes(name.split('.').at(-1));
      expect([name, typed]).toEqual([name, true]);
    }
  });

  test('every relationship leads to a part', () => {
    let count = 0;
    for (const [name, xml] of Object.entries(parts)) {
      if (!name.endsWith('.rels')) continue;
      const [, base] = /^(.*?)\/?_rels\/[^/]*$/.exec(name) as RegExpExecArray;
      for (const [, target] of xml.matchAll(/Target="([^"]+)"/g)) {
        const to = new URL(target as string, `file:///${base ? `${base}/` : ''}`).pathname.slice(1);
        expect(parts, `${name} to ${to}`).toHaveProperty([to]);
        count++;
      }
    }
    expect(count).toBeGreaterThan(3 * whole.length);
  });

  test('has no text on a slide, so that no typeface is needed: letters are outlines', () => {
    slideParts.forEach((xml, at) => {
      expect(xml).not.toMatch(/<a:t>|<a:latin|<a:fld/);
      const shapes = whole[at]?.shapes.length;
      expect(xml.match(/<a:custGeom>/g)).toHaveLength(shapes as number);
      expect(xml).not.toMatch(/="(NaN|-\d+|Infinity|undefined)"/);
    });
  });

  test('describes each card and the line for a screen reader', () => {
    slideParts.slice(1, -1).forEach((xml, at) => {
      const said = [...xml.matchAll(/<p:cNvPr [^>]*descr="([^"]+)"/g)].map(([, text]) => text);
      const named = whole[at + 1]?.shapes.map(({ name }) => name) ?? [];
      expect(said).toEqual(named.filter((name) => /^(card|sweep line|words)/.test(name)));
      expect(said).toContain('sweep line');
    });
  });

  test('is 16 : 9, and has the notes of each slide', () => {
    const [, cx, cy] = /<p:sldSz cx="(\d+)" cy="(\d+)"/.exec(
      parts['ppt/presentation.xml'] as string,
    ) as RegExpExecArray;
    expect(Number(cx) / Number(cy)).toBeCloseTo(16 / 9, 4);
    whole.forEach(({ notes }, at) => {
      const xml = parts[`ppt/notesSlides/notesSlide${at + 1}.xml`] as string;
      for (const line of notes.split('\n')) expect(xml).toContain(line);
    });
  });

  test('is byte for byte the same for the same slides', async () => {
    const again = await slideFile(runSlides(spec, letters), 'Blending drill');
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
    expect(strFromU8(bytes, true)).not.toContain(String(new Date().getFullYear()));
  });
});

function canOpen(): boolean {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Where LibreOffice is installed it has to open the file; elsewhere this is shown as skipped. */
describe.skipIf(!canOpen())('opened by another program (LibreOffice)', () => {
  test('all slides are there, as PDF and by way of .odp', () => {
    const folder = mkdtempSync(join(tmpdir(), 'deck-'));
    writeFileSync(join(folder, 'deck.pptx'), bytes);
    const convert = (file: string, to: string) =>
      execFileSync(
        'soffice',
        [
          `-env:UserInstallation=file://${folder}/profile`,
          '--headless',
          '--convert-to',
          to,
          '--outdir',
          folder,
          join(folder, file),
        ],
        { stdio: 'ignore' },
      );
    convert('deck.pptx', 'odp');
    convert('deck.odp', 'pdf');
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(['deck.odp', 'deck.pdf']));
    const odp = strFromU8(unzipSync(readFileSync(join(folder, 'deck.odp')))['content.xml']!);
    expect(odp.match(/<draw:page /g)).toHaveLength(whole.length);
    const pdf = readFileSync(join(folder, 'deck.pdf'), 'latin1');
    expect(pdf).toMatch(new RegExp(`/Count ${whole.length}\\b`));
    expect(pdf).not.toContain('/FontFile');
  });
});
