import { useEffect, useRef, useState } from 'preact/hooks';
import { change } from '../../state/undo.ts';
import { draft } from './draft.ts';
import { readTextBytes } from './open-file.ts';

/** Written for this project, to try the page with. */
const sample =
  'Ren had a red kite. The wind was strong on the hill, and the kite went up and up. ' +
  '“Hold on!” said Gran. A big gust came. Snap went the string! The kite sailed over the barn ' +
  'and landed in the duck pond. The ducks were not pleased.';

/** Milliseconds without a key after which a text is judged and remembered; longer for long ones. */
const pause = { short: 60, long: 350 };
const long = 20_000;

/** Where the text goes in: typed, pasted or from a file. */
export function TextField() {
  const [typed, setTyped] = useState(draft.value);
  const [trouble, setTrouble] = useState('');
  const latest = useRef(typed);
  const put = (text: string) => {
    latest.current = text;
    setTyped(text);
  };

  useEffect(() => {
    if (draft.value !== latest.current) put(draft.value);
  }, [draft.value]);

  useEffect(() => {
    if (typed === draft.peek()) return;
    const wait = typed.length > long ? pause.long : pause.short;
    const timer = setTimeout(keep, wait);
    return () => clearTimeout(timer);
  }, [typed]);

  useEffect(() => {
    addEventListener('pagehide', keep);
    return () => {
      removeEventListener('pagehide', keep);
      keep();
    };
  }, []);

  function keep(): void {
    if (draft.peek() !== latest.current) draft.value = latest.current;
  }

  async function open(file: File | undefined): Promise<void> {
    if (!file) return;
    const opened = readTextBytes(new Uint8Array(await file.arrayBuffer()));
    setTrouble(opened.kind === 'refused' ? opened.message : '');
    if (opened.kind === 'refused') return;
    keep();
    change(draft, opened.text, `Opened ${file.name}.`);
  }

  return (
    <div class="text-field not-printed">
      <label for="the-text">Your text</label>
      <textarea
        id="the-text"
        rows={9}
        spellcheck={false}
        placeholder="Type or paste here"
        value={typed}
        onInput={(event) => put(event.currentTarget.value)}
        onBlur={keep}
      />
      <p class="buttons">
        <label class="button file">
          Open a text file
          <input
            type="file"
            accept=".txt,text/plain"
            onChange={(event) => {
              const field = event.currentTarget;
              void open(field.files?.[0]).finally(() => {
                field.value = '';
              });
            }}
          />
        </label>
        {typed === '' ? (
          <button
            type="button"
            class="button"
            onClick={() => change(draft, sample, 'Put in a sample.')}
          >
            Try it with a short text
          </button>
        ) : (
          <button
            type="button"
            class="button plain"
            onClick={() => {
              keep();
              change(draft, '', 'Emptied the text.');
            }}
          >
            Empty it
          </button>
        )}
      </p>
      <p class="trouble" role="alert">
        {trouble}
      </p>
    </div>
  );
}
