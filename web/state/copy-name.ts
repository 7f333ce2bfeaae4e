/** What the name of a saved file is made from. */
export interface CopyName {
  /** The day it is saved, `YYYY-MM-DD`. */
  readonly day: string;
  readonly isLocked: boolean;
  /** What is in it, when she wants its name to say so; null keeps it to herself. */
  readonly says: string | null;
}

/**
 * The name of a copy, such as `sweepline-copy-2026-03-02.jsonl`, or `sweepline-room-4-2026-03-02.jsonl` when
 * it says what is in it. Whoever sees a list of files learns nothing of a class that its name keeps to itself.
 */
export function copyName({ day, isLocked, says }: CopyName): string {
  const plain = (says ?? '')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const name = [`sweepline-${plain || 'copy'}`, day, ...(isLocked ? ['locked'] : [])];
  return `${name.join('-')}.jsonl`;
}
