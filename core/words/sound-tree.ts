/**
 * Values kept by rows of sounds and found sound by sound (a prefix tree: Knuth,
 * The Art of Computer Programming 3, 6.3). Most rows leave the tree at their
 * first or second sound, and no text is put together to look them up.
 */
export class SoundTree<T> {
  private readonly onward = new Map<string, SoundTree<T>>();
  private value: T | undefined;

  /** Keeps a value by a row of sounds, in the place of an earlier one. */
  set(sounds: readonly string[], value: T): void {
    let at: SoundTree<T> = this;
    for (const sound of sounds) {
      let next = at.onward.get(sound);
      if (!next) {
        next = new SoundTree();
        at.onward.set(sound, next);
      }
      at = next;
    }
    at.value = value;
  }

  /** The value kept by exactly these sounds. O(sounds). */
  get(sounds: readonly string[]): T | undefined {
    let at: SoundTree<T> | undefined = this;
    for (let place = 0; at && place < sounds.length; place++) {
      at = at.onward.get(sounds[place] as string);
    }
    return at?.value;
  }
}
