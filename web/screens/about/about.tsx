import './about.css';
import { useEffect, useState } from 'preact/hooks';
import { linkTo } from '../../state/route.ts';
import { WhatChanged } from './what-changed.tsx';
import { say } from './wording.ts';

/** What Sweepline is, what it is not, where the data stay, what changed, and whose work it rests on. */
export function About() {
  return (
    <article class="about">
      <h1>{say.about.aboutSweepline}</h1>
      <p>{say.about.sweeplineIs}</p>
      <p>{say.about.newHereHas(<a href={linkTo('help')}>{say.about.help}</a>)}</p>
      <h2>{say.about.yourChildrensNames}</h2>
      <p>{say.about.whatYouEnterStays(<i>{say.about.children}</i>, <i>{say.about.class}</i>)}</p>
      <h2>{say.about.whatItIsNot}</h2>
      <p>{say.about.aWarmUp}</p>
      <h2>{say.about.theWords}</h2>
      <p>{say.about.everyWordIsChecked}</p>
      <h2>{say.about.whatChanged}</h2>
      <WhatChanged />
      <h2>{say.about.licenses}</h2>
      <p>{say.about.sweeplineIsFreeSoftware}</p>
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
