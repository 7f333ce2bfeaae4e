/**
 * Prints the figures of docs/checks.md: how far apart forms of a check are, and one child's scores on two
 * of them by chance alone, at three places of our order. Takes a minute.
 */
import type { CheckForm } from '../core/checks/check-form.ts';
import { makeLetterForm } from '../core/checks/letter-form.ts';
import { makeNonsenseForm } from '../core/checks/nonsense-form.ts';
import { makeSightForm } from '../core/checks/sight-form.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { builtLexicon as lexicon } from '../test/built-lexicon.ts';
import { type Trial, tryForms } from '../test/form-trial.ts';

const COUNT = 30;
const FORMS = Array.from({ length: 12 }, (_, seed) => seed);
const CLASSES = [1, 2, 3, 4, 5, 6, 7, 8];
/** The log-odds of a middling child: of words with many mistakes, and of those with few. */
const MIDDLES = [1, 2, 3];

const screen = createWordScreen(SCREEN_DATA);
print(
  'step',
  'form',
  'log-odds',
  'right',
  'between forms',
  'two scores',
  'nine of ten',
  'agree at',
);
for (const step of [24, 60, 120]) {
  const taught = taughtUpTo(SEQUENCE, step);
  judge(`${step}`, 'nonsense words', (seed) => {
    return makeNonsenseForm({ taught, lexicon, screen }, seed, COUNT).form;
  });
  judge(`${step}`, 'letter sounds', (seed) => makeLetterForm(taught, seed, COUNT).form);
  judge(`${step}`, 'words at sight', (seed) => makeSightForm(taught, seed, COUNT, lexicon).form);
}

function judge(step: string, kind: string, formOf: (seed: number) => CheckForm): void {
  const forms = FORMS.map(formOf);
  for (const middle of MIDDLES) {
    const trials = CLASSES.map((seed) => tryForms({ forms, seed, middle }));
    const said = (of: (trial: Trial) => number) => {
      const all = trials.map(of);
      const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
      return `${mean.toFixed(2)} (${Math.min(...all).toFixed(2)}–${Math.max(...all).toFixed(2)})`;
    };
    print(
      step,
      kind,
      `${middle}`,
      said(({ meanScore }) => meanScore),
      said(({ formDeviation }) => formDeviation),
      said(({ differenceDeviation }) => differenceDeviation),
      said(({ nineOfTen }) => nineOfTen),
      said(({ reliability }) => reliability),
    );
  }
}

function print(...cells: readonly string[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`);
}
