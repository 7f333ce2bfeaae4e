import type { ComponentChild } from 'preact';
import { counted } from '../../wording/counted.ts';
import { sentence } from '../../wording/sentence.ts';

/** What *Find words* says, file by file. */
export const say = {
  cardChoice: {
    noneChosen: 'none chosen',
    choose: 'choose',
    lettersOfTheCard: 'Letters of the card',
    letters: 'letters',
    anyCard: 'Any card',
    noTaughtCardHas: 'No taught card has these letters.',
    noCardHasThese: 'No card has these letters.',
  },
  filters: {
    anywhere: 'anywhere',
    atTheBeginning: 'at the beginning',
    inTheMiddle: 'in the middle',
    atTheEnd: 'at the end',
    whatToLookFor: 'What to look for',
    onlyWhatMyClass: 'Only what my class was taught',
    irregularWordsToo: 'Irregular words too',
    shape: 'Shape',
    anyShape: 'any shape',
    moreToAskFor: 'More to ask for',
    syllables: 'Syllables',
    anyNumber: 'any number',
    withTheCard: 'With the card',
    whereTheCardStands: 'Where the card stands',
    pairsThatDiffer: 'Pairs that differ in one card',
    firstCard: 'First card of the pair',
    and: 'and',
    secondCard: 'Second card of the pair',
    order: 'Order',
    commonestFirst: 'commonest first',
    easiestFirst: 'easiest first',
    byTheAlphabet: 'by the alphabet',
    withTheLetters: 'With the letters',
    alsoWords: 'Also words that are yours to decide',
    beginAgain: 'Begin again',
  },
  wordList: {
    found: (shown: ComponentChild, count: number, paired: boolean) =>
      paired
        ? sentence`${shown} ${count === 1 ? 'pair' : 'pairs'}`
        : sentence`${shown} ${count === 1 ? 'word' : 'words'}`,
    wordsFound: 'Words found',
    counting: 'Counting …',
    theFirstHere: (count: number) => `, the first ${count} here`,
    copyTheList: 'Copy the list',
    copied: (count: number, paired: boolean) =>
      `${counted(count, paired ? 'pair' : 'word')} copied.`,
    printSheet: 'Print sheet',
    pairsList: 'Pairs',
    wordsList: 'Words',
    showMore: 'Show more',
  },
  wordSheet: {
    closed: 'closed',
    open: 'open',
    silentE: 'silent e',
    vowelTeam: 'vowel team',
    vowelWithR: 'vowel with r',
    consonantLe: 'consonant-le',
    ofNoTaughtType: 'of no taught type',
    it: (reason: string) => `it ${reason}`,
    yoursToDecide: (what: ComponentChild) => sentence`Yours to decide: ${what}.`,
    youAllowed: 'You allowed it in your class.',
    allowInMyClass: 'Allow in my class',
    neverInMyClass: 'Never in my class',
    close: 'Close',
    alsoSaid: (sounds: string) => `Also said ${sounds}:`,
    irregular: ', irregular',
    irregularPart: (strong: ComponentChild, saying: string) =>
      sentence`Irregular: ${strong} ${saying}.`,
    oneSyllableOfNo: 'one syllable, of no taught type',
    oneSyllable: (name: string) => `one syllable: ${name}`,
    isSilent: 'is silent',
    says: (soundLabel: string) => `says ${soundLabel}`,
  },
  words: {
    findWords: 'Find words',
    everyWordFit: 'Every word fit for class, taken apart into its cards.',
    fetchingTheWordList: 'Fetching the word list …',
    theWordListDid:
      'The word list did not arrive. Once it has been loaded, everything works without a network.',
    tryAgain: 'Try again',
    nothingWasTaughtYet:
      'Nothing was taught yet, so there is nothing to read. Show how far your class has come, or look among all words.',
    whatHaveTheyLearned: 'What have they learned?',
    lookAmongAllWords: 'Look among all words',
    noSuchWordCan:
      'No such word can be read with what was taught so far. Ask for less, or look among all words.',
    thereIsNoSuch: 'There is no such word. Ask for less.',
    beginAgain: 'Begin again',
  },
};
