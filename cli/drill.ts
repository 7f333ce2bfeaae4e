import { buildDrill } from '../core/drills/build-drill.ts';
import type { Drill } from '../core/drills/drill.ts';
import type { DrillEngine, DrillSpec } from '../core/drills/drill-spec.ts';
import { type CardId, graphemeOf } from '../core/language/card-id.ts';
import { makeSounds } from '../core/language/phonemes.ts';
import type { Taught } from '../core/language/taught.ts';
import { readAim, readCards, readShape } from './board.ts';
import { loadHere, readCard, readNewest, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions, type Typed } from './options.ts';

/** The longest run that may be asked for. */
const MOST_FLIPS = 500;

/** The most words known by sight in a part. */
const MOST_SIGHT = 50;

/** What can be asked of a drill, for every command that makes one. */
export const DRILL_OPTIONS = {
  taught: 'text',
  seed: 'text',
  flips: 'text',
  real: 'text',
  shape: 'text',
  focus: 'text',
  aim: 'text',
  'focus-share': 'text',
  contrast: 'text',
  rise: 'flag',
  sight: 'text',
  'sight-said': 'text',
  accent: 'text',
} as const;

/** `drill --taught T --seed N`: today's three parts. */
export function drill(args: readonly string[]): string {
  const typed = readOptions(args, DRILL_OPTIONS);
  if (typed.words.length > 0) fail(`drill takes options only; “${typed.words[0]}” is none.`);
  const here = loadHere(typed);
  const taught = readTaught(typed.text('taught'), here);
  if (typed.text('seed') === null)
    fail('Give a seed: --seed 7. The same seed gives the same drill.');
  const made = readDrill(typed, taught, here);
  const day = [...readNewest(typed.text('taught')), ...readCards(typed.text('focus'))];
  const shows = flipsWith(made, [...new Set(day)]);
  return typed.flag('json') ? JSON.stringify(drillJson(made, shows)) : drillText(made, shows);
}

/** The drill that was asked for by `DRILL_OPTIONS`; seed 1 when none was given. */
export function readDrill(typed: Typed, taught: Taught, engine: DrillEngine): Drill {
  const shape = typed.text('shape');
  const focus = readCards(typed.text('focus'));
  const contrasts = readContrasts(typed.text('contrast'));
  checkTaught('focus', focus, taught);
  checkTaught('contrast', contrasts.flat(), taught);
  const asksForShare = typed.text('focus-share') !== null;
  if (asksForShare && focus.length === 0) {
    fail('--focus-share says how often the cards of --focus come; name them: --focus sh,th.');
  }
  const spec: DrillSpec = {
    taught,
    newest: readNewest(typed.text('taught')),
    aim: readAim(typed),
    seed: typed.whole('seed', 1, 0, Number.MAX_SAFE_INTEGER),
    flips: typed.whole('flips', 30, 1, MOST_FLIPS),
    realShare: typed.share('real', 0.5),
    ...(shape === null ? {} : { shape: readShape(shape).id }),
    ...(focus.length === 0 ? {} : { focus }),
    ...(asksForShare ? { focusShare: typed.share('focus-share', 1) } : {}),
    ...(contrasts.length === 0 ? {} : { contrasts }),
    rise: typed.flag('rise'),
    sightCount: typed.whole('sight', 0, 0, MOST_SIGHT),
    sightSaidCount: typed.whole('sight-said', 0, 0, MOST_SIGHT),
  };
  return buildDrill(spec, engine);
}

/** Pairs of cards from a list such as `b/d,e/i`; none when it was not typed. */
function readContrasts(text: string | null): readonly (readonly [CardId, CardId])[] {
  return (text ?? '')
    .split(',')
    .filter((part) => part.trim() !== '')
    .map((part) => {
      const [one, other, ...more] = part.split('/').map((card) => card.trim());
      if (!one || !other || more.length > 0) {
        return fail(`--contrast takes two cards with a slash between them: b/d, not “${part}”.`);
      }
      const pair = [readCard(one), readCard(other)] as const;
      const [left, right] = pair.map(graphemeOf);
      if (left === right) {
        fail(`“${part}” are written alike, so that nobody could tell which is meant on a board.`);
      }
      return pair;
    });
}

function checkTaught(option: string, ids: readonly CardId[], taught: Taught): void {
  const unknown = ids.find((id) => !taught.correspondences.has(id));
  if (unknown) fail(`“${unknown}” was not taught; --${option} takes cards that were.`);
}

/** In how many flips a card is shown. */
interface Shown {
  readonly id: CardId;
  readonly flips: number;
}

/** In how many flips each of these cards is shown; those that lie on no pile of the board are left out. */
function flipsWith({ board, run }: Drill, ids: readonly CardId[]): readonly Shown[] {
  return ids
    .filter((id) => board.piles.some((pile) => pile.includes(id)))
    .map((id) => ({ id, flips: run.filter(({ cards }) => cards.includes(id)).length }));
}

function drillJson(
  { seed, visual, auditory, board, run, shortfall, score }: Drill,
  shows: readonly Shown[],
) {
  return {
    seed,
    visual,
    auditory: auditory.map(({ phonemes, spellings }) => ({
      phoneme: makeSounds(phonemes),
      spellings,
    })),
    board: { shape: board.shape, piles: board.piles },
    run: run.map(({ cards, sounds, word, kind }) => ({
      cards,
      sounds: makeSounds(sounds),
      word,
      kind,
    })),
    shows,
    ...(shortfall ? { shortfall: shortfall.message } : {}),
    ...(score ? { score } : {}),
  };
}

function drillText(
  { visual, auditory, board, run, shortfall }: Drill,
  shows: readonly Shown[],
): string {
  const graphemes = (ids: readonly CardId[]) => ids.map(graphemeOf);
  return [
    `visual    ${graphemes(visual).join(' ')}`,
    ...auditory.map(
      ({ phonemes, spellings }) =>
        `auditory  ${makeSounds(phonemes)}: ${graphemes(spellings).join(' ')}`,
    ),
    ...board.piles.map((pile) => `pile      ${graphemes(pile).join(' ')}`),
    ...run.map(({ word, kind }) => `blend     ${word}${kind === 'real' ? '' : ' *'}`),
    ...(shortfall ? ['', shortfall.message] : ['', '* nonsense']),
    ...shows.map(({ id, flips }) => `${flips} of ${run.length} flips show ${graphemeOf(id)}`),
  ].join('\n');
}
