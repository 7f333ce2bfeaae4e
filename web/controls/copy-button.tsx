import { useEffect, useState } from 'preact/hooks';
import { copyText } from '../device/copy-text.ts';
import { say } from './wording.ts';

interface CopyButtonProps {
  readonly name: string;
  readonly text: () => string;
  /** What is said once it is done. */
  readonly said: string;
}

const shownFor = 4000;

/** Copies a text and says that it did, or what to do instead. */
export function CopyButton({ name, text, said }: CopyButtonProps) {
  const [done, setDone] = useState<boolean>();
  useEffect(() => {
    if (done !== true) return;
    const timer = setTimeout(() => setDone(undefined), shownFor);
    return () => clearTimeout(timer);
  }, [done]);
  return (
    <>
      <button
        type="button"
        class="button"
        onClick={async () => {
          setDone(undefined);
          setDone(await copyText(text()));
        }}
      >
        {name}
      </button>
      <span class="quiet copied" role="status">
        {done === true && said}
        {done === false && say.copyButton.thisBrowserWouldNot}
      </span>
    </>
  );
}
