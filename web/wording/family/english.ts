import type { FamilyWords } from './family-words.ts';

/** The family note in English. */
export const ENGLISH: FamilyWords = {
  tag: 'en-US',
  title: (name) => `Reading at home with ${name}`,
  intro:
    'In school we practice reading by sounds for a few minutes every day. Five minutes at home help a great deal.',
  aboutWords: () => '',
  canRead: (name) => `Words that ${name} can read`,
  toTry: 'Words to try',
  together: 'To read together',
  practicing: 'What we are practicing now',
  toWrite: 'Words to write together',
  howToWrite: (name) =>
    `Say the word slowly. ${name} says each sound, writes it, and then looks at the word above.`,
  howTo: 'How to practice',
  steps: (name) => [
    `${name} points to each letter or pair of letters, says its sound, then runs a finger under the word and says it.`,
    `If a word goes wrong, say it yourself, then say it together, then let ${name} say it alone.`,
    'Stop while it is still fun, and say what went well.',
  ],
  machineMade: '',
};
