import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What *What have they learned?* says, file by file. */
export const say = {
  foot: {
    nothingTaughtYetMove: 'Nothing taught yet: move the line to the last thing you taught.',
    planTodaysWarmUp: 'Plan today’s warm-up',
    theWordListDid: 'The word list did not arrive, so the words cannot be counted yet.',
    fetchingTheWordList: 'Fetching the word list …',
    canBeReadNow: (strong: ComponentChild) => sentence`${strong} can be read now`,
    theNextStepOpens: (strong: ComponentChild) => sentence`; the next step opens ${strong} more.`,
    n1Word: '1 word',
    words: (words: string) => `${words} words`,
  },
  gaps: {
    notYetTaughtAbove: 'Not yet taught above the line',
    aboveTheLineNot: 'Above the line, not yet taught.',
    whenYourClassHas: (strong: ComponentChild) =>
      sentence`${strong} When your class has had one of these, say so here.`,
    taughtNow: (number: number, title: string) => `${number}. ${title}: taught now`,
    taught: (title: string) => `Taught ${title}.`,
  },
  learned: {
    taughtUpToStep: (number: number) => `Taught up to step ${number}.`,
    whatHaveTheyLearned: 'What have they learned?',
    moveTheLineDown: 'Move the line down as you teach. Tap a card to add or take out a single one.',
    foldTheStages: 'Fold the stages',
    openAllStages: 'Open all stages',
    editTheOrder: 'Edit the order',
    added: (itemShort: string) => `Added ${itemShort}.`,
    tookOut: (itemShort: string) => `Took out ${itemShort}.`,
    nothingYet: 'Nothing yet',
    stepOf: (upTo: number, count: number, items: string) => `Step ${upTo} of ${count}: ${items}`,
  },
  stageRow: {
    added: ', added',
    takenOut: ', taken out',
    taughtUpToStep: (number: number, title: string) => `Taught up to step ${number}, ${title}`,
    n1Step: '1 step',
    steps: (all: number) => `${all} steps`,
    toCome: (steps: string) => `${steps} to come`,
    allTaught: (steps: string) => `${steps}, all taught`,
    ofTaught: (done: number, steps: string) => `${done} of ${steps} taught`,
  },
  stages: {
    kindergarten: 'Kindergarten',
    grade: (first: string) => `Grade ${first}`,
    kindergartenToGrade: (last: string) => `Kindergarten to grade ${last}`,
    gradesTo: (first: string, last: string) => `Grades ${first} to ${last}`,
  },
  taughtLine: {
    taughtUpToHere: 'Taught up to here',
    toHere: 'to here',
    taughtUp: (word: ComponentChild) => sentence`taught up ${word}`,
  },
  welcome: {
    aDailyReadingWarm: 'A daily reading warm-up, made of what you have taught',
    showACardHear:
      'Show a card, hear a sound, blend a word: about ten minutes, and nothing your class has not learned.',
    startWithMyClass: 'Start with my class',
    aboutTwoMinutesNo: 'About two minutes. No names needed, no account.',
    bringInASaved: 'Bring in a saved copy',
    joinAClass: 'Join a class',
  },
};
