/** The terminal program: picks the command, prints its answer, turns failures into exit codes. */
import { board } from './board.ts';
import { cards } from './cards.ts';
import { check } from './check.ts';
import { drill } from './drill.ts';
import { Failure } from './failure.ts';
import { helpFor } from './help.ts';
import { mastery } from './mastery.ts';
import { passage } from './passage.ts';
import { screen } from './screen.ts';
import { sheet } from './sheet.ts';
import { complain, shown } from './shown.ts';
import { slides } from './slides.ts';
import { spell } from './spell.ts';
import { words } from './words.ts';
import { wrote } from './wrote.ts';

const commands = new Map<string, (args: readonly string[]) => string | Promise<string>>([
  ['spell', spell],
  ['words', words],
  ['wrote', wrote],
  ['screen', screen],
  ['passage', passage],
  ['board', board],
  ['drill', drill],
  ['cards', cards],
  ['sheet', sheet],
  ['slides', slides],
  ['check', check],
  ['mastery', mastery],
]);

const USAGE = `sweepline — cards, words and drills in the terminal

  spell WORD…                      how words fall into cards and syllables
  wrote WORD=ATTEMPT…              what a child's spelling shows, sound by sound   [--taught T]
  words --taught T                 words that can be read   [--shape cvc] [--limit N]
  passage FILE --taught T          how much of a text can be read, and why not
  screen < LINES                   judges lines of cards<TAB>sounds
  board --taught T --shape S       the best board   [--begin 8] [--end 8] [--clean] [--strict]
  drill --taught T --seed N        a three-part drill   [--flips 30] [--real 0.5] [--shape S]
  cards --taught T -o FILE.pdf     cards to print   [--kind index|half|desk|strips] [--paper letter|a4]
  sheet KIND --taught T -o FILE.pdf  on paper: plan, board, words, dictation, home or check
  slides --taught T -o FILE.pptx   a run as slides   [--shape S] [--seed N] [--by-sound]
  check make --taught T --seed N   a short check of one child   [--items 30] [--kind K]
  check score FILE                 scores a check as it was read
  mastery --evidence F --now DATE  what each pupil knows, and how sure that is

T is step:24, a list such as a,m,s,t,sh,ea=EH, @file.json, or your own order:
@order.csv, @order.csv:12 for its first twelve steps.
--json prints machine-readable output; docs/cli.md describes it.
COMMAND --help tells all options of a command.`;

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0); // whoever read has seen enough, as `head` does
  complain(`The answer could not be written: ${error.code ?? error.message}.`);
  process.exit(1);
});
process.on('uncaughtException', (error) => {
  complain(saidOf(error));
  process.exit(1);
});

/** What went wrong and was not foreseen, in one line; SWEEPLINE_TRACE=1 tells where. */
function saidOf(error: unknown): string {
  if (process.env.SWEEPLINE_TRACE && error instanceof Error) return String(error.stack);
  const { code, path } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return `There is no ${path ?? 'such file or folder'} any more.`;
  if (code === 'EISDIR') return 'This is a folder. Name a file.';
  if (code === 'ENOSPC') return 'There is no more room on this disk.';
  return `This could not be done: ${error instanceof Error ? error.message : String(error)}`;
}

const [name, ...args] = process.argv.slice(2);
const command = commands.get(name ?? '');
const HELP_OPTIONS = ['--help', '-h'];
const isHelp = name === 'help' || HELP_OPTIONS.includes(name ?? '');
const asksHelp = args.some((arg) => HELP_OPTIONS.includes(arg));
const help = isHelp ? helpFor(args) : asksHelp ? helpFor([name ?? '', ...args]) : null;
if (help !== null) process.stdout.write(`${help}\n`);
else if (name === undefined || (isHelp && args.length === 0)) {
  process.stdout.write(`${USAGE}\n`);
} else if (!command) {
  complain(`There is no command “${isHelp ? args[0] : name}”.\n\n${USAGE}`);
  process.exitCode = 2;
} else {
  try {
    const answer = await command(args);
    if (answer !== '') process.stdout.write(`${shown(answer)}\n`);
  } catch (error) {
    complain(error instanceof Failure ? error.message : saidOf(error));
    process.exitCode = error instanceof Failure ? 2 : 1;
  }
}
