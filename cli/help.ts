/** What one command is for: how it is typed, what it does, and each of its options with what it means. */
export interface CommandHelp {
  readonly typed: string;
  readonly does: string;
  readonly options: readonly (readonly [option: string, meaning: string])[];
}

type Options = CommandHelp['options'];

const JSON_OUT: Options = [['--json', 'machine-readable output; docs/cli.md describes it']];
const TAUGHT: Options = [
  ['--taught T', 'what was taught: step:24, a list, @order.csv or @file.json'],
];
const ACCENT: Options = [
  [
    '--accent A',
    'how a class speaks: pin-pen,r-dropped or southern-british; American when left out',
  ],
];
const SEED: Options = [['--seed N', 'a whole number; the same one gives the same']];
const BOARD: Options = [
  ['--shape S', 'the kind of board, such as syllable or closed'],
  ['--begin N', 'the most cards in the first pile'],
  ['--middle N', 'the most vowels'],
  ['--end N', 'the most cards in the last pile'],
  ['--pin a,b', 'cards that must lie on it'],
  ['--ban c', 'cards that must not'],
  ['--focus d', 'cards whose words count threefold'],
  ['--aim A', 'what it is best for: today, most-words or review; today when left out'],
  ['--broken e,f', 'cards that broke lately'],
];
const ALL_BOARD: Options = [
  ...BOARD,
  ['--clean', 'no combination is stopped or untaught'],
  ['--strict', 'beyond that, none breaks a spelling rule, is a name or sounds like another word'],
];
const DRILL: Options = [
  ['--flips N', 'how many words to blend; 30 when left out'],
  ['--real 0.5', 'the share of real words, from 0 to 1'],
  ['--shape S', 'the kind of board'],
  ['--focus a,b', 'cards that come often'],
  ['--aim A', 'what it is best for: today, most-words or review; today when left out'],
  ['--focus-share 0.5', 'how often, from 0 to 1'],
  ['--contrast b/d', 'cards turned one into the other, in a third of the flips'],
  ['--rise', 'easy words first'],
  ['--sight N', 'how many words known by sight are shown; 4 when left out'],
  ['--sight-said N', 'how many of them are said and spelled; 2 when left out'],
];
const WORDS: Options = [
  ['--shape cvc', 'only words of this shape'],
  ['--card sh', 'only words with this card'],
  ['--place P', 'where in the word: beginning, middle, ending or anywhere'],
  ['--syllables N', 'only words of so many syllables'],
  ['--irregular', 'also words read by heart'],
  ['--asked', 'also words that are yours to decide'],
  ['--limit N', 'so many at most'],
];
const SHEET: Options = [
  ['--paper letter|a4', 'the paper; letter when left out'],
  ['--grey', 'for a gray printer'],
  ['-o, --out FILE.pdf', 'the file to write'],
];
const DICTATED: Options = [
  ['--words N', 'how many words'],
  ['--sentences N', 'how many sentences'],
];
const ITEMS: Options = [
  ['--items N', 'how many words or letters'],
  ['--kind K', 'nonsense-words, letter-sounds or sight-words'],
];

const sheetHelp = (kind: string, does: string, options: Options): [string, CommandHelp] => [
  `sheet ${kind}`,
  {
    typed: `sheet ${kind} --taught T -o FILE.pdf`,
    does,
    options: [...TAUGHT, ...options, ...ACCENT, ...SHEET, ...JSON_OUT],
  },
];

/** Every command by its name; where a second word says what is wanted, by both. */
export const HELP: ReadonlyMap<string, CommandHelp> = new Map<string, CommandHelp>([
  [
    'spell',
    {
      typed: 'spell WORD…',
      does: 'How words fall into cards and syllables.',
      options: [...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'wrote',
    {
      typed: 'wrote WORD=ATTEMPT…',
      does: 'What a child’s spelling shows, sound by sound. Without words it reads lines of WORD=ATTEMPT.',
      options: [...TAUGHT, ...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'words',
    {
      typed: 'words --taught T',
      does: 'Words that can be read.',
      options: [
        ...TAUGHT,
        ...WORDS,
        ['--contrast i/e', 'pairs that differ only in these two cards'],
        ...ACCENT,
        ...JSON_OUT,
      ],
    },
  ],
  [
    'screen',
    {
      typed: 'screen < LINES',
      does: 'Judges lines of cards, a tab and sounds.',
      options: [...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'passage',
    {
      typed: 'passage FILE --taught T',
      does: 'How much of a text can be read, and why not the rest.',
      options: [...TAUGHT, ...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'board',
    {
      typed: 'board --taught T --shape S',
      does: 'The best board, proven.',
      options: [
        ...TAUGHT,
        ...ALL_BOARD,
        ['--model', 'adds what was solved, for another solver'],
        ...ACCENT,
        ...JSON_OUT,
      ],
    },
  ],
  [
    'drill',
    {
      typed: 'drill --taught T --seed N',
      does: 'A three-part drill.',
      options: [...TAUGHT, ...SEED, ...DRILL, ...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'cards',
    {
      typed: 'cards --taught T -o FILE.pdf',
      does: 'Cards of true size to print and cut.',
      options: [
        ...TAUGHT,
        ...BOARD,
        ['--steps 20-24', 'the cards of these steps in place of all that was taught'],
        ['--sight', 'the words known by sight in their place'],
        ['--own said,was', 'cards with texts of your own'],
        ['--blank N', 'empty cards to write on'],
        ['--kind K', 'index, half, desk or strips'],
        ['--holes 2|3|4', 'the rings of the binder, for strips'],
        ['--pictures', 'the keyword with its picture'],
        ['--backs', 'what you say, on the back'],
        ['--turn long|short', 'the edge along which your printer turns sheets'],
        ...ACCENT,
        ...SHEET,
        ...JSON_OUT,
      ],
    },
  ],
  sheetHelp('plan', 'A warm-up on paper, for you or a substitute.', [
    ...SEED,
    ...DRILL,
    ['--for NAME', 'for whom it is'],
  ]),
  sheetHelp('board', 'Which card lies in which pile, and the words they make.', ALL_BOARD),
  sheetHelp('words', 'Words to read.', WORDS),
  sheetHelp('dictation', 'A dictation, with a page of lines for each child.', [
    ...SEED,
    ...DICTATED,
  ]),
  sheetHelp('home', 'Home practice, five minutes of it.', [...SEED, ...DICTATED]),
  sheetHelp('check', 'A short check of one child: its page and yours.', [...SEED, ...ITEMS]),
  [
    'slides',
    {
      typed: 'slides --taught T -o FILE.pptx',
      does: 'A run as slides for any projector.',
      options: [
        ...TAUGHT,
        ...SEED,
        ...DRILL,
        ['--by-sound', 'one sound at a time'],
        ['--build', 'a slide for each click, where a program shows nothing moving'],
        ['--screen 16:9', 'or 4:3'],
        ...ACCENT,
        ['-o, --out FILE.pptx', 'the file to write; FILE.odp for OpenDocument'],
        ...JSON_OUT,
      ],
    },
  ],
  [
    'check make',
    {
      typed: 'check make --taught T --seed N',
      does: 'A short check of one child.',
      options: [...TAUGHT, ...SEED, ...ITEMS, ...ACCENT, ...JSON_OUT],
    },
  ],
  [
    'check score',
    {
      typed: 'check score FILE',
      does: 'Scores a check as it was read.',
      options: [
        [
          '--rows each|one',
          'whether each item of a skipped row counts as wrong, or the row as one',
        ],
        ['--before EARLIER', 'an earlier check of this child to compare with'],
        ...JSON_OUT,
      ],
    },
  ],
  [
    'mastery',
    {
      typed: 'mastery --evidence FILE.csv --now DATE',
      does: 'What each pupil knows, and how sure that is.',
      options: [
        ['--evidence FILE.csv', 'what was read, a line each'],
        ['--now DATE', 'the day it is said for, as 2026-03-09'],
        ['--by card|place|habit', 'what it is told by; card when left out'],
        ['--secure 0.8', 'secure from this share'],
        ['--shaky 0.6', 'shaky below this share'],
        ['--off DAYS', 'days without school'],
        ['--confusions', 'what was heard instead, too'],
        ...JSON_OUT,
      ],
    },
  ],
]);

/** The help of a command as text; of one whose second word says what is wanted, all of them. Null for an unknown one. */
export function helpFor(words: readonly string[]): string | null {
  const [name = '', second = ''] = words;
  const exact = HELP.get(`${name} ${second}`) ?? HELP.get(name);
  if (exact) return helpText(exact);
  const those = [...HELP].filter(([key]) => key.startsWith(`${name} `));
  return those.length === 0 ? null : those.map(([, help]) => helpText(help)).join('\n\n');
}

function helpText({ typed, does, options }: CommandHelp): string {
  const wide = Math.max(...options.map(([option]) => option.length));
  const lines = options.map(([option, meaning]) => `  ${option.padEnd(wide)}  ${meaning}`);
  return [`${typed}\n${does}\n`, ...lines].join('\n');
}
