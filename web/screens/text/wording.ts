import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What *Can they read this?* says, file by file. */
export const say = {
  because: {
    aNameOrUnknown: 'a name or unknown word',
    unknownWord: 'unknown word',
    guessedByItsLetters: (what: string, text: string) => `${what}, guessed by its letters: ${text}`,
    taughtAsAWhole: (text: string, step: number) =>
      `${text}; taught as a whole word at step ${step}`,
    unknownWithLetters: 'unknown word, with letters that no card has',
    irregularIsNotSaid: (word: string) => `irregular: ${word} is not said as its parts are`,
    notTaught: (habitName: string) => `${habitName}: not taught`,
    fromStep: (habitName: string, when: number) => `${habitName}: from step ${when}`,
    irregularIsRead: (letters: string) => `irregular: ${letters} is read in a way of its own`,
    irregularIsSilent: (letters: string) => `irregular: ${letters} is silent`,
    irregularSays: (letters: string, soundLabel: string) =>
      `irregular: ${letters} says ${soundLabel}`,
    as: (letters: string, said: string) => `${letters} as ${said}`,
    asIn: (letters: string, keyword: string) => `${letters} as in ${keyword}`,
    isInNoStep: 'is in no step of the order',
    comesAtStep: (step: number) => `comes at step ${step}`,
    wasTakenOut: 'was taken out',
  },
  blocked: {
    everyWordCan: 'Every word can be read',
    word: 'word',
    differentWords: 'different words',
    notYet: (count: string, what: string) => `${count} ${what} not yet`,
    showMore: 'Show more',
    times: (count: number) => `${count} times`,
    irregularWordsInIt: 'Irregular words in it',
    stillNeeded: 'still needed:',
    knownByHeart: 'known by heart:',
    namesAndUnknownWords: 'Names and unknown words',
    guessedByTheirLetters: '(guessed by their letters)',
    andMore: (text: string, more: number) => `${text} and ${more} more`,
  },
  chart: {
    shareThatCan: 'Share that can be read after each step',
    theShareRises: (percent: string, percent2: string, last: number) =>
      `The share rises from ${percent} to ${percent2} at step ${last}. The table below has all steps.`,
    step1: 'step 1',
    step: (last: number) => `step ${last}`,
    yourClass95: (shown: ComponentChild) => sentence`your class ${shown} 95% and 98%`,
    allSteps: 'All steps as a table',
    fromStep: 'From step',
    canBeRead: 'Can be read',
  },
  markedText: {
    theText: 'The text',
    cannotBeReadYet: ': cannot be read yet. Point to a word, or go to it with Tab, to see why.',
    marked: 'Marked',
    showMore: 'Show more',
    theFirstOfWords: (count: string, words: string) =>
      `the first ${count} of ${words} words are here; all are counted`,
  },
  openFile: {
    thisFileIsLarger: 'This file is larger than a long book. Open one chapter of it.',
    thisFileHoldsNo:
      'This file holds no plain text. Save it as .txt and open it again, or copy its words and paste them here.',
  },
  readOtherwise: {
    oneWordIsRead: 'One word is read by what children know besides its cards',
    wordsAreRead: (count: number) =>
      `${count} words are read by what children know besides their cards`,
  },
  textField: {
    aShortText:
      'Ren had a red kite. The wind was strong on the hill, and the kite went up and up. “Hold on!” said Gran. A big gust came. Snap went the string! The kite sailed over the barn and landed in the duck pond. The ducks were not pleased.',
    opened: (name: string) => `Opened ${name}.`,
    yourText: 'Your text',
    typeOrPasteHere: 'Type or paste here',
    openATextFile: 'Open a text file',
    putInASample: 'Put in a sample.',
    tryIt: 'Try it with a short text',
    emptiedTheText: 'Emptied the text.',
    emptyIt: 'Empty it',
  },
  text: {
    isThisTextDecodable: 'Is this text decodable?',
    forAClassTaught: (upTo: number) =>
      `For a class taught up to step ${upTo}. The text stays on this device.`,
    thisTextIsLonger:
      'This text is longer than a chapter book, too long to judge at once. Put in a part of it.',
    judgingTheText: 'Judging the text …',
    stoppedTheText: 'Stopped. Your text is still here, not judged yet.',
    theWordListDid:
      'The word list did not arrive, so nothing can be judged yet. Your text is kept.',
    tryAgain: 'Try again',
    pasteAPage:
      'Paste a page of a book, a passage or your own story. You see at once how much of it your class can read, which words it cannot, and why.',
    fetchingTheWordList: 'Fetching the word list …',
  },
  verdict: {
    howMuchCan: 'How much can be read',
    canBeRead: (strong: ComponentChild) => sentence`${strong} can be read:`,
    word: 'word',
    words: 'words',
    of: (decodable: string, words: string, what: string) => `${decodable} of ${words} ${what}`,
    itIsDecodableNow: (name: string) => `It is ${name} decodable now.`,
    noStep: (name: string) => `No step of the order makes it ${name} decodable.`,
    itIsDecodableBefore: (name: string) => `It is ${name} decodable before the first step.`,
    stepMakesItDecodable: (step: number, what: string, name: string) =>
      `Step ${step}${what} makes it ${name} decodable.`,
  },
};
