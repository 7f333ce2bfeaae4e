import './about.css';
import { useEffect, useState } from 'preact/hooks';

/** What Sweepline is, what it is not, where the data stay, and whose work it rests on. */
export function About() {
  return (
    <article class="about">
      <h1>About Sweepline</h1>
      <p>
        Sweepline plans and runs a daily phonics warm-up: cards that are shown, sounds that are
        said, and a board of cards that are blended. It shows only what your class has been taught.
      </p>
      <h2>What stays here</h2>
      <p>
        Everything you enter stays on this device. There is no account, nothing is counted, and no
        other site is asked for anything. Clearing this browser’s data clears it here too; your
        order can be saved as a file.
      </p>
      <h2>What it is not</h2>
      <p>
        A warm-up is practice. Sweepline does not screen for or diagnose dyslexia or any disability.
        Follow your school’s rules on children’s data (in many places laws such as FERPA, COPPA or
        GDPR stand behind them), and turn to your school’s licensed specialists with any concern.
      </p>
      <h2>The words</h2>
      <p>
        Words are screened for class by their spelling and by their sound, and real words are marked
        by a dictionary. No list is perfect: the last word is yours, and any flip can be swapped.
      </p>
      <h2>Licenses</h2>
      <p>Sweepline is free software under the MIT license. It rests on the work named here.</p>
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
