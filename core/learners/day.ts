/**
 * Days as whole numbers counted from 1970-01-01, so that the time between two
 * is a subtraction. Gregorian; the count is H. Hinnant's `days_from_civil` and
 * its inverse (chrono-Compatible Low-Level Date Algorithms, 2013). The core has
 * no clock and no time zone: a day is what the classroom's calendar says.
 */
export type Day = number;

/** Reads `YYYY-MM-DD`; null when it is no such day of the calendar. */
export function parseDay(text: string): Day | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!match) return null;
  const [year, month, date] = match.slice(1).map(Number) as [number, number, number];
  if (month < 1 || month > 12 || date < 1) return null;
  const day = dayOf(year, month, date);
  return makeDay(day) === text.trim() ? day : null;
}

/** Writes a day as `YYYY-MM-DD`; for the years 0 to 9999. */
export function makeDay(day: Day): string {
  const shifted = day + 719_468;
  const era = Math.floor(shifted / 146_097);
  const ofEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) /
      365,
  );
  const ofYear =
    ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  const date = ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return [String(year).padStart(4, '0'), twoDigits(month), twoDigits(date)].join('-');
}

/** The day of the week: 0 for Monday to 6 for Sunday. */
export function weekdayOf(day: Day): number {
  return (((day + 3) % 7) + 7) % 7;
}

function dayOf(year: number, month: number, date: number): Day {
  const ofMarch = month <= 2 ? year - 1 : year;
  const era = Math.floor(ofMarch / 400);
  const yearOfEra = ofMarch - era * 400;
  const ofYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + date - 1;
  const ofEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + ofYear;
  return era * 146_097 + ofEra - 719_468;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
