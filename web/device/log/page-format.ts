/** What a page says; see page.ts. */
export interface EventPage {
  readonly texts: readonly string[];
  readonly shapes: readonly PageShape[];
  /** For each event its id, the time since the one before, `by`, `kind`, and its body. */
  readonly list: readonly unknown[];
}

/** The fields of an object in their order, and how each is given in the list. */
export type PageShape = readonly (readonly [field: string, as: As])[];

/**
 * A text is given as its place in `texts`; an object as the place of its shape, then its fields; several
 * of these as how many, then each; any other value as it is.
 */
export type As = 'text' | 'object' | 'texts' | 'objects' | 'value';

/** Stands where a body's shape would, before a body that is given as it is. */
export const AS_IT_IS = -1;
