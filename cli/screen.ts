export function screen(_args: readonly string[]): string {
  return '';
}
