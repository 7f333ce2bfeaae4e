import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import { Popover } from '../../controls/popover.tsx';
import { setDrill } from '../../state/plan.ts';
import { dayView } from './day-view.ts';
import { PartHead } from './part-head.tsx';
import { SizeChoice } from './wish-choices.tsx';

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
  const { part, noun, drill, things, children } = props;
  const [at, setAt] = useState<{ readonly anchor: HTMLElement; readonly place: number }>();
  const { kind } = dayView.value;
  const open = (place: number): OpenProps => ({
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
          <button class="button plain" {...open(things.length)}>
            Add a {noun}
          </button>
        </div>
      )}
      {at && (
        <Popover
          anchor={at.anchor}
          title={at.place < things.length ? `Swap this ${noun}` : `Add a ${noun}`}
          onClose={() => setAt(undefined)}
        >
          <Sheet {...props} place={at.place} onDone={() => setAt(undefined)} />
        </Popover>
      )}
    </section>
  );
}

interface SheetProps<Thing> extends EditedPartProps<Thing> {
  readonly place: number;
  readonly onDone: () => void;
}

function Sheet<Thing>(props: SheetProps<Thing>) {
  const { noun, things, nameOf, withThings, others, place, onDone } = props;
  const thing = things[place];
  const all = others();
  const put = (next: readonly Thing[], said: string) => {
    setDrill(withThings(next), `${said} a ${noun}.`);
    onDone();
  };
  return (
    <>
      <p class="popover-head">
        {thing === undefined ? `Add a ${noun}` : nameOf(thing)}
        {thing !== undefined && (
          <button
            type="button"
            class="button"
            onClick={() => put(things.toSpliced(place, 1), 'Took out')}
          >
            Leave it out today
          </button>
        )}
      </p>
      {all.length > 0 && thing !== undefined && (
        <p class="quiet small">Put another in its place:</p>
      )}
      <div class="choices">
        {all.map(({ thing: other, key, title, label, face }) => (
          <button
            key={key}
            type="button"
            class={label === undefined ? 'choice text' : 'choice'}
            title={title}
            aria-label={label}
            onClick={() =>
              put(things.toSpliced(place, 1, other), thing === undefined ? 'Added' : 'Swapped')
            }
          >
            {face}
          </button>
        ))}
      </div>
    </>
  );
}
