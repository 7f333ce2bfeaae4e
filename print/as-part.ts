import type { PageMark } from './page.ts';
import type { TaggedPart } from './part.ts';

/** Marks as a part of their page. What is a part already, such as a list in an item of another, is within it. */
export function asPart(part: TaggedPart, marks: readonly PageMark[]): readonly PageMark[] {
  const grafted = new Map<TaggedPart, TaggedPart>();
  const graft = (inner: TaggedPart): TaggedPart => {
    const known = grafted.get(inner) ?? {
      ...inner,
      within: inner.within ? graft(inner.within) : part,
    };
    grafted.set(inner, known);
    return known;
  };
  return marks.map((mark) => ({ ...mark, part: mark.part ? graft(mark.part) : part }));
}

/** Marks as a paragraph; `says` is said in place of its letters. */
export function asParagraph(marks: readonly PageMark[], says?: string): readonly PageMark[] {
  return asPart(says === undefined ? { role: 'P' } : { role: 'P', says }, marks);
}

/** The items of one list, as many as there are texts: what is said of each; where that is undefined, its letters. */
export function listItems(said: readonly (string | undefined)[]): readonly TaggedPart[] {
  const list: TaggedPart = { role: 'L' };
  return said.map((says) => {
    const body: TaggedPart = { role: 'LBody', within: { role: 'LI', within: list } };
    return says === undefined ? body : { ...body, says };
  });
}
