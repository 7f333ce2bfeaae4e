import type { ComponentChild } from 'preact';
import { sentence } from '../../wording/sentence.ts';

/** What *About* says, file by file. */
export const say = {
  about: {
    aboutSweepline: 'About Sweepline',
    sweeplineIs:
      'Sweepline is for the ten minutes that start a reading lesson. It plans your daily phonics warm-up from what your class has learned and from nothing else, puts it on the wall, and remembers what needs more practice, so that you can look at your children and not at a screen.',
    help: 'Help',
    newHereHas: (link: ComponentChild) =>
      sentence`New here? ${link} has a page about every screen.`,
    yourChildrensNames: 'Your children’s names and marks',
    children: 'Children',
    class: 'Class',
    whatYouEnterStays: (word: ComponentChild, word2: ComponentChild) =>
      sentence`What you enter stays on this device, unless you share a class with devices you choose. There is no account and no advertising, nobody counts what you do, and no other site is asked for anything. If you clear this browser’s data, it is gone from here too, so save a copy now and then (${word}, then ${word2}).`,
    whatItIsNot: 'What it is not',
    aWarmUp:
      'A warm-up is practice. Sweepline does not screen for or diagnose dyslexia or any disability. If a child worries you, talk to your school’s specialists. For children’s records, follow your school’s rules; laws such as FERPA, COPPA or GDPR often stand behind them.',
    theWords: 'The words',
    everyWordIsChecked:
      'Every word is checked for the classroom by its spelling and by its sound, and real words are told from nonsense by a dictionary. No list is perfect. The last word is yours: you can swap any word, hide it, or allow it.',
    whatChanged: 'What changed',
    licenses: 'Licenses',
    sweeplineIsFreeSoftware:
      'Sweepline is free software under the MIT license: use it, copy it, change it. It rests on the work of the people named here, with thanks.',
  },
  whatChanged: {
    thisIsVersion: (built: string) => `This is version ${built}.`,
    newSince: (built: string) => `New since ${built}`,
    whatBrought: (version: string) => `What ${version} brought`,
  },
};
