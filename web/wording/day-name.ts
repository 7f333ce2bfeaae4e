/** A day as it is written above a page: `Tuesday, November 24`; with the year when it is another one; in English or the language of this tag. */
export function dayName(day: string, today: string, tag = 'en-US'): string {
  const year = day.slice(0, 4) === today.slice(0, 4) ? {} : ({ year: 'numeric' } as const);
  return noonOf(day).toLocaleDateString(tag, {
    weekday: 'long',
    month: 'long',
    day: 'numeric',
    ...year,
  });
}

/** The day of the week alone: `Tuesday`. */
export function weekday(day: string): string {
  return noonOf(day).toLocaleDateString('en-US', { weekday: 'long' });
}

/** When it was, in a few words: `today`, `yesterday`, `on Tuesday`, `on November 3`. */
export function whenSaid(day: string, today: string): string {
  const ago = Math.round((noonOf(today).getTime() - noonOf(day).getTime()) / 86_400_000);
  if (ago === 0) return 'today';
  if (ago === 1) return 'yesterday';
  const near = ago > 1 && ago < 7;
  const said = near ? ({ weekday: 'long' } as const) : ({ month: 'long', day: 'numeric' } as const);
  return `on ${noonOf(day).toLocaleDateString('en-US', said)}`;
}

/** The date alone: `November 3`; with the year when it is another one. */
export function dateSaid(day: string, today: string): string {
  const year = day.slice(0, 4) === today.slice(0, 4) ? {} : ({ year: 'numeric' } as const);
  return noonOf(day).toLocaleDateString('en-US', { month: 'long', day: 'numeric', ...year });
}

/** A day where there is little room: `Tue, Nov 3`. */
export function dayShort(day: string): string {
  return noonOf(day).toLocaleDateString('en-US', {
    weekday: 'short',
    month: 'short',
    day: 'numeric',
  });
}

/** Noon, which no change of the clock moves to another day. */
function noonOf(day: string): Date {
  return new Date(`${day}T12:00:00`);
}
