import './header.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { AtWork } from './at-work.tsx';
import { linkTo, type Screen } from './route.ts';

const places: readonly { readonly screen: Screen; readonly name: string }[] = [
  { screen: 'learned', name: 'Learned' },
  { screen: 'today', name: 'Today' },
  { screen: 'board', name: 'Board' },
  { screen: 'stage', name: 'Stage' },
  { screen: 'words', name: 'Words' },
  { screen: 'text', name: 'Text' },
  { screen: 'dictation', name: 'Dictation' },
  { screen: 'class', name: 'Class' },
  { screen: 'known', name: 'Known' },
  { screen: 'check', name: 'Check' },
  { screen: 'settings', name: 'Settings' },
];

/** Screens without a place of their own, and the place that they belong to. */
const under: Partial<Record<Screen, Screen>> = { order: 'learned', after: 'today', plan: 'today' };

/**
 * The quiet line above every page: the name, who is at work and where they stand, and where one can
 * go. Where it is narrow, the places fold behind one button.
 */
export function Header({ current }: { readonly current: Screen }) {
  const [isOpen, setOpen] = useState(false);
  const menu = useRef<HTMLButtonElement>(null);
  const here = under[current] ?? current;
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
        {places.map(({ screen, name }) => (
          <a
            key={screen}
            href={linkTo(screen)}
            aria-current={screen === here ? 'page' : undefined}
            onClick={close}
          >
            <span>{name}</span>
          </a>
        ))}
      </nav>
    </header>
  );
}
