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

/** Her settings; each is in force at once and remembered on this device. */
export function SettingsPage() {
  const now = settings.value;
  return (
    <>
      <h1>Settings</h1>
      <div class="settings">
        <Choice
          title="Sounds are written"
          name="notation"
          options={NOTATIONS}
          names={{
            classroom: 'as in class: /sh/ /ā/ /ŏ/',
            ipa: 'in phonetic letters: /ʃ/ /eɪ/ /ɑ/',
          }}
          now={now.notation}
        />
        <Choice
          title="These pages"
          name="pagesLook"
          options={LOOKS}
          names={{ paper: 'light, like paper', dark: 'dark', contrast: 'strong contrast' }}
          now={now.pagesLook}
        />
        <Choice
          title="The stage and the desk"
          name="look"
          options={LOOKS}
          names={{ paper: 'warm paper', dark: 'dark room', contrast: 'strong contrast' }}
          now={now.look}
        />
        <Choice
          title="The hand you touch with"
          name="hand"
          options={HANDS}
          names={{ right: 'right: next on the right', left: 'left: next on the left' }}
          now={now.hand}
        />
        <fieldset>
          <legend>
            <h2>The sweep</h2>
          </legend>
          <label class="pace">
            <span>quick</span>
            <input
              type="range"
              min={300}
              max={2000}
              step={100}
              value={now.sweepPace}
              aria-label="How long a sweep takes"
              aria-valuetext={`${(now.sweepPace / 1000).toFixed(1)} seconds`}
              onInput={(event) => setSettings({ sweepPace: event.currentTarget.valueAsNumber })}
            />
            <span>slow</span>
            <output class="quiet">{(now.sweepPace / 1000).toFixed(1)} s</output>
          </label>
        </fieldset>
        <Choice
          title="Words are blended"
          name="blending"
          options={BLENDINGS}
          names={{
            whole: 'the whole row at once',
            sounds: 'one sound at a time: the row opens card by card',
            joined: 'joined sounds: each card that opens is swept with those before it',
          }}
          now={now.blending}
        />
        <fieldset>
          <legend>
            <h2>On the stage</h2>
          </legend>
          <Switch name="glimpse" now={now.glimpse}>
            A small glimpse of the next, at your edge
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
