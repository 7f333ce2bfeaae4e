import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What *The order* says, file by file. */
export const say = {
  bring: {
    ourOwnOrder: 'Our own order',
    couldNotBeRead: (name: string) =>
      `“${name}” could not be read. Open it, copy its lines and paste them here.`,
    bringYourOwnOrder: 'Bring your own order',
    oneStepALine:
      'One step a line, in your own words: m a s, or sh, or soft c, or t – the. Every line is read back to you below; nothing changes until you use it.',
    yourOrderOneStep: 'Your order, one step a line',
    chooseAFile: 'Choose a file',
    nowInTheOrder: (name: string) => `Now in the order of ${name}.`,
    useTheseSteps: (count: number) => `Use these ${count} steps`,
    useThisOrder: 'Use this order',
    thisIsFarLonger:
      'This is far longer than an order, so it was not read. Take out what is no part of it.',
    theWordListDid:
      'The word list did not arrive, so your lines cannot be read yet. They are kept here.',
    readingYourLines: 'Reading your lines …',
    theseAreStepsMore: (count: string) =>
      `These are ${count} steps, more than an order has. Take out what is no part of it.`,
    stoppedYourLines: 'Stopped. Your lines are here, and not read.',
    line: 'line',
    lines: 'lines',
    n1Step: '1 step',
    steps: (count: number) => `${count} steps`,
    ofClearUnderstood: (count: number, count2: number, what: string, what2: string) =>
      `${count} of ${count2} ${what} clear; ${what2} understood.`,
    lineWaits: (line: number) => `Line ${line} waits`,
    linesWait: (count: number) => `${count} lines wait`,
    forYouUntilThen: (what: string) =>
      `${what} for you; until then what is unclear stays out of every warm-up.`,
    toLookAt: 'To look at',
    lineNumber: (line: number) => `Line ${line}`,
  },
  flex: {
    wordsSuchAsBasket: 'Words such as basket wait for the vowel that fades.',
    wordsSuchAsBasketCome: 'Words such as basket come with words of two beats.',
    weFlexTheVowel: 'We flex the vowel.',
    inBasketProblem:
      'In basket, problem or seven the last vowel fades. Children who flex try its short sound, then let it fade until they hear the word. On: such words come with words of two beats. Off: they wait for the step of the vowel that fades.',
  },
  missingHabits: {
    yourOrderNeverSays: 'Your order never says when your class begins to read',
    suchWordsUntil: (strong: ComponentChild) =>
      sentence`${strong} such words. Until it does, they stay out of every warm-up.`,
    fromStepOn: (word: ComponentChild, step: number, title: ComponentChild) =>
      sentence`${word}, from step ${step} on (${title})?`,
    wordsSuchAsCome: (example: string, step: number) =>
      `Words such as ${example} come with step ${step}.`,
    yesWordsSuchAs: (example: string) => `Yes, words such as ${example}`,
    fromStepOnWords: (
      strong: ComponentChild,
      word: ComponentChild,
      step: number,
      title: ComponentChild,
      besides: string,
    ) =>
      sentence`${strong}: ${word}, from step ${step} on (${title})? Words such as ${besides} open too.`,
    yes: (rule: string) => `Yes, ${rule}`,
  },
  nameStage: {
    nameOfTheStage: 'Name of the stage',
    keep: 'Keep',
  },
  order: {
    theOrder: 'The order',
    stepsDragAStage: (name: string, count: number) =>
      `${name}, ${count} steps. Drag a stage or a step to where it belongs; everything after it follows.`,
    saveAsAFile: 'Save as a file',
    backToTheBuilt: 'Back to the built-in order.',
    backToTheBuiltInOrder: 'Back to the built-in order',
    done: 'Done',
    ordersYouHadBefore: (count: number) => `Orders you had before (${count})`,
    stepsUntil: (name: string, count: number, kept: string) =>
      `${name}, ${count} steps, until ${kept}`,
    backTo: (name: string) => `Back to ${name}.`,
    takeItUpAgain: 'Take it up again',
  },
  readBack: {
    yourLinesReadBack: 'Your lines, read back',
    showMoreLines: 'Show more lines',
    theFirst: (count: string, count2: string) =>
      `the first ${count} of ${count2} are here; all are read`,
    thisLineTeachesNothing: 'This line teaches nothing. Write a card, such as m, or a word.',
    yourClassReads: (word: ComponentChild) => sentence`Your class reads ${word} from here on.`,
    notYet: 'Not yet',
    didYouMean: 'Did you mean',
    writeACardSh: 'Write a card (sh), a sound (ea as in bread) or a word.',
    weKnowNoCard: (shortened: string, what: string) =>
      `We know no card or word “${shortened}”. ${what}`,
  },
  rearrange: {
    ourOwnOrder: 'Our own order',
  },
  replace: {
    thing: 'thing',
    things: 'things',
    itKnowsMore: (count: number, what: string) => `; it knows ${count} ${what} more`,
    noStepIsWhole: 'no step is whole yet',
    steps1To: (upTo: number) => `steps 1 to ${upTo}`,
    yourClassKnowsWhat: (what: string, beyond: string) =>
      `Your class knows what it knew: ${what}${beyond}.`,
  },
  stageRail: {
    aStage: 'a stage',
    movedWhatYourClass: (stage: string) => `Moved ${stage}; what your class knows stays known.`,
    stages: 'Stages',
    dragOrAlt: 'Drag, or Alt and an arrow, to move it',
    noStage: 'No stage',
    step: 'step',
    steps: 'steps',
    rename: 'Rename',
    theStageIsNow: (name: string) => `The stage is now called ${name}.`,
  },
  stepList: {
    movedStepTo: (number: number, to: number, stays: string) =>
      `Moved step ${number} to ${to}.${stays}`,
    steps: 'Steps',
    newStageHere: 'New stage here',
    step: (number: number, title: string) => `step ${number}, ${title}`,
    theStageBegins: (name: string, number: number) =>
      `The stage ${name} begins with step ${number}.`,
    moveStepUp: (number: number, title: string) => `Move step ${number}, ${title}, up`,
    moveStepDown: (number: number, title: string) => `Move step ${number}, ${title}, down`,
    yourClassHasNot: ' Your class has not had it yet, and it stays so.',
    yourClassKnows: ' Your class knows it, and it stays known.',
  },
};
