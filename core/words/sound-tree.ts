/**
 * Values kept by rows of sounds and found sound by sound (a prefix tree: Knuth,
 * The Art of Computer Programming 3, 6.3). Most rows leave the tree at their
 * first or second sound, and no text is put together to look them up.
 */
export interface SoundTree<T> {
  /** The value kept by exactly these sounds. O(sounds). */
  get(sounds: readonly string[]): T | undefined;
}

/** A tree of these values; of several by the same sounds the last holds. */
export function growSoundTree<T>(
  entries: Iterable<readonly [sounds: readonly string[], value: T]>,
): SoundTree<T> {
  const root = bud<T>();
  for (const [sounds, value] of entries) {
    let at = root;
    for (const sound of sounds) {
      const next = at.onward.get(sound) ?? bud();
      at.onward.set(sound, next);
      at = next;
    }
    at.value = value;
  }
  return {
    get(sounds) {
      let at: Branch<T> | undefined = root;
      for (let place = 0; at && place < sounds.length; place++) {
        at = at.onward.get(sounds[place] as string);
      }
      return at?.value;
    },
  };
}

interface Branch<T> {
  readonly onward: Map<string, Branch<T>>;
  value: T | undefined;
}

function bud<T>(): Branch<T> {
  return { onward: new Map(), value: undefined };
}
