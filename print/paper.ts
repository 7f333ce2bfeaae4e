/** The papers a school prints on, and where on them a printer can be trusted. */
export const PAPERS = ['letter', 'a4'] as const;
export type Paper = (typeof PAPERS)[number];

/** A width and a height in millimetres. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Upright sheets in mm: US Letter is 8.5 × 11 in (ANSI/ASME Y14.1 size A), A4 is 210 × 297 mm (ISO 216). */
export const paperSize: Readonly<Record<Paper, Size>> = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
};

/** Nothing is printed nearer to the edge, in mm: most office printers leave 4 to 6 mm blank (common practice, no source). */
export const SAFE_EDGE = 6;

/** Millimetres in an inch, by definition since 1959. */
export const INCH = 25.4;

/** Typographic points (1/72 in) as millimetres: `points(18)` is the size of an 18 pt letter. */
export function points(count: number): number {
  return (count * INCH) / 72;
}
