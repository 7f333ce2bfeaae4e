/** What is told of a screen wherever screens are listed: in the window's title and in the header. */
interface ScreenFacts {
  readonly title: string;
  /** Its name in the header, in this order; a screen without one belongs to another's place. */
  readonly place?: string;
  /** Its name beside those that share a place. */
  readonly among?: string;
  /** The screen whose place it shares or belongs to. */
  readonly under?: string;
}

/** The screens there are; each is named in the address after `#/`. */
export const SCREENS = {
  learned: { title: 'What have they learned?', place: 'Learned' },
  order: { title: 'The order', under: 'learned' },
  today: { title: 'Today’s warm-up', place: 'Today' },
  board: { title: 'Board', place: 'Board' },
  stage: { title: 'Stage', place: 'Stage' },
  desk: { title: 'Desk' },
  after: { title: 'How it went', under: 'today' },
  plan: { title: 'Plan for a substitute', under: 'today' },
  words: { title: 'Find words', place: 'Words', among: 'Find words' },
  text: { title: 'Is this text decodable?', among: 'Judge a text', under: 'words' },
  dictation: { title: 'Dictation', among: 'Dictation', under: 'words' },
  class: { title: 'Class', place: 'Children', among: 'Class' },
  known: { title: 'What do they know?', among: 'Known', under: 'class' },
  papers: { title: 'Spelling papers', among: 'Papers', under: 'class' },
  check: { title: 'A short check', among: 'Check', under: 'class' },
  reader: { title: 'To read' },
  share: { title: 'Devices and people', among: 'Devices', under: 'class' },
  join: { title: 'Join a class', under: 'class' },
  pages: { title: 'Pages to hand on', among: 'Pages', under: 'class' },
  print: { title: 'Print', place: 'Print' },
  settings: { title: 'Settings', place: 'Settings' },
  help: { title: 'Help' },
  about: { title: 'About' },
} as const satisfies Readonly<Record<string, ScreenFacts>>;

export type Screen = keyof typeof SCREENS;

/** Their names, in the order above. */
export const SCREEN_NAMES = Object.keys(SCREENS) as readonly Screen[];

/** What is told of a screen. */
export function factsOf(screen: Screen): ScreenFacts & { readonly under?: Screen } {
  return SCREENS[screen];
}
