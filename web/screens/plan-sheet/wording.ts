import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What the plan for a substitute says, file by file. */
export const say = {
  blend: {
    beginnings: 'beginnings',
    vowels: 'vowels',
    endings: 'endings',
    blendingDrill: 'Blending drill',
    pointToEachCard:
      'Point to each card; the children say its sound. Sweep your finger under the row; they read it. Then turn one card. Thumbs up for a real word: those are underlined.',
    pile: (place: number) => `pile ${place}`,
    wordsToBlend: 'Words to blend',
    aRealWord: ', a real word',
  },
  planSheet: {
    planForASubstitute: 'Plan for a substitute',
    todaysWarmUp: 'Today’s warm-up, for someone else to run.',
    back: 'Back',
    slides: 'Slides',
    planOnPaper: 'Plan on paper',
    sayWhatTheyHave: 'Say what they have learned',
    thereIsNothing: (link: ComponentChild) =>
      sentence`There is nothing to run yet. ${link}, and the plan is made of it.`,
    warmUpFor: (forWhom: string) => `Warm-up for ${forWhom}`,
    upToTenMinutes: (dayName: string) =>
      `${dayName}. Up to ten minutes, quick and friendly. All of it was taught: leave out what you like, add nothing.`,
    checkTheBoxWhere: 'Check the box where something broke, and write beside it what you heard.',
    forTheirTeacherWhat: 'For their teacher: what broke, what you heard, who needs more',
    whenSomethingBreaksStop: 'When something breaks, stop and put it right at once',
    myTurn: 'My turn',
    youSayItAlone: 'You say it alone: touch each card, say its sound, sweep, read.',
    ourTurn: 'Our turn',
    youAndTheChildren: 'You and the children say it together, in the same way.',
    yourTurn: 'Your turn',
    theChildrenSay: 'The children say it alone. Go on, and come back to it four words later.',
    theWordListDid:
      'The word list did not arrive. Once it has been loaded, everything works without a network.',
    fetchingTheWordList: 'Fetching the word list …',
  },
  sayCards: {
    visualDrill: 'Visual drill',
    showACard:
      'Show a card and say nothing. The children say the name of its letters, then the sound.',
    aWord:
      ' A word with a thick left edge is read at once, then spelled aloud; dots mark the part to learn by heart.',
    cardsToShow: 'Cards to show',
  },
  saySounds: {
    auditoryDrill: 'Auditory drill',
    sayAWord: 'Say a word in quotation marks: they repeat it, spell it aloud and write it. ',
    sayTheSound: (some: ComponentChild) =>
      sentence`Say the sound and show nothing. The children repeat it and write every spelling they have learned. ${some}Then show these:`,
    soundsToSay: 'Sounds to say',
  },
};
