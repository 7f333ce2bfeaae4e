import './header.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { linkTo, type Screen } from '../state/route.ts';
import { AtWork } from './at-work.tsx';

interface Place {
  readonly screen: Screen;
  readonly name: string;
  /** The screens that share this place, itself among them. */
  readonly among?: readonly Place[];
}

const places: readonly Place[] = [
  { screen: 'learned', name: 'Learned' },
  { screen: 'today', name: 'Today' },
  { screen: 'board', name: 'Board' },
  { screen: 'stage', name: 'Stage' },
  {
    screen: 'words',
    name: 'Words',
    among: [
      { screen: 'words', name: 'Find words' },
      { screen: 'text', name: 'Judge a text' },
      { screen: 'dictation', name: 'Dictation' },
    ],
  },
  {
    screen: 'class',
    name: 'Children',
    among: [
      { screen: 'class', name: 'Class' },
      { screen: 'known', name: 'Known' },
      { screen: 'papers', name: 'Papers' },
      { screen: 'check', name: 'Check' },
      { screen: 'pages', name: 'Pages' },
    ],
  },
  { screen: 'print', name: 'Print' },
  { screen: 'settings', name: 'Settings' },
];

/** Screens without a place of their own, and the place that they belong to. */
const under: Partial<Record<Screen, Screen>> = {
  order: 'learned',
  after: 'today',
  plan: 'today',
};

/**
 * The quiet line above every page: the name, who is at work and where they stand, and where one can
 * go. Where it is narrow, the places fold behind one button.
 */
export function Header({ current }: { readonly current: Screen }) {
  const [isOpen, setOpen] = useState(false);
  const menu = useRef<HTMLButtonElement>(null);
  const here = under[current] ?? current;
  const among = places.find((place) => place.among?.some(({ screen }) => screen === here))?.among;
  const close = () => setOpen(false);
  useEffect(close, [current]);
  return (
    <header class="header">
      <a class="brand" href={linkTo('today')}>
        Sweepline
      </a>
      <AtWork />
      <button
        ref={menu}
        type="button"
        class="button plain menu"
        aria-expanded={isOpen}
        aria-controls="screens"
        onClick={() => setOpen(!isOpen)}
      >
        Menu
      </button>
      <nav
        id="screens"
        aria-label="Screens"
        class={isOpen ? 'open' : undefined}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || !isOpen) return;
          close();
          menu.current?.focus();
        }}
      >
        {places.map(({ screen, name, among: shared }) => (
          <a
            key={screen}
            href={linkTo(screen)}
            aria-current={currency(screen === here, shared !== undefined && shared === among)}
            onClick={close}
          >
            <span>{name}</span>
          </a>
        ))}
      </nav>
      {among && (
        <nav class="among" aria-label="Here too">
          {among.map(({ screen, name }) => (
            <a key={screen} href={linkTo(screen)} aria-current={currency(screen === here)}>
              <span>{name}</span>
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
