/**
 * What the marks of a page are to whoever hears it read: a heading, a paragraph, an item of a list, a picture.
 * The file keeps it as its structure (ISO 32000-1 §14.8); the eye sees nothing of it. Marks of no part are
 * decoration and are passed over: frames, cut marks, rulers, lines to write on, the foot of a page.
 */
import type { Box } from './box.ts';

/** The standard's names for what is printed: headings, paragraphs, lists with items, pictures. */
export type PartRole = 'H1' | 'H2' | 'P' | 'L' | 'LI' | 'LBody' | 'Figure';

/** One part. Marks belong to one another by sharing the same value; they are read in the order in which they are painted. */
export interface TaggedPart {
  readonly role: PartRole;
  /** What it is part of, such as its list; the document when left out. */
  readonly within?: TaggedPart;
  /** What is said in place of its letters, where those alone would mislead: `a–e` for the two of a split card. */
  readonly says?: string;
  /** Of a picture: what it shows, and where it stands as printed. */
  readonly shows?: { readonly alt: string; readonly box: Box };
}
