/** A time of day as it is said in passing: `9:08`. `at` is in milliseconds. */
export function timeName(at: number): string {
  const said = new Date(at).toLocaleTimeString('en-US', { hour: 'numeric', minute: '2-digit' });
  return said.replace(/\s*[AP]M$/, '');
}
