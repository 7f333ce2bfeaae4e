import { rareMeanings } from '../core/words/meanings.ts';
import { readLetters } from '../print/glyphs.ts';
import { slideFile } from '../print/slide-file.ts';
import { runSlides } from '../print/slides.ts';
import { DRILL_OPTIONS, readDrill } from './drill.ts';
import { loadLexicon, loadMeanings, loadScreen, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';
import { loadTypeface, readOut, writeOut } from './paper.ts';

/** `slides --taught T -o FILE.pptx`: a run of flips as slides. */
export async function slides(args: readonly string[]): Promise<string> {
  const typed = readOptions(args, { ...DRILL_OPTIONS, 'by-sound': 'flag', out: 'text' });
  if (typed.words.length > 0) fail(`slides takes options only; “${typed.words[0]}” is none.`);
  const out = readOut(typed, 'slides.pptx');
  const lexicon = loadLexicon();
  const taught = readTaught(typed.text('taught'));
  const { run, board, shortfall } = readDrill(typed, taught, { lexicon, screen: loadScreen() });
  if (run.length === 0) fail(shortfall?.message ?? 'These cards make no words yet.');
  const made = runSlides(
    {
      run,
      piles: board.piles.length,
      blending: typed.flag('by-sound') ? 'by-sound' : 'whole',
      style: 'classroom',
      meaningOf: rareMeanings(loadMeanings(), lexicon),
    },
    readLetters(loadTypeface().files.regular),
  );
  writeOut(out, await slideFile(made, 'Blending drill'));
  if (typed.flag('json')) {
    return JSON.stringify({ file: out, words: run.map(({ word }) => word), slides: made.length });
  }
  return [
    `${run.length} words on ${made.length} slides: ${out}`,
    ...(shortfall ? [shortfall.message] : []),
  ].join('\n');
}
