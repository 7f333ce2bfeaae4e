import type { ComponentChild } from 'preact';
import { counted } from '../wording/counted.ts';
import { sentence } from '../wording/sentence.ts';

/** What the controls say wherever they stand, file by file. */
export const say = {
  banner: {
    tryAgain: 'Try again',
    youAreWorkingWithout:
      'You are working without your classes, since what is saved on this device could not be reached. What you do now joins them once it can. To be safe, save a copy as a file before you close this window.',
    close: 'Close',
    oneThingYouEntered:
      'One thing you entered could not be kept on this device and was set aside. Everything else is kept. Save a copy as a file; it holds that too. You also find it on the class page, under Keep it safe.',
    thisBrowserWillNot:
      'This browser will not let Sweepline remember anything just now. Everything works until you close this window; save your order as a file if you changed it.',
    saveTheCopy: 'Save the copy as a file',
    somethingKept:
      'Something kept on this device could not be read, so that part starts fresh. A copy of it was put aside; nothing was thrown away.',
    stillNotSaving: 'Still not saving. You can keep working.',
    itStillDoesNot: 'It still does not answer. What you do goes on meanwhile.',
    oneEntry: 'One entry',
    entries: 'entries',
    thisBrowserLostPart: (count: string) =>
      `This browser lost part of its record of your classes. ${count} came back from the second copy on this device.`,
    justOneEntry: 'one entry',
    was: 'was',
    were: 'were',
    theSecondCopy: (count: string, what: string) =>
      `The second copy on this device had lost ${count}, which ${what} copied again.`,
    oneRecord: 'One record',
    records: 'records',
    onThisDeviceCould: (count: string, what: string) =>
      `${count} on this device could not be read and ${what} set aside.`,
    oneEntryIs: 'One entry is',
    entriesAre: 'entries are',
    toldInTwoWays: (count: string) => `${count} told in two ways on this device; the first stands.`,
    pleaseCheck: 'Please check that your last marks are there, and save a copy as a file.',
    savedAs: (name: string) => `Saved as ${name}.`,
    saveACopy: 'Save a copy',
  },
  checkNote: {
    thisIsForPractice:
      'This is for practice, not a diagnosis: it shows what to practice next, and compares no child with others. For anything more, ask your school’s licensed specialists and follow your local rules.',
  },
  confusionTable: {
    more: (count: number) => `${count} more`,
    card: 'Card',
    heard: 'Heard',
    howOften: 'How often',
    who: 'Who',
    times: (count: number) => counted(count, 'time'),
    allTogether: 'all together',
  },
  controls: {
    showTheButtons: 'Show the buttons',
    theStage: 'The stage',
    sweep: 'Sweep',
    next: 'Next',
    space: 'space',
    back: 'Back',
    skip: 'Skip',
    real: 'Real?',
    spellings: 'Spellings',
    blank: 'Blank',
    glimpse: 'Glimpse',
    takeOverHere: 'Take over here',
    fullScreen: 'Full screen',
    keys: 'Keys',
    close: 'Close',
    leave: 'Leave',
    esc: 'Esc',
    wholeRow: 'Whole row',
    oneSound: 'One sound at a time',
    joinedSounds: 'Joined sounds',
    bySounds: 'By sounds',
    joined: 'Joined',
  },
  copyButton: {
    thisBrowserWouldNot:
      'This browser would not copy. Mark the words with the mouse and press Ctrl+C.',
  },
  end: {
    howItWent: 'How it went',
    backToThePlan: 'Back to the plan',
    thatWas: (blended: number) => `That was ${blended}.`,
    thatWasAll: 'That was all.',
  },
  firstTime: {
    gotIt: 'Got it',
  },
  hidden: {
    wouldBreakASpelling: 'would break a spelling rule',
    soundLikeAReal: 'sound like a real word that is spelled otherwise',
    areFirstNames: 'are first names or slang',
    areRealWords: 'are real words, but said in another way',
    areNotForClass: 'are not for class',
    haveACard: 'have a card that was not taught',
    realWordsAndNonsense: (real: number, nonsense: number) =>
      `${counted(real, 'real word')} and ${nonsense} nonsense can be shown.`,
    yoursToDecide: 'Yours to decide',
    neverShown: 'Never shown',
    spellThemOut: 'Spell them out, for your eyes',
    allowInMyClass: (word: string) => `Allow ${word} in my class`,
    allow: 'Allow',
  },
  keySheet: {
    keysOfThe: (where: string) => `Keys of the ${where}`,
    theCardThatBroke: 'the card that broke; then what was heard instead',
    theWholeWordBroke: 'the whole word broke; then: something else',
    shift: 'shift',
    aCard: 'a card of the word before',
    orTouchACard:
      'Or touch: a card turns it, under the row sweeps, beside the row goes on or back.',
    orTouchACardToMark: 'Or touch a card to mark it. What is not marked went well.',
    close: 'Close',
  },
  lastThree: {
    notRead: 'not read',
  },
  lookAround: {
    makingUpTwelveSchool: 'Making up twelve school weeks …',
    makingTheSampleClass: 'Making the sample class',
    stop: 'Stop',
    lookAround: 'Look around with a sample class',
    theWordListDid:
      'The word list did not arrive, so it could not be made. Try again when you are online.',
    inventedChildrenAndTwelve:
      'Invented children and twelve weeks of warm-ups. It never mixes with yours.',
  },
  noChildren: {
    addChildren: 'Add children',
  },
  notArrived: {
    tryAgain: 'Try again',
  },
  pacedOutcome: {
    readItAfterAll: 'Read it after all',
  },
  sampleBar: {
    thisIsASample: 'This is a sample class.',
    allNamesAreInvented: (strong: ComponentChild) =>
      sentence`${strong} All names are invented. Try anything: nothing here is kept.`,
    backToMyClass: 'Back to my class',
  },
  seenTable: {
    card: 'Card',
    last3: 'Last 3',
    right: 'Right',
    heardInstead: 'Heard instead',
    likelyRightOf10: 'Likely right, of 10',
    of: (right: number, right2: number) => `${right} of ${right2}`,
  },
  turnPicture: {
    myTurn: 'My turn',
    ourTurn: 'Our turn',
    yourTurn: 'Your turn',
  },
  underWay: {
    stop: 'Stop',
  },
  useSaving: {
    makingTheFile: 'Making the file …',
    savedAmongYourDownloads: 'Saved among your downloads.',
    theFileCouldNot: 'The file could not be made. Nothing is lost: try once more.',
  },
};
