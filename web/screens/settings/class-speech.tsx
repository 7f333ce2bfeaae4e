import './class-speech.css';
import type { ComponentChildren } from 'preact';
import {
  type AccentHabit,
  isBritish,
  NOT_WITH_BRITISH,
} from '../../../core/language/accent/accent.ts';
import { accent, setHabit } from '../../state/accent.ts';
import { say } from './wording.ts';

/** How the class speaks: what is alike in its mouths, and southern British whole. */
export function ClassSpeech() {
  const now = accent.value;
  const british = isBritish(now);
  return (
    <fieldset class="class-speech">
      <legend>
        <h2>{say.classSpeech.howWeSay}</h2>
      </legend>
      <p class="quiet">{say.classSpeech.theWordListSpeaks}</p>
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
                {isOwn ? say.classSpeech.southernBritishSettles : means}
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
        {say.classSpeech.andSoundAlike(
          <i>{say.classSpeech.cot}</i>,
          <i>{say.classSpeech.caught}</i>,
        )}
      </>
    ),
    means: say.classSpeech.theAwCard,
    on: say.classSpeech.cotAndCaughtSound,
    off: say.classSpeech.cotAndCaughtSoundDifferent,
  },
  {
    habit: 'pin-pen',
    says: (
      <>
        {say.classSpeech.andSoundAlike(<i>{say.classSpeech.pin}</i>, <i>{say.classSpeech.pen}</i>)}
      </>
    ),
    means: say.classSpeech.beforeMAndN,
    on: say.classSpeech.pinAndPenSound,
    off: say.classSpeech.pinAndPenSoundDifferent,
  },
  {
    habit: 'pull-pool',
    says: (
      <>
        {say.classSpeech.andSoundAlike(
          <i>{say.classSpeech.pull}</i>,
          <i>{say.classSpeech.pool}</i>,
        )}
      </>
    ),
    means: say.classSpeech.beforeLOnlyFull,
    on: say.classSpeech.pullAndPoolSound,
    off: say.classSpeech.pullAndPoolSoundDifferent,
  },
  {
    habit: 'fill-feel',
    says: (
      <>
        {say.classSpeech.andSoundAlike(
          <i>{say.classSpeech.fill}</i>,
          <i>{say.classSpeech.feel}</i>,
        )}
      </>
    ),
    means: say.classSpeech.beforeLOnlyHill,
    on: say.classSpeech.fillAndFeelSound,
    off: say.classSpeech.fillAndFeelSoundDifferent,
  },
  {
    habit: 'wh-apart',
    says: (
      <>
        {say.classSpeech.andSoundDifferent(
          <i>{say.classSpeech.which}</i>,
          <i>{say.classSpeech.witch}</i>,
        )}
      </>
    ),
    means: say.classSpeech.theWhCardSays,
    on: say.classSpeech.whichAndWitchSound,
    off: say.classSpeech.whichAndWitchSoundAlike,
  },
  {
    habit: 'th-fronted',
    says: (
      <>
        {say.classSpeech.isSaidLike(<i>{say.classSpeech.three}</i>, <i>{say.classSpeech.free}</i>)}
      </>
    ),
    means: say.classSpeech.thMayBeSaid,
    on: say.classSpeech.thMayBeSaidAsF,
    off: say.classSpeech.thIsSaid,
  },
  {
    habit: 'r-dropped',
    says: (
      <>
        {say.classSpeech.andSoundAlike(
          <i>{say.classSpeech.sauce}</i>,
          <i>{say.classSpeech.source}</i>,
        )}
      </>
    ),
    means: say.classSpeech.anRIsHeard,
    on: say.classSpeech.anRIsHeardOnly,
    off: say.classSpeech.everyRIsHeard,
  },
  {
    habit: 'southern-british',
    says: say.classSpeech.southernBritish,
    means: say.classSpeech.noRButBefore,
    on: say.classSpeech.yourClassSpeaks,
    off: say.classSpeech.yourClassSpeaksAndSpells,
  },
];
