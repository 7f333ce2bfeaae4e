import { useState } from 'preact/hooks';
import { saveFile } from '../app/save-text.ts';
import type { MadeFile } from './made-file.ts';

interface FileButtonProps {
  readonly name: string;
  /** Makes the file when she asks for it; what it needs is fetched then. */
  readonly make: () => Promise<MadeFile>;
  readonly class?: string;
}

/** Makes a file, saves it, and says so or what to do instead. */
export function FileButton({ name, make, class: look = 'button' }: FileButtonProps) {
  const [state, setState] = useState<keyof typeof said>('idle');
  const save = async () => {
    setState('making');
    try {
      const file = await make();
      saveFile(file.name, file.bytes as BlobPart, file.type);
      setState('saved');
    } catch {
      setState('failed');
    }
  };
  return (
    <>
      <button
        type="button"
        class={look}
        aria-disabled={state === 'making'}
        onClick={() => state !== 'making' && void save()}
      >
        {name}
      </button>
      <span class={state === 'idle' ? 'for-ears' : 'quiet small'} role="status">
        {said[state]}
      </span>
    </>
  );
}

const said = {
  idle: '',
  making: 'Making the file …',
  saved: 'Saved among your downloads.',
  failed: 'The file could not be made. Nothing is lost: try once more.',
} as const;
