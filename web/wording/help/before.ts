import type { Topic } from './topic.ts';

/** The help on what comes before any warm-up: what was taught, in which order, and her settings. */
export const BEFORE: readonly Topic[] = [
  {
    screen: 'learned',
    about:
      'Show how far you have taught. Every warm-up, word list and check is made from that and nothing else.',
    ways: [
      'Drag the line down to the last thing you taught, or tap the number of a step. What stands above the line is taught; nothing below it ever comes up.',
      'Taught one thing early, or skipped one? Tap its card to add it or take it out. The line stays where it is.',
      'A stage that is folded opens with a tap; *Open all stages* shows the whole year.',
      'At the foot you see how many words your class can read by now. *Plan today’s warm-up* takes you on.',
      'Each small group has a line of its own. To change groups, tap the group’s name at the top of the page.',
      'You teach in another order? Choose *Edit the order*.',
    ],
    words: ['card', 'step', 'irregular word'],
  },
  {
    screen: 'order',
    about:
      'The order you teach in. Keep ours, move its steps and stages, or bring the one your school uses.',
    ways: [
      'Drag a stage or a step to another place, or use its arrows. What your class knows never changes when you move things.',
      'Under *Bring your own order* type or paste one step on each line, in your own words: “soft c”, “blends”, “t – the”. Each line is read back to you as cards before anything changes, and a line that is not clear asks one question.',
      '*Save as a file* gives you the order to keep or to pass to a colleague.',
    ],
    words: ['step', 'cluster', 'schwa'],
  },
  {
    screen: 'settings',
    about: 'How Sweepline looks and behaves on this device. Every choice counts at once.',
    ways: [
      '*The sweep* sets how fast the line glides under a word.',
      'Under *Words are blended* choose whether a row opens all at once, one sound at a time, or with the sounds joined.',
      'Under *Words in your class* hide a word, and if you like whatever sounds like it, or allow one that was kept back. The last word is yours.',
    ],
    words: ['sweep', 'sound'],
  },
];
