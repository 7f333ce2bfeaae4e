import { computed } from '@preact/signals';
import type { Practiced } from '../../../core/dictation/home-practice.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { rareMeanings } from '../../../core/words/meanings.ts';
import { soundStyle } from '../../state/accent.ts';
import { boardOnTable } from '../../state/boards.ts';
import { today } from '../../state/day.ts';
import { dictation, newestTaught } from '../../state/dictation-made.ts';
import type { Engine } from '../../state/engine.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { everyone } from '../../state/everyone.ts';
import { formForAnyone, formForChild } from '../../state/form-for.ts';
import { modelDay } from '../../state/knowledge.ts';
import { meanings } from '../../state/meanings.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { classState, group } from '../../state/open-class.ts';
import { kit } from '../../state/paper/kit.ts';
import type { LaidPaper } from '../../state/paper/laid.ts';
import { layOut } from '../../state/paper/lay-out.ts';
import { lookOf } from '../../state/paper/look.ts';
import { type Choices, choices, EACH } from '../../state/paper/print-choices.ts';
import type { Stock } from '../../state/paper/stock.ts';
import { wordsToRead } from '../../state/paper/words-to-read.ts';
import { drill } from '../../state/plan.ts';
import { practicedBy } from '../../state/practiced.ts';
import { progress, taught } from '../../state/progress.ts';
import { sentences } from '../../state/sentences-ready.ts';
import { wish } from '../../state/wish.ts';
import { formName } from '../../wording/check-names.ts';
import { dayName } from '../../wording/day-name.ts';
import { forWhom } from '../../wording/for-whom.ts';
import { listTitle } from '../../wording/list-title.ts';
import { newThisWeek } from './this-week.ts';

/**
 * What her choices make now; null while what it needs is fetched. It is laid out again whenever anything
 * that it reads is another: a choice, the class, a plan, how sounds are written.
 */
export const laidNow = computed(() => laidOf(choices.value));

/** What some choices would make now; null while what it needs is fetched. */
export function laidOf(now: Choices): LaidPaper | null {
  const [ready, tools] = [readyEngine(), kit.value];
  if (!ready || tools === null || tools === 'failed') return null;
  if (wantsSentences(now) && sentences.value === null) return null;
  return layOut(now, stockFor(now, ready), lookOf(now, tools, soundStyle.value));
}

/** The child that sheets are for; null for the whole group. */
export function chosenReader({ child }: Choices): Child | null {
  return everyone.value.find(({ id }) => id === child) ?? null;
}

/** Whether a sheet has sentences, which are fetched when they are first wanted. */
export function wantsSentences({ kind }: Choices): boolean {
  return kind === 'home' || kind === 'dictation';
}

/** What there is to print from, as the app knows it now. */
function stockFor(choices: Choices, ready: Engine): Stock {
  const { kind, draw } = choices;
  const { lexicon, screen } = ready;
  const here = progress.value;
  const reader = chosenReader(choices);
  const asked = { kind: choices.check, timed: choices.timed };
  const all = wantsSentences(choices) ? sentences.value : null;
  const seed = modelDay() + draw;
  const practiced = () => (reader && kind === 'home' ? practicedBy(reader) : practicedByGroup());
  const sources = {
    lexicon,
    screen,
    sentences: all === null || all === 'failed' ? [] : all,
  };
  return {
    progress: here,
    taught: taught.value,
    newest: () => newThisWeek(classState.value, group.value.id, here, Date.now()),
    drill: drill.value,
    today: drill.value?.board ?? null,
    table: boardOnTable.value,
    whom: forWhom(),
    day: dayName(today(), today()),
    dictation: () => dictation.value,
    toRead: (choices) =>
      wordsToRead(choices, {
        taught: taught.value,
        practiced,
        seed,
        wish: wish.value,
        listTitle: listTitle(wish.value, here),
        sources,
      }),
    practiced,
    each: () =>
      kind === 'home' && choices.child === EACH
        ? everyone.value.map((child) => ({ name: child.name, practiced: practicedBy(child) }))
        : [],
    seed,
    form: () => {
      const made = reader ? formForChild(reader, asked, ready) : formForAnyone(draw, asked, ready);
      return { ...made, name: formName(made.form) };
    },
    reader: reader?.name ?? '',
    meaningOf: rareMeanings(meanings.value ?? { meaningOf: () => null }, lexicon),
    sources,
  };
}

/** What the group at work practices: what is new, then the cards of today's plan. */
function practicedByGroup(): Practiced {
  const [here, known] = [progress.value, taught.value];
  return {
    cards: [...new Set([...newestCards(here), ...(drill.value?.visual ?? [])])],
    alone: known,
    together: known,
    newest: newestTaught(here),
  };
}
