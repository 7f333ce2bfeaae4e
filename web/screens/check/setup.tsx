import { useMemo, useState } from 'preact/hooks';
import { CHECK_KINDS, type MadeForm } from '../../../core/checks/check-form.ts';
import { childId } from '../../../core/ids.ts';
import { checksOf } from '../../../core/log/check-record.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { groupOf } from '../../../core/log/roster-changes.ts';
import { PracticeNote } from '../../controls/check-note.tsx';
import { choose, chosen, MINUTE } from '../../state/check-choice.ts';
import { engine, readyEngine } from '../../state/engine-ready.ts';
import { everyone } from '../../state/everyone.ts';
import { formForChild } from '../../state/form-for.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { linkTo } from '../../state/route.ts';
import { kindNames } from '../../wording/check-names.ts';
import { beginCheck } from './check-acts.ts';
import { EarlierChecks } from './earlier.tsx';
import { PrintedForm } from './printed.tsx';
import { Ready } from './ready.tsx';
import { say } from './wording.ts';

/** Who reads what: the child, the kind of check, its length; then it begins, or goes on paper. */
export function Setup({ child }: { readonly child: Child }) {
  const made = useForm(child);
  const { kind, timed } = chosen.value;
  const canBegin = made !== null && made.form.items.length > 0;
  const [isReady, setReady] = useState(false);
  const begin = () => made && beginCheck(child, made.form, timed ? MINUTE : null);
  if (isReady && canBegin) {
    return <Ready name={child.name} onStart={begin} onBack={() => setReady(false)} />;
  }
  const group = groupOf(classState.value, child);
  return (
    <>
      <div class="check-setup not-printed">
        <h1>{say.setup.aShortCheck}</h1>
        <p class="quiet check-lead">{say.setup.oneChildReads}</p>
        <div class="check-columns">
          <section class="part" aria-label={say.setup.whatToCheck}>
            <label class="check-who">
              <span>{say.setup.whoReads}</span>
              <select
                value={child.id}
                onChange={(event) => choose({ child: childId(event.currentTarget.value) })}
              >
                {everyone.value.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <fieldset class="check-choice">
              <legend>{say.setup.what}</legend>
              {CHECK_KINDS.map((each) => (
                <label key={each} class="check-option">
                  <input
                    type="radio"
                    name="kind"
                    checked={kind === each}
                    onChange={() => choose({ kind: each })}
                  />
                  <span>{kindNames[each]}</span>
                </label>
              ))}
            </fieldset>
            <fieldset class="check-choice">
              <legend>{say.setup.howLong}</legend>
              <label class="check-option">
                <input
                  type="radio"
                  name="timed"
                  checked={timed}
                  onChange={() => choose({ timed: true })}
                />
                <span>{say.setup.oneMinute}</span>
              </label>
              <label class="check-option">
                <input
                  type="radio"
                  name="timed"
                  checked={!timed}
                  onChange={() => choose({ timed: false })}
                />
                <span>{say.setup.noClock}</span>
              </label>
            </fieldset>
            <Shortfall made={made} />
            <p class="check-begin">
              <button
                type="button"
                class="button next"
                disabled={!canBegin}
                onClick={() => (timed ? setReady(true) : begin())}
              >
                {say.setup.begin}
              </button>
              <button type="button" class="button" disabled={!canBegin} onClick={() => print()}>
                {say.setup.printThePages}
              </button>
            </p>
            <p class="quiet small">
              {say.setup.onlyWhatWasTaught(
                group ? nameOfGroup(group, classState.value) : say.setup.theWholeClass,
                <a href={linkTo('reader')} target="sweepline-reader">
                  {say.setup.aPage}
                </a>,
              )}
            </p>
          </section>
          <section class="part" aria-labelledby="check-earlier">
            <h2 id="check-earlier">{say.setup.sChecks(child.name)}</h2>
            <EarlierChecks checks={checksOf(classState.value, child.id)} current={null} />
          </section>
        </div>
        <PracticeNote />
      </div>
      {canBegin && made && <PrintedForm form={made.form} name={child.name} timed={timed} />}
    </>
  );
}

function Shortfall({ made }: { readonly made: MadeForm | null }) {
  if (engine.value === 'failed') {
    return <p role="alert">{say.setup.theWordListDid}</p>;
  }
  if (!made?.shortfall) return null;
  const { code, message } = made.shortfall;
  return (
    <p class="check-shortfall" role="status">
      {message}{' '}
      {code === 'nothing-taught' && <a href={linkTo('learned')}>{say.setup.whatHaveTheyLearned}</a>}
    </p>
  );
}

/** The form that the child reads next; null until the word list is here. */
function useForm(child: Child): MadeForm | null {
  const ready = readyEngine();
  const state = classState.value;
  const { kind, timed } = chosen.value;
  return useMemo(
    () => (ready ? formForChild(child, { kind, timed }, ready) : null),
    [ready, state, child, kind, timed],
  );
}
