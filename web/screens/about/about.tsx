import './about.css';
import { useEffect, useState } from 'preact/hooks';
import { linkTo } from '../../state/route.ts';
import { WhatChanged } from './what-changed.tsx';

/** What Sweepline is, what it is not, where the data stay, what changed, and whose work it rests on. */
export function About() {
  return (
    <article class="about">
      <h1>About Sweepline</h1>
      <p>
        Sweepline is for the ten minutes that start a reading lesson. It plans your daily phonics
        warm-up from what your class has learned and from nothing else, puts it on the wall, and
        remembers what needs more practice, so that you can look at your children and not at a
        screen.
      </p>
      <p>
        New here? <a href={linkTo('help')}>Help</a> has a page about every screen.
      </p>
      <h2>Your children’s names and marks</h2>
      <p>
        What you enter stays on this device, unless you share a class with devices you choose. There
        is no account and no advertising, nobody counts what you do, and no other site is asked for
        anything. If you clear this browser’s data, it is gone from here too, so save a copy now and
        then (<i>Children</i>, then <i>Class</i>).
      </p>
      <h2>What it is not</h2>
      <p>
        A warm-up is practice. Sweepline does not screen for or diagnose dyslexia or any disability.
        If a child worries you, talk to your school’s specialists. For children’s records, follow
        your school’s rules; laws such as FERPA, COPPA or GDPR often stand behind them.
      </p>
      <h2>The words</h2>
      <p>
        Every word is checked for the classroom by its spelling and by its sound, and real words are
        told from nonsense by a dictionary. No list is perfect. The last word is yours: you can swap
        any word, hide it, or allow it.
      </p>
      <h2>What changed</h2>
      <WhatChanged />
      <h2>Licenses</h2>
      <p>
        Sweepline is free software under the MIT license: use it, copy it, change it. It rests on
        the work of the people named here, with thanks.
      </p>
      <Notices />
    </article>
  );
}

/** The long texts are asked for only here; they are put aside for offline use like everything else. */
function Notices() {
  const [texts, setTexts] = useState<readonly (readonly [string, string])[]>([]);
  useEffect(() => {
    import('./notices.ts').then(({ NOTICES }) => setTexts(NOTICES));
  }, []);
  return (
    <>
      {texts.map(([title, text]) => (
        <details key={title}>
          <summary>{title}</summary>
          <pre>{text}</pre>
        </details>
      ))}
    </>
  );
}
