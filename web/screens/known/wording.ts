import type { ComponentChild } from 'preact';
import { counted } from '../../wording/counted.ts';
import { sentence } from '../../wording/sentence.ts';

/** What *What do they know?* says, file by file. */
export const say = {
  child: {
    readingAlone: 'Reading alone',
    spellingAlone: 'Spelling alone',
    growth: 'Growth',
    inNoSmallGroup: 'in no small group',
    shortCheck: 'Short check',
    lastRead: (when: string) => `, last read ${when}`,
    because: (dueSaid: string, read: string) => `because ${dueSaid}${read}`,
    due: 'Due',
    stumbledAnd: (name: string) =>
      `${name} stumbled, and it was not said at which card: no sound can be told of yet.`,
    nothingWasNoted: (name: string) =>
      `Nothing was noted of ${name} alone yet. Call on ${name} in a warm-up, or take a short check, and it shows here.`,
    whatWasRead:
      'What was read in the last four weeks, and always the last three readings. In about nine of ten cases the true share lies in the range; when a child has just made a leap, in about eight.',
    soundsAsATable: 'Sounds, as a table',
    beyondTheGroupsStep: 'Beyond the group’s step',
    soundsBeyondTheGroups: 'Sounds beyond the group’s step, as a table',
    readAndRightEach: (count: string) => `Read, and right each time: ${count}`,
    theseAsATable: 'These as a table',
    soundsThatWereRight: 'Sounds that were right each time, as a table',
    taughtAndNotYet: (count: string) => `Taught, and not yet seen of this child: ${count}`,
    sounds: (count: number) => counted(count, 'sound'),
    wordsBySight: (words: number) => `${counted(words, 'word')} by sight`,
    and: ' and ',
    atTheBeginning: 'at the beginning',
    inTheMiddle: 'in the middle',
    atTheEnd: 'at the end',
    whereInAWord: 'Where in a word',
    place: 'Place',
    right: 'Right',
    missedThere: 'Missed there',
    of: (right: number, right2: number) => `${right} of ${right2}`,
  },
  classMap: {
    classMap: 'Class map',
    noSoundIsShaky: 'No sound is shaky for any child of this group today. Well taught.',
    noChild:
      'No child of this group has read alone yet. Call on children in a warm-up, and it shows here.',
    lastThreeRightMissed: (lastThree: ComponentChild, lastThree2: ComponentChild) =>
      sentence`last three: ${lastThree} right ${lastThree2} missed`,
    whatWasSaidInstead: 'what was said instead',
    wentWrongNotSaid: 'went wrong, not said where',
    children: (count: number) => counted(count, 'child', 'children'),
    sounds: (count: number) => counted(count, 'sound'),
    notInYourOrder: 'Not in your order',
    shaky: (shaky: number) => `${shaky} shaky`,
    heard: (all: string) => ` Heard: ${all}.`,
  },
  earlier: {
    earlierGroups: 'Earlier groups',
    cameTo: (group: string) => `came to ${group}`,
    left: (group: string) => `left ${group}`,
    wentFromTo: (group: string, group2: string) => `went from ${group} to ${group2}`,
    aGroup: 'a group',
    aGroupThatIsGone: 'a group that is gone',
  },
  group: {
    children: (count: number) => counted(count, 'child', 'children'),
    whatTheyNeedNext: 'What they need next',
    whatTheyHave: 'What they have in common',
    secureOrGrowing: 'Secure or growing for every child',
    noSoundYet: 'No sound yet.',
    secureForSomeShaky: 'Secure for some, shaky for others',
    noSoundPartsThem: 'No sound parts them now.',
    whatWasHeardInstead: 'What was heard instead',
    nothingWasNoted: 'Nothing was noted.',
    whatWasHeardInsteadAsATable: 'What was heard instead, as a table',
  },
  growth: {
    show: 'Show',
    allSounds: 'all sounds',
    nothingWasReadAlone: 'Nothing was read alone here yet. Call on this child in a warm-up.',
    theLineHowMany:
      'The line: how many of the sounds read so far the child is likely to read correctly today; the band: how sure that is. In about nine of ten cases the true number lies in it; when a child has just made a leap, in about eight. Dotted: how many the child has read at all.',
    theLineHowLikely:
      'The line: how likely the child is to read it correctly; the band: how sure that is. In about nine of ten cases the truth lies in it; when a child has just made a leap, in about eight. Dashed: where the words shaky and secure begin.',
    theNumbers: 'The numbers',
    growthAsNumbers: 'Growth, as numbers',
    day: 'Day',
    soundsReadSoFar: 'Sounds read so far',
    likelyRight: 'Likely right',
    atLeast: 'At least',
    atMost: 'At most',
  },
  known: {
    whatDoTheyKnow: 'What do they know?',
    addYourChildren: 'Add your children',
    firstNamesNicknames:
      'First names, nicknames or initials are enough. Then you see here what each child knows, as you mark what breaks.',
    whatHaveTheyLearned: 'What have they learned?',
    sayWhatThisGroup: 'Say what this group has learned, and its sounds stand here.',
    toTodaysWarmUp: 'To today’s warm-up',
    nothingWasNotedYet:
      'Nothing was noted yet. Run a warm-up, call on children, and mark what breaks: a few seconds a day are enough to begin with.',
    addMoreChildren: 'Add more children',
    withOneChildThere:
      'With one child there is nothing to part. Groups are suggested from two children on.',
    putChildren: 'Put children in this group',
    nobodyIs: 'Nobody is in this group yet.',
    thisChildIsNot: 'This child is not in the class any more. What was noted is kept.',
    toTheClassMap: 'To the class map',
    theseArePracticeNotes:
      'These are practice notes, not a diagnosis, and they compare no child with others. Your local rules and licensed specialists decide. They stay on this device.',
    classMap: 'Class map',
    thisGroup: 'This group',
    suggestedGroups: 'Suggested groups',
    whatTheyKnow: 'What they know',
  },
  lastReadings: {
    inACheck: 'in a check',
    andBefore: (earlier: number) => `and ${earlier} before`,
    wentWrongNotSaid: 'went wrong, not said where',
  },
  mapSheet: {
    close: 'Close',
    allAbout: (name: string) => `All about ${name}`,
    practiceNotesNot: 'Practice notes, not a diagnosis.',
    notYetSeen: 'Not yet seen.',
    byWhatTheOthers: 'By what the others do, probably',
    probably: 'Probably',
    thatIsQuiteSure: 'that is quite sure.',
    soFew: 'so few',
    these: 'these',
    anythingFromToWould: (low: number, high: number, what: string) =>
      `anything from ${low} to ${high} would fit ${what} readings.`,
    of10: (strong: ComponentChild, what: string, p: ComponentChild, what2: string) =>
      sentence`${strong} ${what} ${p} of 10; ${what2}`,
    missedItLately: 'Missed it lately',
    rightInAllTheir: 'Right in all their last readings',
    haveNotRead: 'Have not read it alone',
    secureGrowingShakyNot: (secure: number, growing: number, shaky: number, word: number) =>
      `${secure} secure, ${growing} growing, ${shaky} shaky, ${word} not yet seen.`,
  },
  mapTools: {
    findAChild: 'Find a child or a sound',
    sort: 'Sort',
    byNeed: 'by need',
    byName: 'by name',
    asInYourList: 'as in your list',
    sounds: 'Sounds',
    readSoFar: 'read so far',
    shakyForSomeone: 'shaky for someone',
    wordsBySight: 'words by sight',
    allTaught: (count: number) => `all ${count} taught`,
    showEveryoneAgain: 'Show everyone again',
    ofTheChildren: (count: number, count2: number) =>
      `${count} of the children, ${count2} of the sounds`,
    noChildAndNo: (sought: string) => `No child and no sound here begins with “${sought}”.`,
  },
  needs: {
    nothingStandsOutNothing: 'Nothing stands out: nothing was missed lately.',
  },
  nextSteps: {
    theWholeClass: 'the whole class',
    nextSteps: 'Next steps',
    plan: (name: string) => `Plan ${name}`,
    printForTheFamily: 'Print for the family',
    today: 'today',
    on: (dayName: string) => `on ${dayName}`,
    hearReadAgain: (name: string, cards: string, when: string) =>
      `Hear ${name} read ${cards} again ${when}.`,
  },
  parseThresholds: {
    writeTwoWholeNumbers: 'Write two whole numbers from 1 to 99, such as 80 and 60.',
    shakyEndsWhereSecure: (from: number) =>
      `Shaky ends where secure begins at the latest: write ${from} or less there.`,
  },
  ready: {
    readyToMoveOn: 'Ready to move on?',
    nobodyHasReadThem: 'Nobody has read them alone yet: this is what their other cards suggest. ',
    todaysCards: (cards: string, readiness: string, text: ComponentChild, strong: ComponentChild) =>
      sentence`Today’s cards: ${cards}. ${readiness} ${text}${strong}`,
    wouldProbablyNot: 'Would probably not',
    which: 'Which',
    eachAloneProbably: 'each alone probably, all of them probably not',
    andMore: (count: number) => `And ${count} more.`,
    ofTheChildren: 'of the children',
    sure: 'sure',
    yourRule: (share: ComponentChild, sure: ComponentChild) =>
      sentence`Your rule: ${share} ${sure}`,
    aForecast: 'A forecast from what was marked, not a promise.',
  },
  sizes: {
    howManyGroups: 'How many groups and how large',
    groups: 'Groups',
    atMost: 'at most',
    inGroup: (at: number) => `in group ${at}`,
  },
  skill: {
    skill: 'Skill',
    reading: 'reading',
    spelling: 'spelling',
  },
  spellingPanel: {
    spelling: 'Spelling',
    nothingOfSSpelling: (name: string) => `Nothing of ${name}’s spelling was noted yet.`,
    spellingPapers: 'Spelling papers',
    papersWordsOfSounds: (
      papers: number,
      words: number,
      times: number,
      ofSaid: number,
      times2: number,
      ofSaid2: number,
    ) =>
      `${counted(papers, 'paper')}, ${counted(words, 'word')}: ${times} of ${ofSaid} sounds heard, ${times2} of ${ofSaid2} of those spelled as the word has them.`,
    sound: 'Sound',
    hearsIt: 'Hears it',
    knowsTheSpelling: 'Knows the spelling',
    of: (times: number, ofSaid: number) => `${times} of ${ofSaid}`,
    ofHeard: (times: number, ofSaid: number) => `${times} of ${ofSaid} heard`,
    andSoundsMore: (count: number) => `And ${counted(count, 'sound')} more.`,
    nothingFor: (word: string) => `nothing for ${word}`,
    for: (wrote: string, word: string) => `${wrote} for ${word}`,
    wrote: (list: string) => `Wrote ${list}.`,
    missed: (cards: string) => `; missed ${cards}`,
    wroteOfSpellingsRight: (right: number, asked: number, count: ComponentChild) =>
      sentence`Wrote ${right} of ${asked} spellings right in the auditory part${count}.`,
  },
  stands: {
    whoIsLeft: 'Who is left',
    showThem: 'Show them',
    theWholeClass: 'the whole class',
    plan: (name: string) => `Plan ${name}`,
  },
  suggested: {
    suggestedGroups: 'Suggested groups',
    nothingWasNoted: (names: string) =>
      `Nothing was noted of ${names} alone yet: placed as the class goes, for you to move.`,
    makeTheseGroups: 'Make these groups',
    asSuggestedAgain: 'As suggested again',
    seeThem: 'See them',
    theseAreYourGroups: (link: ComponentChild) => sentence`These are your groups now. ${link}`,
    oneTapMakesThem: 'One tap makes them, and one tap undoes it. Each child’s marks go along.',
    asYouMovedThem: 'As you moved them.',
    newGroupsChildrenWho: 'New groups: children who need the same next are put together.',
    keepTheGroups: 'Keep the groups as they are.',
    noChange: (strong: ComponentChild) =>
      sentence`${strong} No change is a clear gain by what was noted.`,
    everyoneElseStaysNo: (strong: ComponentChild) =>
      sentence`${strong} Everyone else stays: no other change is a clear gain.`,
    ofTheDifferencesBetween: (share: string, share2: string) =>
      `${share} of the differences between the children lie between these groups; a plain cut by level has ${share2}. Move anyone; you know more than these notes.`,
    joinsGroup: (said: string, group: number) => `${said} joins group ${group}.`,
    andChangePlaces: (said: string, said2: string) => `${said} and ${said2} change places.`,
    aNewGroup: 'A new group',
    group: (at: number, name: string) => `Group ${at}: ${name}`,
    children: (count: number) => counted(count, 'child', 'children'),
    childrenAlone: 'Children',
    needsNext: 'Needs next',
    nobodyIsInIt: 'Nobody is in it.',
    move: (said: string) => `Move ${said}`,
    noGroup: 'no group',
    isInNowMove: (said: string, what: string) => `${said} is in ${what} now. Move to`,
    groupNumber: (to: number) => `group ${to}`,
  },
  suggestion: {
    madeTheGroups: 'Made the groups.',
  },
  thresholdsForm: {
    yours: ' (yours)',
    secureFromShakyBelow: (percent: string, percent2: string, what: string) =>
      `Secure from ${percent}%, shaky below ${percent2}%${what}`,
    theUsualShares:
      'The usual shares are 80% and 60%, which is common practice. Secure means that even the low end of the likely range reaches its share. You may set your own.',
    changedWhereTheWords: 'Changed where the words begin.',
    secureFrom: 'Secure from',
    shakyBelow: 'Shaky below',
    useThese: 'Use these',
    backToTheUsual: 'Back to the usual shares.',
    backToTheUsualOnes: 'Back to the usual ones',
  },
  year: {
    theYear: 'The year',
    thePaceShowsAfter: 'The pace shows after a week of school days in which this group moved on.',
    stepsInSchoolDays: (steps: number, days: number) =>
      `${counted(steps, 'step')} in ${counted(days, 'school day')}`,
    step: (step: number) => `step ${step}`,
    atThisPace: (said: string, strong: ComponentChild, low: number, high: number, day: string) =>
      sentence`At this pace, ${said}, the group stands at ${strong} (${low}–${high}) by ${day}. A forecast, not a promise.`,
    by: 'By',
    stepAlone: 'Step',
    likelyRange: 'Likely range',
    atStepNothing: (step: number, grade: string) =>
      `At step ${step} nothing is left to teach for the standards of grade ${grade}.`,
    steps: (count: number) => counted(count, 'step'),
    atStepStandards: (step: number, count: number, grade: string, open: string) =>
      `At step ${step}, ${counted(count, 'standard')} of grade ${grade} would still have steps to come: ${open}.`,
    schoolDaysNoWeekends: (count: number) =>
      count === 0
        ? 'School days: no weekends, and no breaks entered yet'
        : `School days: no weekends, without ${counted(count, 'break')} that you entered`,
    whenACard: 'When a card is due, tomorrow’s plan and the year keep to them.',
    lookAheadTo: 'Look ahead to',
    takeOut: 'Take out',
    noSchoolFrom: 'No school from',
    to: 'to',
    add: 'Add',
    until: ' to ',
  },
};
