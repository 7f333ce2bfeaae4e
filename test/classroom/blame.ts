/**
 * Credit and blame for a reading, shared over its cards. A word is read card by
 * card and stops at the first that breaks: the cards before that one went well,
 * it went wrong, and what the later ones would have been is unknown.
 *
 * When it was not said which card broke, each is blamed by how likely it is to
 * have been the first to break, given how likely each is to be read correctly:
 * the expectation step of EM (Dempster, Laird & Rubin 1977), exact under this
 * account of a reading. The alternative, blaming all cards alike, would wear
 * down the sure ones along with the shaky one.
 */
export interface Blame {
  /** By card: how surely it went well, and how surely it went wrong; together at most 1. */
  readonly well: Float64Array;
  readonly wrong: Float64Array;
}

/**
 * Writes into `blame` what a reading says of its first `count` cards.
 * `chances[i]` is the chance that card i is read correctly; `broke` counts from 1.
 */
export function shareBlame(
  blame: Blame,
  count: number,
  chances: Float64Array,
  right: boolean,
  broke: number | null,
): void {
  const { well, wrong } = blame;
  if (right || broke !== null) {
    const first = right ? count : (broke as number) - 1;
    for (let at = 0; at < count; at++) {
      well[at] = at < first ? 1 : 0;
      wrong[at] = at === first ? 1 : 0;
    }
    return;
  }
  let reached = 1;
  for (let at = 0; at < count; at++) {
    const chance = chances[at] as number;
    wrong[at] = reached * (1 - chance);
    reached *= chance;
  }
  const some = 1 - reached;
  let later = 0;
  for (let at = count - 1; at >= 0; at--) {
    const here = some > 0 ? (wrong[at] as number) / some : 1 / count;
    wrong[at] = here;
    well[at] = later;
    later += here;
  }
}
