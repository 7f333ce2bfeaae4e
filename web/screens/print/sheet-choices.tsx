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
import { say } from './wording.ts';

/** What can be chosen of a sheet. */
export function SheetChoices({ kind }: { readonly kind: SheetKind }) {
  return (
    <>
      {kind === 'board' && <WhichBoard />}
      {kind === 'words' && <WordsWish />}
      {(kind === 'home' || kind === 'check') && <Whose kind={kind} />}
      {kind === 'home' && (
        <Select
          title={say.sheetChoices.language}
          options={[
            ['english', say.sheetChoices.english],
            ['spanish', say.sheetChoices.spanishMachineMade],
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
        title={say.sheetChoices.eachWord}
        name="blending"
        options={[
          ['whole', say.sheetChoices.theWholeRow],
          ['by-sound', say.sheetChoices.oneSound],
        ]}
      />
      <Radios
        title={say.sheetChoices.eachClick}
        name="clicks"
        options={[
          ['line', say.sheetChoices.movesTheLine],
          ['slide', say.sheetChoices.goesToTheNext],
        ]}
      >
        <p class="quiet small">{say.sheetChoices.ifNothingMoves}</p>
      </Radios>
      <Radios
        title={say.sheetChoices.screen}
        name="format"
        inRow
        options={[
          ['16:9', say.sheetChoices.wide169],
          ['4:3', '4 : 3'],
        ]}
      />
      <Radios
        title={say.sheetChoices.file}
        name="program"
        inRow
        options={[
          ['pptx', '.pptx'],
          ['odp', say.sheetChoices.odpOpendocument],
        ]}
      />
      <Elsewhere kind="plan" />
    </>
  );
}

const ANYONE = '';
const eachOne = [EACH, say.sheetChoices.eachChildAPage] as const;

function Whose({ kind }: { readonly kind: 'home' | 'check' }) {
  const reader = chosenReader(choices.value);
  const isEach = kind === 'home' && choices.value.child === EACH;
  const children = everyone.value.map(({ id, name }) => [id, name] as const);
  return (
    <Select
      title={say.sheetChoices.forWhom}
      options={[
        [ANYONE, kind === 'home' ? groupName.value : say.sheetChoices.anyone],
        ...(kind === 'home' && children.length > 1 ? [eachOne] : []),
        ...children,
      ]}
      now={isEach ? EACH : (reader?.id ?? ANYONE)}
      set={(child) => choose({ child })}
    >
      {kind === 'check' && reader ? (
        <p class="quiet small">
          {say.sheetChoices.whatReadsNext(
            reader.name,
            <a href={linkTo('check')}>{say.sheetChoices.check}</a>,
          )}
        </p>
      ) : (
        <Draw>{kind === 'home' ? say.sheetChoices.otherWords : say.sheetChoices.anotherForm}</Draw>
      )}
    </Select>
  );
}

function WordsWish() {
  return (
    <>
      <Radios
        title={say.sheetChoices.whichWords}
        name="list"
        options={[
          ['new', say.sheetChoices.withWhatIsNew],
          ['found', say.sheetChoices.asILooked],
        ]}
      >
        {choices.value.list === 'new' ? (
          <Draw>{say.sheetChoices.otherWords}</Draw>
        ) : (
          <p>
            <a href={linkTo('words')}>{say.sheetChoices.lookForOthers}</a>
          </p>
        )}
      </Radios>
      <Radios
        title={say.sheetChoices.howManyAtMost}
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
        title={say.sheetChoices.what}
        name="check"
        inRow
        options={CHECK_KINDS.map((kind) => [kind, kindNames[kind]])}
      />
      <Radios
        title={say.sheetChoices.howLong}
        name="timed"
        inRow
        options={[
          [true, say.sheetChoices.oneMinute],
          [false, say.sheetChoices.noClock],
        ]}
      />
    </>
  );
}

/** Where what is on the sheet is chosen. */
const places: Partial<Record<SheetKind, readonly [Screen, string]>> = {
  plan: ['today', say.sheetChoices.changeThePlan],
  board: ['board', say.sheetChoices.changeTheBoard],
  dictation: ['dictation', say.sheetChoices.changeTheDictation],
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
