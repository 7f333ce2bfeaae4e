import { counted } from '../wording/counted.ts';

/** What stands around every screen: its head, its foot, its news; file by file. */
export const say = {
  app: {
    sweepline: (title: string) => `${title} · Sweepline`,
    everythingStays: 'Everything stays on this device.',
    thisClassIsSealed: 'This class is sealed, and shared with the devices you let in.',
    help: 'Help',
    aboutAndLicenses: 'About and licenses',
  },
  atWork: {
    atWork: 'At work:',
    whoIsAtWork: 'Who is at work',
    turnTo: 'Turn to',
    otherClasses: 'Other classes',
    groupsAndChildren: 'Groups and children',
  },
  broken: {
    somethingWentWrong: 'Something went wrong',
    whatYouEntered:
      'What you entered is still on this device. Try the page again, or go back to the start.',
    tryAgain: 'Try again',
    whatHaveTheyLearned: 'What have they learned?',
    detailsForTechSupport: 'Details for tech support',
  },
  firstRun: {
    yourFirstWarmUp: 'Your first warm-up',
    stepOf3: (number: number) => `Step ${number} of 3.`,
    illFindMyWay: 'I’ll find my way',
  },
  header: {
    sweepline: 'Sweepline',
    menu: 'Menu',
    screens: 'Screens',
    hereToo: 'Here too',
  },
  helpKey: {
    helpOnThisPage: 'Help on this page',
    helpWithKey: 'Help on this page (?)',
  },
  later: {
    oneMoment: 'One moment …',
    thisPageDidNot:
      'This page did not arrive: the network is gone, or a newer Sweepline has taken the place of this one.',
    tryAgain: 'Try again',
    reloadForTheNew: 'Reload for the new version',
  },
  notNoted: {
    thisDeviceRuns:
      'This device runs the desk only, so what you just did was not noted. Lists, notes, and checks are changed on her other devices.',
    thisDeviceReadsAlong: 'This device reads along, so what you just did was not noted.',
    whoeverSharesTheClass: (what: string) => `${what} Whoever shares the class can let it do more.`,
    gotIt: 'Got it',
  },
  opening: {
    yourClassesCannot: 'Your classes cannot be reached yet',
    openingYourClasses: 'Opening your classes …',
    theBrowserDoesNot:
      'The browser does not let Sweepline read what it has saved. Often another Sweepline window is busy with it: close the others and try again. If that does not help, close the browser and open it again.',
    thisTakesLongerThan: 'This takes longer than it should. You can wait, or start without them.',
    tryAgain: 'Try again',
    startWithoutThem: 'Start without them',
    nothingThatIsSaved:
      'Nothing that is saved is touched. What you do without your classes joins them once they can be reached.',
  },
  sharingNews: {
    itIsSharedNo: 'it is shared no more.',
    itWasRemoved: 'it was removed from the class.',
    hasLeftThisDevice: (name: string, what: string) =>
      `“${name}” has left this device: ${what} Nothing of it is kept here.`,
    close: 'Close',
    aWall: 'A wall',
    theSchoolsKey: 'Your school’s key',
    aNewDevice: 'A new device',
    cameIntoThisClass: (names: string) => `${names} came into this class.`,
    seeWho: 'See who is in it',
    gotIt: 'Got it',
    thisDeviceIsNo: (unsent: number) =>
      `This device is no longer in the class, and ${counted(unsent, 'entry', 'entries')} made on it never reached the others. Save a copy for whoever leads the class, then clear it from here.`,
    savedAs: (name: string) => `Saved as ${name}.`,
    saveACopy: 'Save a copy',
    clearIt: 'Clear it from this device',
  },
  undoBar: {
    undo: 'Undo',
  },
  whereabouts: {
    onThisDevice: 'On this device',
    onItsWay: 'On its way',
    withYourOtherDevices: 'With your other devices',
    noLongerSharedHere: 'No longer shared here',
  },
};
