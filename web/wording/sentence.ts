import type { ComponentChild } from 'preact';

/**
 * A sentence with something drawn in it, a key or a link, as what JSX takes: so that it stays one sentence
 * where it is written, and may be turned around in another language. Used as a tag of a template.
 */
export function sentence(
  texts: TemplateStringsArray,
  ...drawn: readonly ComponentChild[]
): readonly ComponentChild[] {
  return texts.flatMap((text, place): readonly ComponentChild[] =>
    place < drawn.length ? [text, drawn[place]] : [text],
  );
}
