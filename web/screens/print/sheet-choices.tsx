import { CHECK_KINDS } from '../../../core/checks/check-form.ts';
import { everyone } from '../../state/everyone.ts';
import { groupName } from '../../state/open-class.ts';
import { choices, choose, EACH, LENGTHS } from '../../state/paper/print-choices.ts';
import type { SheetKind } from '../../state/paper/print-things.ts';
import { linkTo } from '../../state/route.ts';
import type { Screen } from '../../state/screens.ts';
import { kindNames } from '../../wording/check-names.ts';
import { WhichBoard } from './card-choices.tsx';
import { Paper, Radios, Select } from './fields.tsx';
import { chosenReader } from './laid-now.ts';

/** What can be chosen of a sheet. */
export function SheetChoices({ kind }: { readonly kind: SheetKind }) {
  return (
    <>
      {kind === 'board' && <WhichBoard />}
      {kind === 'words' && <WordsWish />}
      {(kind === 'home' || kind === 'check') && <Whose kind={kind} />}
      {kind === 'home' && (
        <Select
          title="Language"
          options={[
            ['english', 'English'],
            ['spanish', 'Spanish, machine-made'],
          ]}
          now={choices.value.language}
          set={(language) => choose({ language })}
        />
      )}
      {kind === 'check' && <CheckWish />}
      <Paper />
      <Elsewhere kind={kind} />
    </>
  );
}

/** How the rows of slides come, and for which screen and program. */
export function SlideChoices() {
  return (
    <>
      <Radios
        title="Each word"
        name="blending"
        options={[
          ['whole', 'The whole row at once'],
          ['by-sound', 'One sound at a time'],
        ]}
      />
      <Radios
        title="Each click"
        name="clicks"
        options={[
          ['line', 'Moves the line'],
          ['slide', 'Goes to the next slide'],
        ]}
      >
        <p class="quiet small">If nothing moves in your program, take the next slide.</p>
      </Radios>
      <Radios
        title="Screen"
        name="format"
        inRow
        options={[
          ['16:9', 'Wide, 16 : 9'],
          ['4:3', '4 : 3'],
        ]}
      />
      <Radios
        title="File"
        name="program"
        inRow
        options={[
          ['pptx', '.pptx'],
          ['odp', '.odp, OpenDocument'],
        ]}
      />
      <Elsewhere kind="plan" />
    </>
  );
}

const ANYONE = '';
const eachOne = [EACH, 'Each child, a page of its own'] as const;

function Whose({ kind }: { readonly kind: 'home' | 'check' }) {
  const reader = chosenReader(choices.value);
  const isEach = kind === 'home' && choices.value.child === EACH;
  const children = everyone.value.map(({ id, name }) => [id, name] as const);
  return (
    <Select
      title="For whom"
      options={[
        [ANYONE, kind === 'home' ? groupName.value : 'Anyone'],
        ...(kind === 'home' && children.length > 1 ? [eachOne] : []),
        ...children,
      ]}
      now={isEach ? EACH : (reader?.id ?? ANYONE)}
      set={(child) => choose({ child })}
    >
      {kind === 'check' && reader ? (
        <p class="quiet small">
          What {reader.name} reads next; it is the same in <a href={linkTo('check')}>Check</a> until
          it was read there.
        </p>
      ) : (
        <Draw>{kind === 'home' ? 'Other words' : 'Another form'}</Draw>
      )}
    </Select>
  );
}

function WordsWish() {
  return (
    <>
      <Radios
        title="Which words"
        name="list"
        options={[
          ['new', 'With what is new'],
          ['found', 'As I looked for them in Words'],
        ]}
      >
        {choices.value.list === 'new' ? (
          <Draw>Other words</Draw>
        ) : (
          <p>
            <a href={linkTo('words')}>Look for others</a>
          </p>
        )}
      </Radios>
      <Radios
        title="How many, at most"
        name="length"
        inRow
        options={LENGTHS.map((length) => [length, `${length}`])}
      />
    </>
  );
}

/** Chooses again by chance. */
function Draw({ children }: { readonly children: string }) {
  return (
    <p>
      <button
        type="button"
        class="button"
        onClick={() => choose({ draw: choices.peek().draw + 1 })}
      >
        {children}
      </button>
    </p>
  );
}

function CheckWish() {
  return (
    <>
      <Radios
        title="What"
        name="check"
        inRow
        options={CHECK_KINDS.map((kind) => [kind, kindNames[kind]])}
      />
      <Radios
        title="How long"
        name="timed"
        inRow
        options={[
          [true, 'One minute'],
          [false, 'No clock'],
        ]}
      />
    </>
  );
}

/** Where what is on the sheet is chosen. */
const places: Partial<Record<SheetKind, readonly [Screen, string]>> = {
  plan: ['today', 'Change the plan'],
  board: ['board', 'Change the board'],
  dictation: ['dictation', 'Change the dictation'],
};

function Elsewhere({ kind }: { readonly kind: SheetKind }) {
  const place = places[kind];
  if (!place) return null;
  const [screen, said] = place;
  return (
    <p>
      <a href={linkTo(screen)}>{said}</a>
    </p>
  );
}
