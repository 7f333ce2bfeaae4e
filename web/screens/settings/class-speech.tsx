import './class-speech.css';
import type { ComponentChildren } from 'preact';
import {
  type AccentHabit,
  isBritish,
  NOT_WITH_BRITISH,
} from '../../../core/language/accent/accent.ts';
import { accent, setHabit } from '../../state/accent.ts';

/** How the class speaks: what is alike in its mouths, and southern British whole. */
export function ClassSpeech() {
  const now = accent.value;
  const british = isBritish(now);
  return (
    <fieldset class="class-speech">
      <legend>
        <h2>How we say it here</h2>
      </legend>
      <p class="quiet">
        The word list speaks one kind of American. Say how your class speaks, and a child who reads
        or writes as the class speaks is heard right. Nonsense, hidden words and the sounds on cards
        go by it too.
      </p>
      {HABITS.map(({ habit, says, means, on, off }) => {
        const isOwn = british && NOT_WITH_BRITISH.includes(habit);
        return (
          <label key={habit} class="option">
            <input
              type="checkbox"
              checked={now.includes(habit)}
              disabled={isOwn}
              onChange={(event) => {
                const isOn = event.currentTarget.checked;
                setHabit(habit, isOn, isOn ? on : off);
              }}
            />
            <span>
              {says}
              <span class="quiet small speech-means">
                {isOwn ? 'Southern British settles this by itself.' : means}
              </span>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}

interface HabitSaid {
  readonly habit: AccentHabit;
  readonly says: ComponentChildren;
  readonly means: string;
  /** Said when it begins to hold, and when it ends. */
  readonly on: string;
  readonly off: string;
}

const HABITS: readonly HabitSaid[] = [
  {
    habit: 'cot-caught',
    says: (
      <>
        <i>cot</i> and <i>caught</i> sound alike
      </>
    ),
    means: 'The aw card is written with the sound of hot.',
    on: 'cot and caught sound alike here.',
    off: 'cot and caught sound different here.',
  },
  {
    habit: 'pin-pen',
    says: (
      <>
        <i>pin</i> and <i>pen</i> sound alike
      </>
    ),
    means:
      'Before m and n only: a child who reads ten as tin is right; pin for pen was heard well.',
    on: 'pin and pen sound alike here.',
    off: 'pin and pen sound different here.',
  },
  {
    habit: 'pull-pool',
    says: (
      <>
        <i>pull</i> and <i>pool</i> sound alike
      </>
    ),
    means: 'Before l only: full and fool are one sound too.',
    on: 'pull and pool sound alike here.',
    off: 'pull and pool sound different here.',
  },
  {
    habit: 'fill-feel',
    says: (
      <>
        <i>fill</i> and <i>feel</i> sound alike
      </>
    ),
    means: 'Before l only: hill and heel are one sound too.',
    on: 'fill and feel sound alike here.',
    off: 'fill and feel sound different here.',
  },
  {
    habit: 'wh-apart',
    says: (
      <>
        <i>which</i> and <i>witch</i> sound different
      </>
    ),
    means: 'The wh card says /hw/.',
    on: 'which and witch sound different here.',
    off: 'which and witch sound alike here.',
  },
  {
    habit: 'th-fronted',
    says: (
      <>
        <i>three</i> is said like <i>free</i>
      </>
    ),
    means: 'th may be said as f, and as v inside a word. The card still says /th/.',
    on: 'th may be said as f or v here.',
    off: 'th is said as th here.',
  },
  {
    habit: 'r-dropped',
    says: (
      <>
        <i>sauce</i> and <i>source</i> sound alike
      </>
    ),
    means: 'An r is heard only before a vowel.',
    on: 'An r is heard only before a vowel here.',
    off: 'Every r is heard here.',
  },
  {
    habit: 'southern-british',
    says: 'Southern British',
    means:
      'No r but before a vowel, the long a of bath, the o of hot; sounds are written /ai/ /ee/ /or/, words as colour, centre, realise.',
    on: 'Your class speaks and spells as in southern Britain.',
    off: 'Your class speaks and spells as in America.',
  },
];
