import './header.css';
import '../controls/swept.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { linkTo } from '../state/route.ts';
import { factsOf, SCREEN_NAMES, type Screen } from '../state/screens.ts';
import { AtWork } from './at-work.tsx';
import { HelpButton } from './help-key.tsx';
import { Whereabouts } from './whereabouts.tsx';
import { say } from './wording.ts';

/** The screens with a place in the header. */
const PLACES = SCREEN_NAMES.filter((screen) => factsOf(screen).place !== undefined);

/**
 * The quiet line above every page: the name, who is at work and where they stand, and where one can
 * go. Where it is narrow, the places fold behind one button.
 */
export function Header({ current }: { readonly current: Screen }) {
  const [isOpen, setOpen] = useState(false);
  const menu = useRef<HTMLButtonElement>(null);
  const { among: shared, under } = factsOf(current);
  const here = under !== undefined && shared === undefined ? under : current;
  const place = factsOf(here).under ?? here;
  const among = SCREEN_NAMES.filter(
    (screen) => factsOf(screen).among && (factsOf(screen).under ?? screen) === place,
  );
  const close = () => setOpen(false);
  useEffect(close, [current]);
  return (
    <header class="header">
      <a class="brand" href={linkTo('today')}>
        {say.header.sweepline}
      </a>
      <AtWork />
      <Whereabouts />
      <HelpButton />
      <button
        ref={menu}
        type="button"
        class="button plain menu"
        aria-expanded={isOpen}
        aria-controls="screens"
        onClick={() => setOpen(!isOpen)}
      >
        {say.header.menu}
      </button>
      <nav
        id="screens"
        aria-label={say.header.screens}
        class={isOpen ? 'unfolded' : undefined}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || !isOpen) return;
          close();
          menu.current?.focus();
        }}
      >
        {PLACES.map((screen) => (
          <a
            key={screen}
            href={linkTo(screen)}
            aria-current={currency(screen === here, screen === place)}
            onClick={close}
          >
            <span class="swept">{factsOf(screen).place}</span>
          </a>
        ))}
      </nav>
      {among.length > 0 && (
        <nav class="among" aria-label={say.header.hereToo}>
          {among.map((screen) => (
            <a key={screen} href={linkTo(screen)} aria-current={currency(screen === here)}>
              <span class="swept">{factsOf(screen).among}</span>
            </a>
          ))}
        </nav>
      )}
    </header>
  );
}

/** How a link says that one is there, or at a screen of the same place. */
function currency(isHere: boolean, isAmong = false) {
  if (isHere) return 'page';
  return isAmong ? 'true' : undefined;
}
