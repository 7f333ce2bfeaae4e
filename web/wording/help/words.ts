import type { Topic } from './topic.ts';

/** The help on boards, words, texts, dictation and print. */
export const MAKING: readonly Topic[] = [
  {
    screen: 'board',
    about:
      'Lay a board yourself, or let Sweepline find the best one. Each word it makes is shown as you go, with the reason where one is kept back.',
    ways: [
      '*Make the best board* looks through every choice of cards and keeps the one that makes the most good words. Under *What the best board is for* say whether it is for the screen, which can skip a word, or for paper, which cannot.',
      'Drag a card onto a pile, or tap it. The small numbers say how many words a card would add.',
      'A board you like can be kept under a name, used for today’s blending, or sent as a link.',
    ],
    words: ['board', 'clean board', 'nonsense word'],
  },
  {
    screen: 'words',
    about: 'Find words for any purpose: words your class can read, by shape, by card, or in pairs.',
    ways: [
      'Leave *Only what my class was taught* on, and nothing untaught is listed.',
      '*With the card* lists words that have one card in one place. *Pairs that differ in one card* finds pin and pen.',
      'Tap a word to see its cards, its syllables and a short meaning, and to hide or allow it.',
      '*Copy the list* or *Print sheet* takes the words along.',
    ],
    words: ['decodable', 'closed syllable', 'open syllable'],
  },
  {
    screen: 'text',
    about:
      'Paste a page of a book, a passage or your own story, and see how much of it your class can read.',
    ways: [
      'Paste under *Your text*, or *Open a text file*. Each word that cannot be read yet says what is missing.',
      'You also see after which step of your order the whole text would be readable.',
      'The text stays on this device and goes nowhere.',
    ],
    words: ['decodable'],
  },
  {
    screen: 'dictation',
    about: 'Words and sentences to say while the children write. They use only what was taught.',
    ways: [
      'Tap a word or a sentence to swap it. *Reshuffle* makes a new set.',
      '*Print sheet* makes paper to write on. Afterward, *Read the papers* takes what the children wrote.',
    ],
    words: ['dictation word', 'irregular word'],
  },
  {
    screen: 'print',
    about:
      'Cards, boards, slides, sheets and home practice, as a file of exact size for any printer.',
    ways: [
      'Choose under *What to print*; each picture shows the true page. Below it come only the choices that matter for it.',
      '*Save the PDF* saves the file. Print it at 100%: the small ruler on the page shows whether the size is right.',
      'You print the same thing every week? *Keep these choices* gives them a name, and they are one tap away.',
    ],
    words: ['card', 'keyword', 'clean board'],
  },
];
