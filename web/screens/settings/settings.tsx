import './settings.css';
import { BLENDINGS } from '../../../core/warm-up/standing.ts';
import {
  HANDS,
  LOOKS,
  NOTATIONS,
  type Settings,
  setSettings,
  settings,
} from '../../state/settings.ts';
import { ClassSpeech } from './class-speech.tsx';
import { ClassWords } from './class-words.tsx';
import { say } from './wording.ts';

/** Her settings; each is in force at once and remembered on this device. */
export function SettingsPage() {
  const now = settings.value;
  return (
    <>
      <h1>{say.settings.settings}</h1>
      <div class="settings">
        <Choice
          title={say.settings.soundsAreWritten}
          name="notation"
          options={NOTATIONS}
          names={{
            classroom: say.settings.asInClassSh,
            ipa: say.settings.inPhoneticLettersE,
          }}
          now={now.notation}
        />
        <Choice
          title={say.settings.thesePages}
          name="pagesLook"
          options={LOOKS}
          names={{
            paper: say.settings.lightLikePaper,
            dark: say.settings.dark,
            contrast: say.settings.strongContrast,
          }}
          now={now.pagesLook}
        />
        <Choice
          title={say.settings.theStage}
          name="look"
          options={LOOKS}
          names={{
            paper: say.settings.warmPaper,
            dark: say.settings.darkRoom,
            contrast: say.settings.strongContrast,
          }}
          now={now.look}
        />
        <Choice
          title={say.settings.theHandYouTouch}
          name="hand"
          options={HANDS}
          names={{ right: say.settings.rightNext, left: say.settings.leftNext }}
          now={now.hand}
        />
        <fieldset>
          <legend>
            <h2>{say.settings.theSweep}</h2>
          </legend>
          <label class="pace">
            <span>{say.settings.quick}</span>
            <input
              type="range"
              min={300}
              max={2000}
              step={100}
              value={now.sweepPace}
              aria-label={say.settings.howLongASweep}
              aria-valuetext={say.settings.seconds((now.sweepPace / 1000).toFixed(1))}
              onInput={(event) => setSettings({ sweepPace: event.currentTarget.valueAsNumber })}
            />
            <span>{say.settings.slow}</span>
            <output class="quiet">{(now.sweepPace / 1000).toFixed(1)} s</output>
          </label>
        </fieldset>
        <Choice
          title={say.settings.wordsAreBlended}
          name="blending"
          options={BLENDINGS}
          names={{
            whole: say.settings.theWholeRow,
            sounds: say.settings.oneSound,
            joined: say.settings.joinedSoundsEachCard,
          }}
          now={now.blending}
        />
        <fieldset>
          <legend>
            <h2>{say.settings.onTheStage}</h2>
          </legend>
          <Switch name="glimpse" now={now.glimpse}>
            {say.settings.aSmallGlimpse}
          </Switch>
        </fieldset>
        <ClassSpeech />
        <ClassWords />
      </div>
    </>
  );
}

function Choice<Option extends string>({
  title,
  name,
  options,
  names,
  now,
}: {
  readonly title: string;
  readonly name: keyof Settings;
  readonly options: readonly Option[];
  readonly names: Readonly<Record<Option, string>>;
  readonly now: Option;
}) {
  return (
    <fieldset>
      <legend>
        <h2>{title}</h2>
      </legend>
      {options.map((option) => (
        <label key={option} class="option">
          <input
            type="radio"
            name={name}
            checked={option === now}
            onChange={() => setSettings({ [name]: option })}
          />
          <span>{names[option]}</span>
        </label>
      ))}
    </fieldset>
  );
}

function Switch({
  name,
  now,
  children,
}: {
  readonly name: 'glimpse';
  readonly now: boolean;
  readonly children: string;
}) {
  return (
    <label class="option">
      <input
        type="checkbox"
        checked={now}
        onChange={(event) => setSettings({ [name]: event.currentTarget.checked })}
      />
      <span>{children}</span>
    </label>
  );
}
