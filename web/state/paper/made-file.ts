/** A file made in the browser, to be kept or printed. */
export interface MadeFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}
