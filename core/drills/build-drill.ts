import { SHAPES, shapeById } from '../boards/shapes/shape-list.ts';
import { candidates } from '../boards/shapes/shapes.ts';
import { isSightId } from '../language/card-id.ts';
import { isVowelCard } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { makeRandom } from '../random.ts';
import { chooseAuditory } from './auditory.ts';
import { commonnessIn } from './commonness.ts';
import { type DrawnBoard, drawBoard } from './draw-board.ts';
import type { Drill, Shortfall } from './drill.ts';
import { DRILL_DEFAULTS, type DrillEngine, type DrillSpec, practiceOf } from './drill-spec.ts';
import { chooseSight, sightSaid } from './sight.ts';
import { chooseVisual } from './visual.ts';

/** Fewer letters than this seldom make a board worth it (common practice, no source). */
const ENOUGH_LETTERS = 10;

/**
 * Today's drill: visual cards, sounds with all their taught spellings, a board
 * and a run over it. Everything in it was taught; the newest cards come first,
 * then those to practice, and both lie on the board where they fit; what single
 * parts should practice takes their place there. Words known by sight come behind the cards and behind
 * the sounds, as many as are asked for. The same spec and engine give the same drill. Where too little was taught, `shortfall`
 * says so, and the rest is given.
 */
export function buildDrill(spec: DrillSpec, engine: DrillEngine): Drill {
  const taught = spec.taught.correspondences;
  const visual = chooseVisual(
    taught,
    practiceOf(spec, 'visual'),
    spec.visualCount ?? DRILL_DEFAULTS.visualCount,
    makeRandom(spec.seed + 2),
  );
  const auditory = chooseAuditory(
    taught,
    practiceOf(spec, 'auditory'),
    spec.auditoryCount ?? DRILL_DEFAULTS.auditoryCount,
    commonnessIn(engine.lexicon),
    makeRandom(spec.seed + 3),
  );
  const sight = (part: 'visual' | 'auditory', count: number, chance: number) =>
    chooseSight(
      spec.taught.irregularWords,
      practiceOf(spec, part),
      Math.max(count, (spec.pinned?.[part] ?? []).filter(isSightId).length),
      makeRandom(spec.seed + chance),
    );
  const shown = sight('visual', spec.sightCount ?? 0, 4);
  const said = sight('auditory', spec.sightSaidCount ?? 0, 5);
  const drawn = drawBoard(spec, engine);
  return {
    seed: spec.seed,
    visual: [...visual, ...shown],
    auditory: [...auditory, ...said.map((id) => sightSaid(id, engine.lexicon))],
    board: drawn?.board ?? { shape: spec.shape ?? 'syllable', piles: [[], [], []] },
    run: drawn?.run.flips ?? [],
    shortfall: shortfallOf(spec, drawn),
    ...(drawn ? { score: drawn.run.score } : {}),
  };
}

function shortfallOf(spec: DrillSpec, drawn: DrawnBoard | null): Shortfall | null {
  const flips = spec.flips ?? DRILL_DEFAULTS.flips;
  const had = drawn?.run.flips.length ?? 0;
  const missingReal = drawn?.run.missing.real ?? 0;
  const wish = drawn ? openWish(drawn) : null;
  if (had >= flips && missingReal === 0 && wish === null) return null;
  const cards = [...spec.taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
  const usable = SHAPES.some((shape) => candidates(shape, cards).every((pile) => pile.length > 0));
  if (cards.length === 0) {
    return {
      code: 'nothing-taught',
      message:
        'Nothing was taught yet. Say what your class has learned, and the drill is made of it.',
    };
  }
  if (!cards.some(isVowelCard)) {
    return {
      code: 'no-vowel',
      message:
        'No vowel was taught yet, and every word needs one. The cards and sounds are ready; ' +
        'the blending drill begins with the first vowel.',
    };
  }
  const instead = had === 0 ? 'no words yet' : had === 1 ? 'one word' : `${had} words`;
  const letters = new Set(cards.flatMap(({ grapheme }) => [...grapheme.replace('_', '')])).size;
  if (had < flips && (letters < ENOUGH_LETTERS || !usable)) {
    return {
      code: 'few-letters',
      message:
        `With ${letters} ${letters === 1 ? 'letter' : 'letters'} the board makes ${instead}. ` +
        `About ten letters, some of them vowels, are enough for ${flips}.`,
    };
  }
  if (had > 0 && had < flips && shapeById.get(drawn?.board.shape ?? '')?.form === 'beats') {
    return {
      code: 'few-words',
      message:
        `Real words lead on a board of syllables, and few of this kind can be read yet: ${had} flips ` +
        `of the ${flips} asked for. Later steps bring more.`,
    };
  }
  if (had < flips) {
    return {
      code: 'few-words',
      message: `These cards make ${instead} of the ${flips} asked for. More endings or vowels will help.`,
    };
  }
  if (missingReal === 0 && wish !== null) return { code: 'few-words', message: wish };
  const real = drawn?.run.flips.filter(({ kind }) => kind === 'real').length ?? 0;
  return {
    code: 'few-words',
    message: `All ${flips} flips are here, ${real} of them real words: as near to the share you set as these cards come.`,
  };
}

/** What she asked of the run beyond its length and share of real words, and did not get. */
function openWish({ run, contrastsLeftOut }: DrawnBoard): string | null {
  const { focused, contrastTurns } = run.missing;
  if (focused !== 0) {
    const off = Math.abs(focused);
    const words = off === 1 ? '1 word' : `${off} words`;
    return `The cards to practice come in ${words} ${focused > 0 ? 'more' : 'fewer'} than you asked: as near as these cards make.`;
  }
  if (contrastsLeftOut > 0) {
    return 'Not all the look-alikes could be put side by side: too few words differ in just these two cards.';
  }
  if (contrastTurns > 0) {
    return 'The look-alikes are turned one into the other in less than a third of the flips: too few words differ in just these two cards.';
  }
  return null;
}
