import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Flip } from '../core/boards/shapes/board.ts';
import type { CardId } from '../core/language/card-id.ts';
import type { Phoneme } from '../core/language/phonemes.ts';
import { readLetters } from './glyphs.ts';
import { odpFile } from './odp-file.ts';
import { boundsOf } from './outline.ts';
import { SLIDE_FORMATS, type Slide, type SlideThing, slideSize } from './slide.ts';
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
  clicks: 'line',
  format: '16:9',
  style: 'classroom',
  meaningOf: (word) => (word === 'stripe' ? 'a long band' : null),
};
const decks = {
  whole: runSlides(spec, letters),
  bySound: runSlides({ ...spec, blending: 'by-sound' }, letters),
  wholeStill: runSlides({ ...spec, clicks: 'slide' }, letters),
  bySoundStill: runSlides({ ...spec, blending: 'by-sound', clicks: 'slide' }, letters),
};
const { whole, bySound, wholeStill, bySoundStill } = decks;

const shown = ({ things }: Slide) =>
  things.flatMap(({ name }) => (name.startsWith('card ') ? [name.slice(5)] : []));
const boxOf = (things: readonly SlideThing[]) => {
  const steps = things.flatMap(({ shapes }) => shapes.flatMap(({ steps }) => steps));
  return boundsOf(steps) as NonNullable<ReturnType<typeof boundsOf>>;
};
const lines = ({ things }: Slide) => things.filter(({ name }) => name === 'sweep line');

/** The words of the things that are seen once so many clicks of a slide were made. */
function seenAfter({ things, clicks }: Slide, made: number): readonly SlideThing[] {
  const waits = new Set(
    clicks.flat().flatMap(({ thing, how }) => (how === 'vanish' ? [] : [thing])),
  );
  const seen = new Set(things.map((_, at) => at).filter((at) => !waits.has(at)));
  for (const { thing, how } of clicks.slice(0, made).flat()) {
    if (how === 'vanish') seen.delete(thing);
    else seen.add(thing);
  }
  return things.filter((_, at) => seen.has(at));
}

describe('the slides of a run', () => {
  test.each(['whole', 'bySound'] as const)(
    '%s: a slide for each word, in order, between two quiet ones',
    (name) => {
      const { slides } = decks[name];
      expect(slides).toHaveLength(2 + 3);
      const cards = (slide: Slide) =>
        shown(slide)
          .filter((card) => card !== 'face down')
          .join(' ');
      expect(slides.map(cards)).toEqual(['', 'sh i p', 'th i p', 'str i–e p', '']);
    },
  );

  test('a click sweeps the line under the whole row', () => {
    for (const slide of whole.slides.slice(1, -1)) {
      expect(slide.clicks.map((moves) => moves.map(({ how }) => how))).toEqual([['sweep']]);
      const [before, after] = [0, 1].map((made) =>
        boxOf(lines({ ...slide, things: seenAfter(slide, made) })),
      );
      const row = boxOf(slide.things.filter(({ name }) => name.startsWith('card ')));
      expect(before!.right - before!.left).toBeLessThan((row.right - row.left) / 4);
      expect(after!.right - after!.left).toBeGreaterThan((row.right - row.left) * 0.98);
      expect(after!.top).toBeGreaterThan(row.bottom);
    }
  });

  test('a sound at a time, each click opens a card, takes the line there, and the last sweeps it', () => {
    const [, ship] = bySound.slides as readonly Slide[];
    const states = [0, 1, 2, 3].map((made) => seenAfter(ship as Slide, made));
    const opened = states.map((things) =>
      shown({ ...(ship as Slide), things }).filter((name) => name !== 'face down'),
    );
    expect(opened.map((names) => names.join(' '))).toEqual(['sh', 'sh i', 'sh i p', 'sh i p']);
    const under = states.map((things) => things.filter(({ name }) => name === 'sweep line'));
    expect(under.map(({ length }) => length)).toEqual([1, 1, 1, 1]);
    const places = under.slice(0, 3).map((line) => boxOf(line).left);
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(new Set(places).size).toBe(3);
  });

  test('without animations every state that a click makes is a slide of its own, the same to look at', () => {
    for (const [moving, still] of [
      [whole, wholeStill],
      [bySound, bySoundStill],
    ] as const) {
      expect(still.slides.every(({ clicks }) => clicks.length === 0)).toBe(true);
      const states = moving.slides.flatMap((slide) =>
        [...slide.clicks, null].map((_, made) => seenAfter(slide, made)),
      );
      expect(states).toHaveLength(still.slides.length);
      still.slides.forEach((slide, at) => {
        const open = (things: readonly SlideThing[]) =>
          things.filter(({ name }) => /^card (?!face)/.test(name));
        expect(open(states[at]!)).toEqual(open(slide.things));
        expect(boxOf(lines({ ...slide, things: states[at]! })).right).toBeCloseTo(
          boxOf(lines(slide)).right,
          6,
        );
      });
    }
  });

  test('each has a title of its own, and what is seen is described but for what decorates', () => {
    for (const { slides } of Object.values(decks)) {
      const titles = slides.map(({ title }) => title);
      expect(new Set(titles).size).toBe(titles.length);
      expect(titles[0]).toBe('Blending drill: 3 words');
      for (const thing of slides.flatMap(({ things }) => things)) {
        expect(thing.says === null).toBe(thing.name === 'card face down');
      }
    }
    expect(whole.slides[2]?.title).toBe('2 of 3: thip');
    expect(whole.slides[3]?.things.map(({ says }) => says)).toEqual([
      'Card str',
      'Card i–e',
      'Card p',
      'Sweep line',
      'Sweep line',
      'Word 3 of 3',
    ]);
  });

  test.each(SLIDE_FORMATS)(
    'stay on a screen of %s whatever the row, and letters are large',
    (format) => {
      const long: Flip[] = [
        flip(
          'nonsense',
          'stroughdge',
          ['str=S+T+R', 'ough=AO', 'dge=JH'],
          ['S', 'T', 'R', 'AO', 'JH'],
        ),
        ...run,
      ];
      const { width, height } = slideSize[format];
      const deck = runSlides({ ...spec, format, run: long }, letters);
      for (const { name, shapes } of deck.slides.flatMap(({ things }) => things)) {
        const at = boxOf([{ name, says: null, shapes }]);
        const inside = at.left >= 0 && at.top >= 0 && at.right <= width && at.bottom <= height;
        expect([name, inside]).toEqual([name, true]);
      }
      const [, ship] = runSlides({ ...spec, format }, letters).slides;
      const [, , ...parts] = ship?.things[0]?.shapes ?? [];
      const h = boxOf([{ name: '', says: null, shapes: parts }]);
      expect(h.bottom - h.top).toBeGreaterThan(height / 5);
    },
  );

  test('notes say what is asked, whether the word is real, and what comes next', () => {
    const [opening, ship, thip] = whole.slides;
    expect(opening?.notes).toContain('3 words, 2 real');
    expect(ship?.notes).toContain('1 of 3: ship: real word');
    expect(ship?.notes).toContain('Next (sh turns to th): thip: nonsense word, /thĭp/');
    expect(thip?.notes).toContain('2 of 3: thip: nonsense word');
    expect(thip?.notes).toContain('stripe: real word, a long band');
    expect(whole.slides.at(-2)?.notes).toContain('This is the last word.');
    expect(bySoundStill.slides[1]?.notes).toContain('They say the sound of sh.');
  });

  test('an empty run has none', () => {
    expect(runSlides({ ...spec, run: [] }, letters).slides).toEqual([]);
  });
});

const bytes = await slideFile(bySound);
const parts = partsOf(bytes);
const slideParts = bySound.slides.map((_, at) => parts[`ppt/slides/slide${at + 1}.xml`] as string);

function partsOf(file: Uint8Array): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(unzipSync(file)).map(([name, part]) => [name, strFromU8(part)]),
  );
}

/** Tags that close, in pairs and in order, as XML asks; throws otherwise. */
function checkPaired(xml: string): void {
  const open: string[] = [];
  for (const [, end, name, alone] of xml.matchAll(/<(\/?)([\w:]+)[^>]*?(\/?)>/g)) {
    if (end) expect(open.pop()).toBe(name);
    else if (!alone) open.push(name as string);
  }
  expect(open).toEqual([]);
}

/** ECMA-376: part 2 for the package, part 1 §19.3 and §19.5 for slides and what moves on them, §20.1.9 for outlines. */
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
    expect(count).toBeGreaterThan(3 * bySound.slides.length);
  });

  test('has no text on a slide but its title, above the edge; letters are outlines', () => {
    slideParts.forEach((xml, at) => {
      checkPaired(xml);
      const { title, things } = bySound.slides[at] as Slide;
      expect([...xml.matchAll(/<a:t>([^<]*)/g)].map(([, text]) => text)).toEqual([title]);
      expect(xml).toMatch(/<p:ph type="title" idx="100"\/>/);
      const [, y, high] = /<a:off x="0" y="(-\d+)"\/><a:ext cx="\d+" cy="(\d+)"/.exec(
        xml,
      ) as RegExpExecArray;
      expect(Number(y) + Number(high)).toBeLessThan(0);
      expect(xml.match(/<a:custGeom>/g)).toHaveLength(
        things.flatMap(({ shapes }) => shapes).length,
      );
      expect(xml).not.toMatch(/="(NaN|Infinity|undefined)"/);
    });
    expect(parts['ppt/slideLayouts/slideLayout2.xml']).toMatch(/type="title"/);
  });

  test('describes each thing for a screen reader, or marks it as decorating', () => {
    slideParts.forEach((xml, at) => {
      const groups = [
        ...xml.matchAll(
          /<p:nvGrpSpPr><p:cNvPr id="\d+" name="[^"]+"(?: descr="([^"]+)"\/>|>(.*?)<\/p:cNvPr>)/g,
        ),
      ];
      const said = groups.map(
        ([, text, mark]) => text ?? (mark?.includes('adec:decorative') ? null : undefined),
      );
      expect(said).toEqual(bySound.slides[at]?.things.map(({ says }) => says));
    });
  });

  test('waits for as many clicks as the slide has, and moves only what is there, every id once', () => {
    slideParts.forEach((xml, at) => {
      const { clicks, things } = bySound.slides[at] as Slide;
      expect(xml.match(/delay="indefinite"/g)?.length ?? 0).toBe(clicks.length);
      const ids = [...xml.matchAll(/<p:cNvPr id="(\d+)" name="([^"]*)"/g)];
      expect(new Set(ids.map(([, id]) => id)).size).toBe(ids.length);
      const nameOf = new Map(ids.map(([, id, name]) => [id, name]));
      const moved = [...xml.matchAll(/<p:set>.*?<p:spTgt spid="(\d+)"/g)].map(([, id]) =>
        nameOf.get(id),
      );
      expect(moved).toEqual(clicks.flat().map(({ thing }) => things[thing]?.name));
      const wipes = clicks.flat().filter(({ how }) => how === 'sweep');
      expect(xml.match(/filter="wipe\(left\)"/g)?.length ?? 0).toBe(wipes.length);
      const times = [...xml.matchAll(/<p:cTn id="(\d+)"/g)].map(([, id]) => id);
      expect(new Set(times).size).toBe(times.length);
    });
  });

  test.each(SLIDE_FORMATS)('is %s when asked', async (format) => {
    const file = partsOf(await slideFile(runSlides({ ...spec, format }, letters)));
    const [, cx, cy] = /<p:sldSz cx="(\d+)" cy="(\d+)"/.exec(
      file['ppt/presentation.xml'] as string,
    ) as RegExpExecArray;
    const [wide, high] = format.split(':').map(Number);
    expect(Number(cx) / Number(cy)).toBeCloseTo((wide as number) / (high as number), 4);
  });

  test('has the notes of each slide', () => {
    bySound.slides.forEach(({ notes }, at) => {
      const xml = parts[`ppt/notesSlides/notesSlide${at + 1}.xml`] as string;
      for (const line of notes.split('\n')) expect(xml).toContain(line);
    });
  });

  test('is byte for byte the same for the same slides', async () => {
    const again = await slideFile(runSlides({ ...spec, blending: 'by-sound' }, letters));
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
    expect(strFromU8(bytes, true)).not.toContain(String(new Date().getFullYear()));
  });
});

/** ISO/IEC 26300 (OpenDocument 1.3): part 2 §3 for the package, part 3 §10 for pages, §15 for what moves. */
describe('the OpenDocument file', () => {
  const file = odpFile(bySound);
  const odp = partsOf(file);
  const content = odp['content.xml'] as string;
  const pages = content.split('<draw:page ').slice(1);

  test('begins with its type, not compressed and without extra fields, and lists its parts', () => {
    const type = 'application/vnd.oasis.opendocument.presentation';
    const head = Buffer.from(file.subarray(0, 30 + 8 + type.length));
    // Local file header: method at 8, lengths of name and extra field at 26 and 28, then the name and the bytes.
    expect([head.readUInt16LE(8), head.readUInt16LE(26), head.readUInt16LE(28)]).toEqual([0, 8, 0]);
    expect(head.subarray(30).toString()).toBe(`mimetype${type}`);
    const listed = [
      ...(odp['META-INF/manifest.xml'] as string).matchAll(/full-path="([^"]+)"/g),
    ].map(([, path]) => path);
    const there = Object.keys(odp).filter(
      (name) => name !== 'mimetype' && !name.startsWith('META-INF/'),
    );
    expect(listed.sort()).toEqual(['/', ...there].sort());
    for (const name of there) checkPaired(odp[name] as string);
  });

  test('has every slide with its title, its outlines, its notes and what is said of them', () => {
    expect(pages).toHaveLength(bySound.slides.length);
    pages.forEach((page, at) => {
      const { title, things, notes } = bySound.slides[at] as Slide;
      expect(page.startsWith(`draw:name="${title}"`)).toBe(true);
      expect(page).toMatch(/presentation:class="title"[^>]* svg:y="-20mm" [^>]*svg:height="15mm"/);
      expect([...page.matchAll(/<svg:title>([^<]*)/g)].map(([, said]) => said)).toEqual(
        things.flatMap(({ says }) => (says === null ? [] : [says])),
      );
      expect(page.match(/<draw:path /g)).toHaveLength(
        things.flatMap(({ shapes }) => shapes).length,
      );
      for (const line of notes.split('\n')) expect(page).toContain(`<text:p>${line}</text:p>`);
    });
    expect(content).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('names only styles and targets that are there, every id once', () => {
    const styles = odp['styles.xml'] as string;
    for (const [, name] of content.matchAll(/(?:draw|presentation):style-name="([^"]+)"/g)) {
      expect(`${content}${styles}`).toContain(`style:name="${name}"`);
    }
    const ids = [...content.matchAll(/xml:id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = [...content.matchAll(/smil:targetElement="([^"]+)"/g)].map(([, id]) => id);
    expect(targets.length).toBeGreaterThan(0);
    for (const id of targets) expect(ids).toContain(id);
  });

  test('waits for as many clicks as the slide has', () => {
    pages.forEach((page, at) => {
      expect(page.match(/smil:begin="next"/g)?.length ?? 0).toBe(bySound.slides[at]?.clicks.length);
    });
  });

  test.each(SLIDE_FORMATS)('is %s when asked, and the same twice', (format) => {
    const make = () => odpFile(runSlides({ ...spec, format }, letters));
    const [, width, height] = /fo:page-width="([\d.]+)mm" fo:page-height="([\d.]+)mm"/.exec(
      partsOf(make())['styles.xml'] as string,
    ) as RegExpExecArray;
    const [wide, high] = format.split(':').map(Number);
    expect(Number(width) / Number(height)).toBeCloseTo((wide as number) / (high as number), 4);
    expect(Buffer.from(make()).equals(Buffer.from(make()))).toBe(true);
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

/** Where LibreOffice is installed it has to open both files; elsewhere this is shown as skipped. */
describe.skipIf(!canOpen())('opened by another program (LibreOffice)', () => {
  test('all slides are there, by way of .odp with every click, and as PDF', {
    timeout: 60_000,
  }, () => {
    const folder = mkdtempSync(join(tmpdir(), 'deck-'));
    writeFileSync(join(folder, 'deck.pptx'), bytes);
    writeFileSync(join(folder, 'open.odp'), odpFile(bySound));
    const convert = (to: string, ...files: readonly string[]) =>
      execFileSync(
        'soffice',
        [
          `-env:UserInstallation=file://${folder}/profile`,
          '--headless',
          '--convert-to',
          to,
          '--outdir',
          folder,
          ...files.map((file) => join(folder, file)),
        ],
        { stdio: 'ignore' },
      );
    convert('odp', 'deck.pptx');
    convert('pdf', 'deck.odp', 'open.odp');
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(['deck.pdf', 'open.pdf']));
    const odp = strFromU8(unzipSync(readFileSync(join(folder, 'deck.odp')))['content.xml']!);
    expect(odp.match(/<draw:page /g)).toHaveLength(bySound.slides.length);
    const clicks = bySound.slides.flatMap((slide) => slide.clicks);
    expect(odp.match(/smil:begin="next"/g)).toHaveLength(clicks.length);
    expect(odp).toContain('smil:type="barWipe"');
    for (const name of ['deck.pdf', 'open.pdf']) {
      const pdf = readFileSync(join(folder, name), 'latin1');
      expect(pdf).toMatch(new RegExp(`/Count ${bySound.slides.length}\\b`));
      expect(pdf).not.toContain('/FontFile');
    }
  });
});
