import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import type { Screen } from '../state/screens.ts';
import { say } from './wording.ts';

type Panel = typeof import('../screens/help/panel.tsx')['HelpPanel'];

/** Whether the help on the screen is open. */
const isOpen = signal(false);

/** Opens the help on the screen that is shown; on its button, and on the key `?`. */
export function HelpButton() {
  return (
    <button
      type="button"
      class="button plain help-button"
      aria-haspopup="dialog"
      aria-label={say.helpKey.helpOnThisPage}
      title={say.helpKey.helpWithKey}
      onClick={() => {
        isOpen.value = true;
      }}
    >
      <kbd class="key help-key">?</kbd>
    </button>
  );
}

/** The help over a screen, fetched when it is first asked for. */
export function Help({ screen }: { readonly screen: Screen }) {
  const [Panel, setPanel] = useState<Panel>();
  const on = isOpen.value;
  useEffect(() => {
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);
  useEffect(() => {
    if (!on || Panel) return;
    import('../screens/help/panel.tsx').then(
      ({ HelpPanel }) => setPanel(() => HelpPanel),
      () => close(),
    );
  }, [on, Panel]);
  useEffect(close, [screen]);
  return on && Panel ? <Panel screen={screen} onClose={close} /> : null;
}

function close(): void {
  isOpen.value = false;
}

function onKey(event: KeyboardEvent): void {
  if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.target instanceof Element && event.target.closest(BUSY)) return;
  event.preventDefault();
  isOpen.value = true;
}

/** Where `?` is a sign to type, or something else is open. */
const BUSY =
  'input:not([type="radio"], [type="checkbox"], [type="range"]), textarea, select, dialog';
