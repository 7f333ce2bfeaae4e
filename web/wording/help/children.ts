import type { Topic } from './topic.ts';

/** The help on everything about children: who they are, what they know, and what goes to others. */
export const CHILDREN: readonly Topic[] = [
  {
    screen: 'class',
    about:
      'Your children and your small groups. A warm-up needs no names; with them, Sweepline calls on everyone in turn and remembers who needs what.',
    ways: [
      'Under *Add children* type first names, one after another, or paste a whole list. Under *Bring a class list* a spreadsheet or a roster file does it.',
      'Drag a name onto a group, or tap the name. A new group begins where the whole class stands and goes its own way from there.',
      'In *Names in order* choose how names are listed everywhere: by alphabet, by seat, or as you typed them.',
    ],
    words: ['step'],
  },
  {
    screen: 'known',
    about:
      'What your children know, and how sure that is. It starts with the sentences worth saying aloud; below them stands a map of every child and card.',
    ways: [
      'The *Class map* has a row for each child and a column for each card. Tap a square: you see the last readings word by word, and what was heard instead.',
      '*Sort by* need puts first whoever needs you first.',
      '*This group* tells what the group needs next, and whether it is ready to move on. *Suggested groups* puts together children who need the same thing.',
      'What was seen always stands first, such as right 4 of 7. Then comes how sure it is. With few readings it says so.',
      'Where a range is given, the truth lies in it about nine times of ten. A child who has just grown in a leap is often better than its range: three new readings of a card tell.',
    ],
    words: ['secure', 'growing', 'shaky', 'not yet seen'],
  },
  {
    screen: 'papers',
    about:
      'Type what children wrote, and see two things that are easily mixed up: did they hear the sound, and do they know its spelling?',
    ways: [
      'Enter *The words you said* and begin the pile. Type each child’s word as it stands on the paper; it is read back at once, card by card.',
      'If it was meant otherwise, choose another reading. You can leave a pile half read and come back to it.',
      'At the end you see which slips matter next, and who shares them.',
    ],
    words: ['sound', 'cluster', 'digraph'],
  },
  {
    screen: 'check',
    about:
      'One child reads to you for a minute, and you see which sounds are sure. It is practice, not a test or a diagnosis.',
    ways: [
      'Choose *Who reads* and *What*, then *Begin*. The child reads from paper or from a second window; you tap what went wrong.',
      'When the minute is over, tap the last one that was read. The score shows what was right of what was read.',
      'Each check is a new form, so nobody learns it by heart. Two checks side by side say whether the difference is more than chance.',
    ],
    words: ['nonsense word', 'word by sight'],
  },
  {
    screen: 'share',
    about:
      'Use your class on several devices, or let a colleague in. This needs a server at your school; without one, nothing here is needed.',
    ways: [
      'Whoever looks after the computers at your school gives you a school pass. Enter it once, and your class is sealed on your device before any of it leaves.',
      'A code lets another device in, with the rights you choose. You can remove a device at any time.',
      'Offline, everything goes on and catches up later.',
    ],
    words: [],
  },
  {
    screen: 'join',
    about: 'Bring this device into a class that is already on another one.',
    ways: [
      'On the device that has the class, open Children, then Devices, and let it show a code. Type that code here. It is good for ten minutes.',
    ],
    words: [],
  },
  {
    screen: 'pages',
    about:
      'Pages to hand on: for a meeting, for the family, for next year’s teacher. Each opens with one sentence made from what you marked.',
    ways: [
      '*For the family* has words this child can read, and how to practice for five minutes at home, in English or in Spanish.',
      '*For a meeting* shows what is secure, growing and shaky, with the counts behind it.',
      '*For the next teacher* lists the whole class, and *Who needs what* the cards that children missed lately, with their names. *As tables* gives everything to a spreadsheet.',
      'Add *A line of your own*, then *Print this page*. You decide what goes to whom.',
    ],
    words: ['secure', 'growing', 'shaky'],
  },
];
