import { useState } from 'preact/hooks';
import { saveFile } from '../device/save-text.ts';
import type { MadeFile } from '../state/paper/made-file.ts';
import { say } from './wording.ts';

/** How far a file is that she asked for. */
export type Saving = 'idle' | 'making' | 'saved' | 'failed';

/** What is said of it. */
export const savingSaid = {
  idle: '',
  making: say.useSaving.makingTheFile,
  saved: say.useSaving.savedAmongYourDownloads,
  failed: say.useSaving.theFileCouldNot,
} as const satisfies Record<Saving, string>;

/** Makes a file when it is asked for, one at a time, and saves it; `forget` begins again. */
export function useSaving(make: () => Promise<MadeFile>) {
  const [state, setState] = useState<Saving>('idle');
  const save = async () => {
    if (state === 'making') return;
    setState('making');
    try {
      const { name, bytes, type } = await make();
      saveFile(name, bytes as BlobPart, type);
      setState('saved');
    } catch {
      setState('failed');
    }
  };
  return { state, save, forget: () => setState('idle') };
}
