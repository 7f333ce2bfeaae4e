import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { Popover } from '../../controls/popover.tsx';
import { setDrill } from '../../state/plan.ts';
import { sightWords } from '../../state/sight.ts';
import { dayView } from './day-view.ts';
import { PartHead } from './part-head.tsx';
import { PinButton } from './pin-button.tsx';
import { SightChoice, SizeChoice } from './wish-choices.tsx';
import { say } from './wording.ts';

/** What can take a thing's place: how it is named, and what its button shows. */
export interface Other<Thing> {
  readonly thing: Thing;
  readonly key: string;
  readonly title: string;
  /** Its name, where what is shown is not for ears. */
  readonly label?: string;
  readonly face: ComponentChildren;
}

interface EditedPartProps<Thing> {
  readonly part: 'visual' | 'auditory';
  /** What one of its things is called. */
  readonly noun: 'card' | 'sound';
  readonly drill: Drill;
  readonly things: readonly Thing[];
  readonly nameOf: (thing: Thing) => string;
  /** The plan with other things in this part. */
  readonly withThings: (things: readonly Thing[]) => Drill;
  readonly others: () => readonly Other<Thing>[];
  /** Whether a thing is a word known by sight, and which others there are; words stand behind the rest. */
  readonly isWord: (thing: Thing) => boolean;
  readonly otherWords: () => readonly Other<Thing>[];
  /** The card by which a thing is pinned to every day. */
  readonly pinOf: (thing: Thing) => CardId | undefined;
  /** The things as they stand; each has a button that opens its sheet. */
  readonly children: (open: (place: number) => OpenProps) => ComponentChildren;
}

/** What makes a button open the sheet of a thing. */
interface OpenProps {
  readonly type: 'button';
  readonly disabled: boolean;
  readonly 'aria-haspopup': 'dialog';
  readonly onClick: (event: { readonly currentTarget: HTMLElement }) => void;
}

/** A part of the plan whose things she swaps, leaves out and adds to. */
export function EditedPart<Thing>(props: EditedPartProps<Thing>) {
  const { part, noun, drill, children } = props;
  const [at, setAt] = useState<{ readonly anchor: HTMLElement; readonly place: Place }>();
  const { kind } = dayView.value;
  const open = (place: Place): OpenProps => ({
    type: 'button',
    disabled: kind === 'done',
    'aria-haspopup': 'dialog',
    onClick: ({ currentTarget }) => setAt({ anchor: currentTarget, place }),
  });
  return (
    <section class="part" aria-labelledby={`part-${part}`}>
      <PartHead part={part} drill={drill} />
      {children(open)}
      {(kind === 'fresh' || kind === 'tomorrow') && (
        <div class="wishes part-wishes">
          <SizeChoice part={part} />
          <SightChoice part={part} />
          <button class="button plain" {...open(noun)}>
            {say.editedPart.addA(noun)}
          </button>
          {sightWords.value.length > 0 && (
            <button class="button plain" {...open('word')}>
              {say.editedPart.addAWord}
            </button>
          )}
        </div>
      )}
      {at && (
        <Popover
          anchor={at.anchor}
          title={typeof at.place === 'number' ? say.editedPart.swapThis(noun) : addSaid(at.place)}
          onClose={() => setAt(undefined)}
        >
          <Sheet {...props} place={at.place} onDone={() => setAt(undefined)} />
        </Popover>
      )}
    </section>
  );
}

/** A thing that is there, by its place; or what is added. */
type Place = number | 'card' | 'sound' | 'word';

function addSaid(what: Exclude<Place, number>): string {
  return what === 'word' ? say.editedPart.addAWord : say.editedPart.addOne(what);
}

interface SheetProps<Thing> extends EditedPartProps<Thing> {
  readonly place: Place;
  readonly onDone: () => void;
}

function Sheet<Thing>(props: SheetProps<Thing>) {
  const { part, noun, things, nameOf, withThings, others, place, onDone } = props;
  const { isWord, otherWords, pinOf } = props;
  const thing = typeof place === 'number' ? things[place] : undefined;
  const isOfWords = thing === undefined ? place === 'word' : isWord(thing);
  const all = isOfWords ? otherWords() : others();
  const pin = thing === undefined ? undefined : pinOf(thing);
  const firstWord = things.findIndex(isWord);
  const end = isOfWords || firstWord < 0 ? things.length : firstWord;
  const put = (next: readonly Thing[], said: string) => {
    setDrill(withThings(next), `${said} a ${isOfWords ? say.editedPart.word : noun}.`);
    onDone();
  };
  const choose = (other: Thing) =>
    typeof place === 'number'
      ? put(things.with(place, other), say.editedPart.swapped)
      : put(things.toSpliced(end, 0, other), say.editedPart.added);
  return (
    <>
      <p class="popover-head">
        {typeof place === 'number' ? thing !== undefined && nameOf(thing) : addSaid(place)}
        {pin !== undefined && <PinButton part={part} what={pin} />}
        {typeof place === 'number' && (
          <button
            type="button"
            class="button"
            onClick={() => put(things.toSpliced(place, 1), say.editedPart.tookOut)}
          >
            {say.editedPart.leaveItOutToday}
          </button>
        )}
      </p>
      {all.length > 0 && thing !== undefined && (
        <p class="quiet small">{say.editedPart.putAnother}</p>
      )}
      <div class="choices">
        {all.map(({ thing: other, key, title, label, face }) => (
          <button
            key={key}
            type="button"
            class={label === undefined ? 'choice text' : 'choice'}
            title={title}
            aria-label={label}
            onClick={() => choose(other)}
          >
            {face}
          </button>
        ))}
      </div>
    </>
  );
}
