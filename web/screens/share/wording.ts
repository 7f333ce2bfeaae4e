import type { ComponentChild } from 'preact';
import { counted } from '../../wording/counted.ts';
import { sentence } from '../../wording/sentence.ts';

/** What *Devices and people* says, file by file. */
export const say = {
  addDevice: {
    hasComeIn: (called: string) => `${called} has come in.`,
    addADevice: 'Add a device or a colleague',
    whatItMayDo: 'What it may do',
    itsNameIf: 'Its name, if you like',
    pointItsCamera: 'Point its camera, or type the code',
    lettingItIn: 'Letting it in …',
    letTheOtherDevice: 'Let the other device in',
    makingACode: 'Making a code …',
    showTheCode: 'Show the code',
    thatIsNot: 'That is not a Sweepline code yet. Look again, letter by letter.',
    orTypeTheCode: 'Or type the code that the other device shows',
    letItIn: 'Let it in',
    itComes: 'It comes in as soon as it looks, in a second or two.',
    codeToPoint: 'Code to point a camera at',
    forOneDeviceGood: (timeLeft: ComponentChild) => sentence`For one device, good for ${timeLeft}.`,
    orOpenThisAddress: 'Or open this address there:',
    takeItBack: 'Take it back',
    mySecondDevice: 'My second device',
    aColleague: 'A colleague',
    anAide: 'An aide',
    aSpecialist: 'A specialist',
    theWall: 'The wall',
    theSchool: 'The school',
  },
  begin: {
    shareThisClass: 'Share this class',
    share: (name: string) => `Share “${name}”`,
    betweenDevices: (what: string) => `${what} between devices`,
    planOnYourLaptop:
      'Plan on your laptop, project from the classroom computer, mark on your phone, let an aide take a group: one class, the same everywhere, offline too.',
    sealedBeforeItLeaves: 'Sealed before it leaves.',
    namesMarksAndNotes: (strong: ComponentChild) =>
      sentence`${strong} Names, marks and notes are locked on this device. The server passes them on and cannot read them.`,
    onlyWhomYouLet: 'Only whom you let in.',
    noAccountsAndNo: (strong: ComponentChild) =>
      sentence`${strong} No accounts and no passwords. You see every device, and remove it with one press.`,
    stillYoursWithout: 'Still yours without a network.',
    eachDeviceKeeps: (strong: ComponentChild) =>
      sentence`${strong} Each device keeps the whole class and catches up by itself.`,
    schoolPass: 'School pass',
    xxxxXxxxXxxxXxxx: 'XXXX-XXXX-XXXX-XXXX',
    whatToCall: 'What to call this device',
    sharing: 'Sharing …',
    thePassIsGiven:
      'The pass is given once by whoever looks after computers at your school, and is not needed again. Whether you may share what you note about children is for your school’s rules to say.',
  },
  devices: {
    thisClass: 'this class',
    inNow: (what: string) => `In ${what} now`,
    thisDevice: 'This device',
    theWall: 'The wall',
    aDevice: 'A device',
    rename: (name: string) => `Rename ${name}`,
    renameAlone: 'rename',
    itsName: 'Its name',
    keep: 'Keep',
    inUseNow: 'in use now',
    youAreHere: 'you are here',
    remove: (name: string) => `Remove ${name}`,
    removeAlone: 'Remove',
    hearsAndSendsNothing: (name: string) =>
      `${name} hears and sends nothing more from now on, and clears the class from itself when it is next online. What was marked on it stays with the class.`,
    keepIt: 'Keep it',
    seen: (when: string, timeName: string) => `seen ${when}, ${timeName}`,
  },
  recovery: {
    ifEveryDevice: 'If every device is lost',
    whenEveryDeviceIsGone:
      'When every device is gone, this sheet opens the class again. Nobody can reset it for you. Print it once and lock it away: whoever has it can open the class.',
    makeARecoverySheet: 'Make a recovery sheet',
    toOpenAgain: (name: string) => `To open “${name}” again`,
    madeGoodOncePoint: (date: string, here: string) =>
      `Made ${date}. Good once. Point the camera of a new device here, or open ${here} there, choose “Join a class” and type the letters.`,
    recoveryCode: 'Recovery code',
    keepItLike:
      'Keep it like a key to the classroom. When it is lost, take it back and make another.',
    printTheSheet: 'Print the sheet',
    done: 'Done',
    oneSheetIsOut: 'One sheet is out.',
    sheetsAreOut: (count: number) => `${count} sheets are out.`,
    whatWasPrintedBefore: 'What was printed before opens nothing any more.',
    takeItBack: 'Take it back',
    takeThemBack: 'Take them back',
  },
  school: {
    yourSchoolCanOpen: 'Your school can open this class',
    withTheKey:
      'With the key that it keeps locked away, your school can read everything here, notes included. It changes nothing. Everyone in the class sees this.',
    fingerprint: 'Fingerprint of the key:',
    takeItBack: 'Take the school’s key back',
    whatIsNoted: 'What is noted from then on stays closed to it.',
    mayYourSchool: 'May your school open this class?',
    yourSchoolAsks:
      'Your school asks to be able to open classes, in case a teacher leaves. It could then read everything here, notes included, and change nothing. Everyone in the class would see it, and you can take it back. If you do nothing, your school cannot.',
    askForTheFingerprint:
      'Ask your school for the fingerprint of its key, and agree only if it is the same:',
    letItOpen: 'Let my school open it',
  },
  share: {
    devicesAndPeople: 'Devices and people',
    hereYouOpen:
      'Here you open your class on your other devices and let colleagues in. The sample class is only to look at: go back to your own class to share it.',
    oneMoment: 'One moment …',
  },
  stop: {
    stop: 'Stop',
    leaveWithThisDevice: 'Leave with this device',
    stopSharingForEveryone: 'Stop sharing for everyone',
    thisDeviceGoes:
      'This device goes on with the class as it is now, alone. The others go on together. To come back, it has to be let in again.',
    leave: 'Leave',
    stay: 'Stay',
    staysOnThisDevice: (name: string) =>
      `“${name}” stays on this device. It leaves the server at once, and every other device as soon as that is next online. This cannot be taken back.`,
    stopSharing: 'Stop sharing',
    goOnSharing: 'Go on sharing',
  },
  timeLeft: {
    moreMinutes: (minutes: number) => counted(minutes, 'more minute', 'more minutes'),
    moreSeconds: (seconds: number) => counted(seconds, 'more second', 'more seconds'),
  },
  whereabouts: {
    whatComes: (message: string) =>
      `What comes from your other devices cannot be kept on this one. ${message}`,
    entriesAndCountsNowhere: (count: number, aside: string) =>
      `${counted(count, 'entry', 'entries')} ${aside}, and counts nowhere but where it was made. Everything else goes on.`,
    everythingIs: 'Everything is with your other devices.',
    entriesWait: (unsent: number) =>
      ` ${counted(unsent, 'entry waits', 'entries wait')} to be sent.`,
    theServerIsOut: (waiting: string) =>
      `The server is out of reach just now. Go on as always; this device catches up by itself.${waiting}`,
    catchingUp: (waiting: string) => `Catching up with your other devices …${waiting}`,
    theServerDoesNot:
      'The server does not have this class any more. All of it is here; with a school pass it goes there again.',
    schoolPass: 'School pass',
    sendItAgain: 'Send it again',
  },
};
