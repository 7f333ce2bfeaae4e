import type { ComponentChild } from 'preact';
import { counted } from '../../wording/counted.ts';
import { sentence } from '../../wording/sentence.ts';

/** What *Pages to hand on* says, file by file. */
export const say = {
  familyNote: {
    choosingWords: 'Choosing words …',
    theSounds: (name: string) =>
      `The sounds that ${name} is sure of, by what was noted, do not make words yet. Take a short check of letter sounds, or call on ${name} in warm-ups; then words stand here.`,
    wordsToRead: 'Words to read',
    otherWords: 'Other words',
    asASheet: 'As a sheet with cards',
    aFriendlyLine: 'A friendly line to the family',
  },
  handover: {
    forTheNextTeacher: (dayName: string) => `For the next teacher, ${dayName}`,
    nothingWasTaught: 'Nothing in the order was taught yet.',
    taughtUpToStep: (upTo: number, count: number, title: string, count2: number, count3: number) =>
      `Taught up to step ${upTo} of ${count}, ${title}: ${counted(count2, 'spelling')} and ${counted(count3, 'irregular word')}.`,
    notYetTaught: (gaps: string) => `Not yet taught of the steps before: ${gaps}. `,
    nextComes: (items: string) => `Next comes ${items}.`,
    nobodyIs: 'Nobody is in this group yet.',
    child: 'Child',
    secure: 'Secure',
    growing: 'Growing',
    shaky: 'Shaky',
    notSeen: 'Not seen',
    practiceFirst: 'Practice first',
    spellingMissed: 'Spelling missed',
    lastCheck: 'Last check',
    whatTheNextTeacher: 'What the next teacher should know',
    shakyMissedInTwo: (share: string) =>
      `Shaky: missed in two of its last three readings, or not yet read right, or missed in one of them and likely below ${share} right; secure: none of the last three missed, and sure by all that was noted; growing: on the way. Counts are of the last four weeks of daily practice and short checks.`,
    of: (kindName: string, right: number, asked: number, when: string) =>
      `${kindName}, ${right} of ${asked}, ${when}`,
  },
  herLine: {
    aLine: 'A line of your own',
  },
  meetingPage: {
    readingSoundsAndSpellings: (dayName: string, group: string, upTo: number, count: number) =>
      `Reading sounds and spellings, ${dayName} · ${group}, step ${upTo} of ${count}`,
    ofTaughtSoFar: (
      taught: string,
      strong: ComponentChild,
      strong2: ComponentChild,
      strong3: ComponentChild,
      strong4: ComponentChild,
      name: string,
    ) =>
      sentence`Of ${taught} taught so far: ${strong} secure, ${strong2} growing, ${strong3} shaky, and ${strong4} not yet seen from ${name} alone.`,
    shaky: 'Shaky',
    growing: 'Growing',
    beyondTheGroupsStep: 'Beyond the group’s step',
    secure: 'Secure',
    nothingIsSureEnough: 'Nothing is sure enough yet to be called secure.',
    notYetSeen: 'Not yet seen',
    everythingTaughtWasSeen: 'Everything you taught was seen.',
    shortChecks: 'Short checks',
    noneYet: 'None yet.',
    whatYouWant: 'What you want to say or ask at the meeting',
    countsAre: (share: string) =>
      `Counts are of the last four weeks, and always of the last three readings. Shaky: missed in two of the last three, or not yet read right, or missed in one of them and likely below ${share} right. Secure: none of the last three missed, and sure by all that was noted. Likely: an estimate. In about nine of ten cases the true share lies in the range, and in about eight when a child has just made a leap; few readings make a wide range.`,
    spellings: (count: number) => counted(count, 'spelling'),
    andWordsBySight: (spellings: string, words: number) =>
      `${spellings} and ${counted(words, 'word')} by sight`,
    andMore: (named: string, more: number) => `${named} and ${more} more`,
    ofSounds: (soundsRight: number, soundsAsked: number) =>
      `, ${soundsRight} of ${soundsAsked} sounds`,
    rightAMinute: (right: number) => `, ${right} right a minute`,
    ofRight: (
      kindName: string,
      when: string,
      right: number,
      asked: number,
      sounds: string,
      rate: string,
      beside: string,
    ) => `${kindName} ${when}: ${right} of ${asked} right${sounds}${rate}.${beside}`,
    nothingIsShaky: 'Nothing taught so far is shaky.',
    nothingRead: 'Nothing taught so far was read alone yet.',
    whatIsShaky: 'What is shaky, as a table',
    shakyAsWell: 'Shaky as well:',
    nothingInBetweenJust: 'Nothing in between just now.',
    unclear: 'unclear',
    of: (right: number, right2: number) => `${right} of ${right2}`,
    bySight: (words: string) => `By sight: ${words}`,
  },
  pages: {
    pagesToHandOn: 'Pages to hand on',
    pages: 'Pages',
    about: 'About',
    eachChildAPage: 'Each child, a page of its own',
    language: 'Language',
    english: 'English',
    spanish: 'Spanish',
    printThesePages: (count: number) => `Print these ${count} pages`,
    printThisPage: 'Print this page',
    aMachineMade:
      'A machine made this Spanish. Have someone who speaks it read the page before you hand it on.',
    youDecideWhatGoes:
      'You decide what goes to whom. Your school’s rules, and laws such as FERPA or the GDPR, say what may be shared.',
    forAMeeting: 'For a meeting',
    forTheFamily: 'For the family',
    forTheNextTeacher: 'For the next teacher',
    whoNeedsWhat: 'Who needs what',
    asTables: 'As tables',
    onePage:
      'One page on a child for a meeting, a note for the family with words that the child can read, and a page for the next teacher. Add the children of your class first.',
  },
  spelling: {
    spellingPapers: 'Spelling papers',
    ofTheSounds: (times: number, ofSaid: number, times2: number, ofSaid2: number) =>
      `Of the sounds that were said, ${times} of ${ofSaid} were heard; of those, ${times2} of ${ofSaid2} were spelled as the word has them.`,
    for: (wrote: string, word: string) => `${wrote} for ${word}`,
    writtenLast: (missed: string) => `Written last: ${missed}.`,
    notHeardSay: (ear: string) => `Not heard: ${ear}. Say the word and count its sounds first.`,
    heardSpelledOtherwise: (spelling: string) => `Heard, spelled otherwise: ${spelling}.`,
  },
  tables: {
    itsColumns: 'Its columns',
    save: (name: string) => `Save ${name}`,
    saveAsCsv: 'Save as CSV',
    children: 'Children',
    whoIs: 'Who is in the class, and in which small group.',
    readings: 'Readings',
    everythingAChildRead:
      'Everything a child read alone, one reading a row, from warm-ups and checks.',
    readTogether: 'Read together',
    whatAGroupRead: 'What a group read or wrote together.',
    whatTheyKnow: 'What they know',
    whatEachChildKnows: 'What each child knows of each card today, and how sure.',
    spellingPapers: 'Spelling papers',
    whatEachChildWrote:
      'What each child wrote, word by word, and what of it was heard and spelled.',
    shortChecks: 'Short checks',
    eachCheck: 'Each check with its score.',
  },
  whoLacks: {
    whoNeedsWhat: (dayName: string) => `Who needs what, ${dayName}`,
    nobodyMissedAnything: 'Nobody missed anything in the last three readings of a card.',
    card: 'Card',
    missedLatelyBy: 'Missed lately by',
    readAloneBy: 'Read alone by',
    of: (name: string, missed: number, asked: number) => `${name} (${missed} of ${asked})`,
    readersOf: (readers: number, count: number) => `${readers} of ${count}`,
    missedLatelyInOne:
      'Missed lately: in one or more of the last three times the child read the card alone. Cards the most children missed come first.',
  },
};
