import { soundStyleFor } from '../core/language/accent/sound-style.ts';
import { rareMeanings } from '../core/words/meanings.ts';
import { readLetters } from '../print/glyphs.ts';
import { odpFile } from '../print/odp-file.ts';
import { SLIDE_FORMATS } from '../print/slide.ts';
import { slideFile } from '../print/slide-file.ts';
import { runSlides } from '../print/slides.ts';
import { DRILL_OPTIONS, readDrill } from './drill.ts';
import { loadHere, loadMeanings, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';
import { loadTypeface, readOneOf, readOut, writeOut } from './paper.ts';

/** `slides --taught T -o FILE.pptx`: a run of flips as slides, as .odp where the file is called so. */
export async function slides(args: readonly string[]): Promise<string> {
  const typed = readOptions(args, {
    ...DRILL_OPTIONS,
    'by-sound': 'flag',
    build: 'flag',
    screen: 'text',
    out: 'text',
  });
  if (typed.words.length > 0) fail(`slides takes options only; “${typed.words[0]}” is none.`);
  const out = readOut(typed, 'slides.pptx');
  const format = readOneOf(typed, 'screen', SLIDE_FORMATS, '16:9');
  const here = loadHere(typed);
  const taught = readTaught(typed.text('taught'), here);
  const { run, board, shortfall } = readDrill(typed, taught, here);
  if (run.length === 0) fail(shortfall?.message ?? 'These cards make no words yet.');
  const deck = runSlides(
    {
      run,
      piles: board.piles.length,
      blending: typed.flag('by-sound') ? 'by-sound' : 'whole',
      clicks: typed.flag('build') ? 'slide' : 'line',
      format,
      style: soundStyleFor(here.accent, 'classroom'),
      meaningOf: rareMeanings(loadMeanings(), here.lexicon),
    },
    readLetters(loadTypeface().files.regular),
  );
  const isOpenDocument = out.toLowerCase().endsWith('.odp');
  writeOut(out, isOpenDocument ? odpFile(deck) : await slideFile(deck));
  const made = deck.slides;
  if (typed.flag('json')) {
    return JSON.stringify({ file: out, words: run.map(({ word }) => word), slides: made.length });
  }
  return [
    `${run.length} words on ${made.length} slides: ${out}`,
    ...(shortfall ? [shortfall.message] : []),
  ].join('\n');
}
