/** Her own text without what a typeface cannot print. */
export function printed(
  text: string,
  typeface: { readonly missing: (text: string) => readonly string[] },
): string {
  const missing = new Set(typeface.missing(text));
  return [...text]
    .filter((character) => !missing.has(character))
    .join('')
    .trim();
}
