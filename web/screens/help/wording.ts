/** What the help says around its topics, file by file. */
export const say = {
  help: {
    help: 'Help',
    lookFor: 'Look for',
    nonsenseWords: 'nonsense words',
    showMeTwoMinutes: 'Show me: two minutes',
    printTheGuide: 'Print the guide',
    onAnyPagePress:
      'On any page, press ? for the help on that page. All of it works without a network.',
    contents: 'Contents',
    yourFirstHour: 'Your first hour',
    words: 'Words',
    nothingHasAll: 'Nothing has all of these words. Try fewer, or a part of one.',
    page: 'page',
    pages: 'pages',
    word: 'word',
    wordsFound: 'words',
    and: ' and ',
  },
  panel: {
    wordsYouMeetHere: 'Words you meet here',
    nothingNeedsExplainingHere: 'Nothing needs explaining here.',
    close: 'Close',
    allHelp: 'All help',
  },
  picture: {
    withASampleClass: (title: string) => `“${title}” with a sample class`,
  },
  walk: {
    fromTheFirstVisit:
      'From the first visit to a page for a family: these choices, and no others, are needed. Leave out what you do not want.',
  },
  wordList: {
    ourWord: '(our word)',
  },
};
