import { counted } from '../../wording/counted.ts';

/** What *Dictation* says, file by file. */
export const say = {
  dictated: {
    swap: (text: string, isNew: boolean) => (isNew ? `${text} new Swap` : `${text} Swap`),
    new: 'new',
    wasMissed: (lettersShown: string) => `${lettersShown} was missed`,
    swapThisWord: 'Swap this word',
    swapThisSentence: 'Swap this sentence',
    and: ' and ',
    soundsLikeSay: (others: string) => `sounds like ${others}: say it in a sentence`,
    putAnother: 'Put another in its place:',
    thereIsNoOther: 'There is no other with what was taught so far.',
    swapped: (here: string) => `Swapped “${here}”.`,
    tookOut: (here: string) => `Took out “${here}”.`,
    leaveItOutToday: 'Leave it out today',
  },
  dictation: {
    dictation: 'Dictation',
    fetchingWordsAndSentences: 'Fetching words and sentences …',
    theWordsOrSentences:
      'The words or sentences did not arrive. Once they have been loaded, everything works without a network.',
    copy: 'Copy',
    copied: 'Copied.',
    reshuffled: 'Reshuffled.',
    reshuffle: 'Reshuffle',
    readThePapers: 'Read the papers',
    printSheet: 'Print sheet',
    tooLittleWasTaught:
      'Too little was taught for a dictation yet: about ten letters are enough for one.',
    whatHaveTheyLearned: 'What have they learned?',
    words: 'Words',
    howManyWords: 'How many words',
    withWords: (words: number) => `${counted(words, 'word')}.`,
    sentences: 'Sentences',
    howManySentences: 'How many sentences',
    withSentences: (many: number) => `${counted(many, 'sentence')}.`,
    nothingTaughtYet: 'Nothing taught yet.',
    newest: (newest: string) => `; newest: ${newest}`,
    taughtUpToStep: (upTo: number, what: string) => `Taught up to step ${upTo}${what}`,
  },
  writingSheet: {
    name: 'Name',
    date: 'Date',
    linesForWords: 'Lines for words',
    linesForSentences: 'Lines for sentences',
  },
};
