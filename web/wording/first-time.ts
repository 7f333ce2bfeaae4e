/** What is told of a thing the first time that it is met: one line. */
export const FIRST_TIME = {
  flip: 'A flip turns one card, so each word differs from the last in one place. The underlined ones are real words; the others are nonsense on purpose, so they must be sounded out.',
  'clean board':
    'On a clean board you can turn any card at any time: no row makes a word you would regret. Cards on paper need one; the stage skips such a word by itself.',
  'comes back':
    'You do not have to remember any of this. What broke today is practiced again, and each card says why.',
  map: 'Each square is one child and one card: full is secure, half is growing, hatched is shaky, a dot has not been asked yet. Tap one to see what was read.',
  'two answers':
    'Each paper answers two questions: was the sound heard, and is its spelling known? “Rane” for rain heard every sound; “ran” did not.',
  decodable:
    'A word is listed only if every sound and spelling in it was taught, or children know the whole word by heart.',
  'true size':
    'Print at 100%, not “fit to page”. The small ruler on the first page shows whether the size is right.',
} as const;

/** Something that is explained once. */
export type FirstTimeThing = keyof typeof FIRST_TIME;
