/** Everything that stands on a page of home practice besides the words to read, in one language. */
export interface HomeWords {
  readonly title: string;
  /** Whose page it is: before a name, or before a line for a pen. */
  readonly whose: string;
  readonly week: string;
  readonly lead: string;
  readonly say: string;
  readonly read: string;
  readonly sentences: string;
  /** The days of a school week. */
  readonly days: readonly string[];
  readonly foot: string;
  /** That nobody who speaks the language has read this yet; empty once somebody has. */
  readonly machineMade: string;
}

/** The languages of home practice. */
export const HOME_LANGUAGES = ['english', 'spanish'] as const;
export type HomeLanguage = (typeof HOME_LANGUAGES)[number];

/** The words of each. The Spanish is machine-made, and says so. */
export const HOME_WORDS: Readonly<Record<HomeLanguage, HomeWords>> = {
  english: {
    title: 'Read together',
    whose: 'For',
    week: 'Week of',
    lead: 'Five minutes are enough, and short and happy is best. Everything on this page was taught at school. When something is hard, you say it first, then both together, then your child alone. Check a box for each day.',
    say: 'Say the sound',
    read: 'Touch each sound, then read the word',
    sentences: 'Read the sentences',
    days: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday'],
    foot: 'Home practice',
    machineMade: '',
  },
  spanish: {
    title: 'Leamos juntos',
    whose: 'Para',
    week: 'Semana del',
    lead: 'Bastan cinco minutos; mejor poco y con alegría. Todo lo que está en esta página ya se enseñó en la escuela. Las palabras están en inglés. Si algo es difícil, primero dígalo usted, después díganlo juntos y al final su hijo o hija. Marquen una casilla cada día.',
    say: 'Di el sonido',
    read: 'Toca cada sonido y luego lee la palabra',
    sentences: 'Lee las oraciones',
    days: ['lunes', 'martes', 'miércoles', 'jueves', 'viernes'],
    foot: 'Práctica en casa',
    machineMade: 'Traducción automática. Todavía no la ha revisado una persona que hable español.',
  },
};
