import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What the stage says, to ears and at its edge, file by file. */
export const say = {
  answer: {
    aRealWord: 'a real word',
    aNonsenseWord: 'a nonsense word',
  },
  edge: {
    yourEdge: 'Your edge',
    takeTheLastMark: 'Take the last mark back',
    correctItMyTurn: 'Correct it: my turn, our turn, your turn',
    cardBroke: (place: number) => `Card ${place} broke`,
    heardInstead: (slipShort: string) => `Heard instead: ${slipShort}`,
    other: 'other',
  },
  performance: {
    theStage: 'The stage',
    aLineToWrite: 'A line to write on',
    nothingWasTaughtYet: 'Nothing was taught yet, so there is nothing to show.',
    whatHaveTheyLearned: 'What have they learned?',
    aTapTheSpace: (key: ComponentChild) =>
      sentence`A tap, the space bar or a clicker goes on; ${key} shows all keys.`,
  },
  stage: {
    theWordList: 'The word list is not here yet.',
    backToThePlan: 'Back to the plan',
    thisScreenShows: 'This screen shows the warm-up as soon as your desk begins one.',
    gettingReady: 'Getting ready',
  },
  wallStage: {
    thisScreenShows: 'This screen shows the warm-up as soon as your desk begins one.',
    itKnowsNoNames: 'It knows no names, notes nothing, and forgets the warm-up afterwards.',
    fillTheScreen: 'Fill the screen',
    thisScreenWasTaken: 'This screen was taken out of the class. Nothing of it is kept here.',
    theWarmUp: 'The warm-up is over, and this screen has forgotten it.',
    showAnother: 'Show another',
  },
};
