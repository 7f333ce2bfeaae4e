/**
 * The colours of paper, one set for colour printers and one for grey ones. The colour set is the app's
 * own (web/look/tokens.css); on grey paper the arch keeps its shape and a light tone, so that nothing is
 * told by colour alone.
 */
export interface Inks {
  /** Letters. */
  readonly ink: string;
  /** Small text beside them. */
  readonly soft: string;
  /** Frames and lines. */
  readonly rule: string;
  /** The ground of a vowel's arch. */
  readonly arch: string;
  /** The edge of a vowel's arch. */
  readonly archEdge: string;
  /** The sweep line. */
  readonly sweep: string;
}

const colour: Inks = {
  ink: '#1d2740',
  soft: '#5a6275',
  rule: '#c9c0ac',
  arch: '#ffe3a3',
  archEdge: '#c9962b',
  sweep: '#0f7c74',
};

const grey: Inks = {
  ink: '#000000',
  soft: '#555555',
  rule: '#b5b5b5',
  arch: '#ececec',
  archEdge: '#777777',
  sweep: '#333333',
};

/** The inks for a grey or a colour printer. */
export function inks(greyPaper: boolean): Inks {
  return greyPaper ? grey : colour;
}
