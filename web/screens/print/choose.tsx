import { choices, choose } from '../../state/paper/print-choices.ts';
import { isSheet, THING_GROUPS, thingNames } from '../../state/paper/print-things.ts';
import { CardChoices, StripChoices } from './card-choices.tsx';
import { PagePreview } from './page-preview.tsx';
import { SheetChoices, SlideChoices } from './sheet-choices.tsx';
import { thingPictures, useThingPictures } from './thing-pictures.ts';
import { say } from './wording.ts';

/** A sheet before its picture is drawn. */
const BLANK = { width: 216, height: 279, marks: [] };

/** What to print, in groups by where it is used; each with a picture of its first page. */
export function WhatToPrint() {
  const { kind } = choices.value;
  const pictures = thingPictures.value;
  useThingPictures();
  return (
    <fieldset class="print-things">
      <legend class="for-ears">{say.choose.whatToPrint}</legend>
      {THING_GROUPS.map(({ title, things }) => (
        <section key={title} aria-label={title}>
          <h2>{title}</h2>
          <div class="print-kinds">
            {things.map((thing) => (
              <label key={thing} class="print-kind">
                <span class="kind-picture" aria-hidden="true">
                  <PagePreview view={pictures.get(thing) ?? BLANK} name={thingNames[thing]} />
                </span>
                <span class="kind-name">
                  <input
                    type="radio"
                    name="print-kind"
                    checked={thing === kind}
                    onChange={() => choose({ kind: thing })}
                  />
                  <span>{thingNames[thing]}</span>
                </span>
              </label>
            ))}
          </div>
        </section>
      ))}
    </fieldset>
  );
}

/** What can be chosen of it; each choice shows at once in the preview. `steps`: how many the order has. */
export function Choose({ steps }: { readonly steps: number }) {
  const { kind } = choices.value;
  return (
    <form class="print-choices" onSubmit={(event) => event.preventDefault()}>
      {kind === 'slides' ? (
        <SlideChoices />
      ) : kind === 'strips' ? (
        <StripChoices />
      ) : isSheet(kind) ? (
        <SheetChoices key={kind} kind={kind} />
      ) : (
        <CardChoices steps={steps} />
      )}
    </form>
  );
}
