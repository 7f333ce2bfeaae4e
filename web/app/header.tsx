import './header.css';
import { progress } from '../memory/progress.ts';
import { linkTo, type Screen } from './route.ts';

const places: readonly { readonly screen: Screen; readonly name: string }[] = [
  { screen: 'learned', name: 'Learned' },
  { screen: 'today', name: 'Today' },
  { screen: 'stage', name: 'Stage' },
  { screen: 'words', name: 'Words' },
  { screen: 'text', name: 'Text' },
  { screen: 'dictation', name: 'Dictation' },
  { screen: 'settings', name: 'Settings' },
];

/** The quiet line above every page: the name, where the class stands, and where one can go. */
export function Header({ current }: { readonly current: Screen }) {
  const { upTo, sequence } = progress.value;
  const here: Screen = current === 'order' ? 'learned' : current;
  return (
    <header class="header">
      <a class="brand" href={linkTo('today')}>
        Sweepline
      </a>
      <p class="quiet where">
        {upTo === 0 ? 'nothing taught yet' : `step ${upTo} of ${sequence.steps.length}`}
      </p>
      <nav aria-label="Screens">
        {places.map(({ screen, name }) => (
          <a key={screen} href={linkTo(screen)} aria-current={screen === here ? 'page' : undefined}>
            <span>{name}</span>
          </a>
        ))}
      </nav>
    </header>
  );
}
