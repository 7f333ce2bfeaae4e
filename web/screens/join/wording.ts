/** What *Join a class* says, file by file. */
export const say = {
  join: {
    comingIn: 'Coming in …',
    theClass: 'The class is on its way to this device. This takes a few seconds.',
    youAreIn: (classSaid: string) => `You are in ${classSaid}`,
    itStays: 'It stays on this device, offline too, and catches up by itself.',
    todaysWarmUp: 'Today’s warm-up',
    beTheStage: 'Be the stage',
    joinAClass: 'Join a class',
    onADevice:
      'On a device that is in the class, open Children, then Devices, and choose what this one may do. Point this device’s camera at the code there, or type what stands beside it.',
    thatIsNoCode: 'That is not a Sweepline code yet. Look again, letter by letter.',
    theCode: 'The code',
    comeIn: 'Come in',
  },
  knock: {
    theTenMinutes: 'The ten minutes are over.',
    orLetAPhone: 'Or let a phone that is in the class let this screen in',
    codeToPoint: 'Code to point the phone’s camera at',
    pointThePhonesCamera:
      'Point the phone’s camera here, or type these letters on its page Devices. Waiting …',
    showACode: 'Show a code on this screen',
  },
};
