import type { MadeFile } from '../state/paper/made-file.ts';
import { savingSaid, useSaving } from './use-saving.ts';

interface FileButtonProps {
  readonly name: string;
  /** Makes the file when she asks for it; what it needs is fetched then. */
  readonly make: () => Promise<MadeFile>;
  readonly class?: string;
}

/** Makes a file, saves it, and says so or what to do instead. */
export function FileButton({ name, make, class: look = 'button' }: FileButtonProps) {
  const { state, save } = useSaving(make);
  return (
    <>
      <button type="button" class={look} aria-disabled={state === 'making'} onClick={save}>
        {name}
      </button>
      <span class={state === 'idle' ? 'for-ears' : 'quiet small'} role="status">
        {savingSaid[state]}
      </span>
    </>
  );
}
