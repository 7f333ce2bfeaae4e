/** The day in the classroom, `YYYY-MM-DD`, by this device's own clock and time zone. */
export function today(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
