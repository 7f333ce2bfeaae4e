import { useEffect, useRef, useState } from 'preact/hooks';
import { change } from '../../state/undo.ts';
import { draft } from './draft.ts';
import { readTextBytes } from './open-file.ts';
import { say } from './wording.ts';

/** Written for this project, to try the page with. */
const sample = say.textField.aShortText;

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
    change(draft, opened.text, say.textField.opened(file.name));
  }

  return (
    <div class="text-field not-printed">
      <label for="the-text">{say.textField.yourText}</label>
      <textarea
        id="the-text"
        rows={9}
        spellcheck={false}
        placeholder={say.textField.typeOrPasteHere}
        value={typed}
        onInput={(event) => put(event.currentTarget.value)}
        onBlur={keep}
      />
      <p class="buttons">
        <label class="button file">
          {say.textField.openATextFile}
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
            onClick={() => change(draft, sample, say.textField.putInASample)}
          >
            {say.textField.tryIt}
          </button>
        ) : (
          <button
            type="button"
            class="button plain"
            onClick={() => {
              keep();
              change(draft, '', say.textField.emptiedTheText);
            }}
          >
            {say.textField.emptyIt}
          </button>
        )}
      </p>
      <p class="trouble" role="alert">
        {trouble}
      </p>
    </div>
  );
}
