/**
 * The colors of paper, one set for color printers and one for gray ones. The color set is the app's
 * own (web/look/tokens.css); on gray paper the arch keeps its shape and a light tone, so that nothing is
 * told by color alone.
 */
export interface Inks {
  /** Letters. */
  readonly ink: string;
  /** Small text beside them. */
  readonly soft: string;
  /** Faint lines: divisions, cut marks. */
  readonly rule: string;
  /** The frame of a card. */
  readonly edge: string;
  /** The ground of a consonant's card: the paper itself. */
  readonly card: string;
  /** The ground of a vowel's arch. */
  readonly arch: string;
  /** The ground of a silent e. */
  readonly pale: string;
  /** The sweep line. */
  readonly sweep: string;
}

const color: Inks = {
  ink: '#1d2740',
  soft: '#5a6275',
  rule: '#a59c86',
  edge: '#1d2740',
  card: '#ffffff',
  arch: '#ffe3a3',
  pale: '#fff3d6',
  sweep: '#0f7c74',
};

const grey: Inks = {
  ink: '#000000',
  soft: '#555555',
  rule: '#999999',
  edge: '#000000',
  card: '#ffffff',
  arch: '#e2e2e2',
  pale: '#f3f3f3',
  sweep: '#333333',
};

/** The inks for a gray or a color printer. */
export function inks(grayPaper: boolean): Inks {
  return grayPaper ? grey : color;
}
