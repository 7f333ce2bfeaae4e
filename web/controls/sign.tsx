import './sign.css';
import { MASTERY_WORDS, type MasteryWord } from '../../core/facts/mastery-word.ts';

/**
 * The sign of a word, told by its shape first and its color second, so that it holds in gray:
 * a full square, a half-full one, a hatched one, a dot.
 */
export function Sign({ word }: { readonly word: MasteryWord }) {
  return (
    <svg class={`sign ${classOf(word)}`} viewBox="0 0 22 22" aria-hidden="true">
      <use href={`#sign-${classOf(word)}`} />
    </svg>
  );
}

/** The shapes that `Sign` draws; once on a page that shows any. */
export function SignShapes() {
  return (
    <svg class="for-ears" aria-hidden="true">
      <symbol id="sign-secure" viewBox="0 0 22 22">
        <rect x="1" y="1" width="20" height="20" rx="5" fill="currentColor" />
      </symbol>
      <symbol id="sign-growing" viewBox="0 0 22 22">
        <path d="M2 12h18v4a4 4 0 0 1-4 4H6a4 4 0 0 1-4-4z" fill="currentColor" />
        <rect {...outline} />
      </symbol>
      <symbol id="sign-shaky" viewBox="0 0 22 22">
        <path
          d="M2 11 11 2M2 19 19 2M6 20 20 6M13 20l7-7"
          stroke="currentColor"
          stroke-width="2"
          fill="none"
        />
        <rect {...outline} />
      </symbol>
      <symbol id="sign-not-yet-seen" viewBox="0 0 22 22">
        <circle cx="11" cy="11" r="2.5" fill="currentColor" />
      </symbol>
    </svg>
  );
}

/** What the signs mean. */
export function SignKey() {
  return (
    <ul class="sign-key">
      {MASTERY_WORDS.map((word) => (
        <li key={word}>
          <Sign word={word} /> {word}
        </li>
      ))}
    </ul>
  );
}

const outline = {
  x: 2,
  y: 2,
  width: 18,
  height: 18,
  rx: 4,
  fill: 'none',
  stroke: 'currentColor',
  'stroke-width': 2,
} as const;

function classOf(word: MasteryWord): string {
  return word.replaceAll(' ', '-');
}
