import type { Topic } from './topic.ts';

/** The help on the warm-up itself: planned, run, and looked back at. */
export const WARM_UP: readonly Topic[] = [
  {
    screen: 'today',
    about:
      'Today’s warm-up, ready to run: cards to show, sounds to say, and a board to blend on. Under each card stands why it is there today.',
    ways: [
      '*Start on the stage* puts the first card on the screen. *Open the desk* starts it with a second window for you: what comes next, who reads, what broke.',
      'Tap any card, sound or word to swap it, drop it, or pin it so that it comes every day. *Reshuffle* makes a new warm-up from the same wishes.',
      'How many cards, sounds and flips there are is yours to say. *More wishes* lets you ask for one card more often, or for two look-alikes side by side.',
      '*Just looking* runs all of it without noting anything.',
      'A bell rang? Come back and go on at the same word, today or tomorrow.',
      'The list beside it shows your groups in the order of the day, and what each of them still has to do.',
    ],
    words: ['visual drill', 'auditory drill', 'blending drill', 'flip', 'nonsense word', 'pin'],
  },
  {
    screen: 'stage',
    about:
      'What the children see: large letters, vowels in arches, and a line that sweeps under the word. Nothing else.',
    ways: [
      'A tap beside the row, the space bar or a clicker goes on. A tap on a card turns it; a tap or a drag under the row sweeps.',
      'The buttons at your edge are small and quiet, so that the children look at the letters. Rest on one and it says what it does.',
      'A slip? *Correct it* leads from my turn to our turn to your turn.',
      'Press the *?* key for all keys, and Esc to leave. At the end, the day’s cards are put down on the line: one breath, and the warm-up is over.',
    ],
    words: ['sweep', 'flip', 'my turn, our turn, your turn'],
  },
  {
    screen: 'desk',
    about:
      'Your side of the warm-up, on your own screen or phone: what is up, what comes next, who reads, and what broke.',
    ways: [
      '*Open the stage* shows the children’s window; drag that window to the projector. The two go on together.',
      'Tap the card that broke, then what you heard instead. Whatever you do not mark counts as read correctly.',
      'Turn on *Call on children* and each card has a reader, fairly drawn. *Who reads …* lets you name one yourself, or say who is away today.',
      '*Correct it* leads through my turn, our turn, your turn.',
      'The *Skip* and *Blank* buttons pass over one card, or empty the stage for a moment.',
    ],
    words: ['my turn, our turn, your turn', 'flip'],
  },
  {
    screen: 'after',
    about: 'How it went: what held, what broke, who said what, and what comes back next time.',
    ways: [
      'Tap something that broke to change the card, the child, or what you heard. *Add a mark* notes what you remembered later.',
      'Under *Next time brings back* you see what the next warm-up will practice because of today.',
      'A line in *Your note* stays with this warm-up.',
      '*Take it out of the record* is for a warm-up that should not count. You can put it back.',
    ],
    words: ['shaky', 'secure'],
  },
  {
    screen: 'plan',
    about: 'Today’s warm-up on paper, for someone who has never run one. It needs no computer.',
    ways: [
      '*Plan on paper* makes the pages to print: what to show, what to say, what to do when something breaks.',
      '*Slides* makes a presentation of the same warm-up for any projector.',
      'At the end there is room for your substitute to write down what broke.',
    ],
    words: ['visual drill', 'auditory drill', 'blending drill'],
  },
];
