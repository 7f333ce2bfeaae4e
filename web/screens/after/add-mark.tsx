import { useState } from 'preact/hooks';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { PARTS } from '../../../core/log/event.ts';
import { cardsOf, type Moment, momentsOf } from '../../../core/warm-up/moments.ts';
import { Popover } from '../../controls/popover.tsx';
import { recordUndoable } from '../../state/open-class.ts';
import { glimpseOf } from '../../wording/glimpse.ts';
import { MarkSheet } from './mark-sheet.tsx';
import { say } from './wording.ts';

const titles = {
  visual: say.addMark.cards,
  auditory: say.addMark.sounds,
  blending: say.addMark.words,
} as const;

/** A mark that comes to her mind afterwards: on any card, sound or word that was shown. */
export function AddMark({ record }: { readonly record: DrillRecord }) {
  const [anchor, setAnchor] = useState<HTMLElement>();
  const [made, setMade] = useState<string>();
  const mark = record.marks.find(({ id }) => id === made);
  const was = new Set(record.shown.map(({ part, place }) => `${part} ${place}`));
  const shown = momentsOf(record.drill).filter(({ part, place }) => was.has(`${part} ${place}`));
  const close = () => {
    setAnchor(undefined);
    setMade(undefined);
  };
  const add = (moment: Moment) => {
    const { part, place } = moment;
    const cards = cardsOf(moment);
    const broke = cards.length === 1 ? 1 : null;
    const child = record.calls.findLast((one) => one.part === part && one.place === place);
    const [event] = recordUndoable(say.addMark.addedAMark, {
      kind: 'marked',
      body: {
        ...{ drillId: record.id, part, place, cards, broke },
        ...{ heard: null, child: child?.child ?? null },
      },
    });
    setMade(event?.id);
  };
  return (
    <p class="add-mark">
      <button
        type="button"
        class="button"
        aria-haspopup="dialog"
        onClick={(event) => setAnchor(event.currentTarget)}
      >
        {say.addMark.addAMark}
      </button>
      {anchor && (
        <Popover anchor={anchor} title={say.addMark.addAMark} onClose={close}>
          {mark ? (
            <MarkSheet record={record} mark={mark} onDone={close} />
          ) : (
            PARTS.map((part) => {
              const those = shown.filter((moment) => moment.part === part);
              if (those.length === 0) return null;
              return (
                <fieldset key={part}>
                  <legend>{titles[part]}</legend>
                  <p class="choices">
                    {those.map((moment) => (
                      <button
                        key={moment.place}
                        type="button"
                        class="choice text"
                        onClick={() => add(moment)}
                      >
                        {glimpseOf(moment)}
                      </button>
                    ))}
                  </p>
                </fieldset>
              );
            })
          )}
        </Popover>
      )}
    </p>
  );
}
