/**
 * How a class speaks. The word list holds one American pronunciation for each word; an accent is a handful
 * of habits laid over it. Most make two sounds one (*cot* and *caught*); `wh-apart` keeps two apart that the
 * list has as one; `southern-british` is a whole accent with rules and exceptions of its own. Habits say how
 * sounds are heard and written here and what a child may say; what is stored stays American.
 *
 * Which habits there are: Wells, *Accents of English*, 1982, and Labov, Ash & Boberg, *Atlas of North
 * American English*, 2006, both from memory.
 * In the order in which they are laid over a word: the r goes first, so that *court* without it is *caught*.
 */
export const ACCENT_HABITS = [
  'r-dropped',
  'cot-caught',
  'pin-pen',
  'pull-pool',
  'fill-feel',
  'wh-apart',
  'th-fronted',
  'southern-british',
] as const;
export type AccentHabit = (typeof ACCENT_HABITS)[number];

/** The habits of a class, in the order of `ACCENT_HABITS`, none twice; none for American as it is listed. */
export type Accent = readonly AccentHabit[];

/** American as the word list has it. */
export const AMERICAN: Accent = [];

/** An accent of these habits. Southern British drops its r already, and keeps *cot* and *caught* apart. */
export function makeAccent(habits: Iterable<AccentHabit>): Accent {
  const has = new Set(habits);
  if (has.has('southern-british')) for (const habit of NOT_WITH_BRITISH) has.delete(habit);
  return has.size === 0 ? AMERICAN : ACCENT_HABITS.filter((habit) => has.has(habit));
}

/** The accent with a habit more or less. */
export function withHabit(accent: Accent, habit: AccentHabit, isOn: boolean): Accent {
  return makeAccent(isOn ? [...accent, habit] : accent.filter((other) => other !== habit));
}

/** Whether a class speaks southern British. */
export function isBritish(accent: Accent): boolean {
  return accent.includes('southern-british');
}

/** What southern British has or lacks by itself. */
export const NOT_WITH_BRITISH: readonly AccentHabit[] = ['cot-caught', 'pin-pen', 'r-dropped'];

/** Reads `pin-pen,r-dropped`; null where a name is not one of ours. Nothing at all is American. */
export function parseAccent(text: string): Accent | null {
  const names = text
    .split(/[\s,]+/)
    .map((name) => name.toLowerCase())
    .filter((name) => name !== '' && name !== 'american');
  return names.every(isAccentHabit) ? makeAccent(names) : null;
}

function isAccentHabit(text: string): text is AccentHabit {
  return (ACCENT_HABITS as readonly string[]).includes(text);
}
