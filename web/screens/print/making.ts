/**
 * What her choices make, from what the app knows now: every page to look at, and the file when she
 * wants it.
 */

import { computed } from '@preact/signals';
import type { Practised } from '../../../core/dictation/home-practice.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { rareMeanings } from '../../../core/words/meanings.ts';
import { readLetters } from '../../../print/glyphs.ts';
import { inks } from '../../../print/ink.ts';
import { runSlides } from '../../../print/slides.ts';
import { boardOnTable } from '../../state/boards.ts';
import { today } from '../../state/day.ts';
import { dictation, newestTaught } from '../../state/dictation-made.ts';
import type { Engine } from '../../state/engine.ts';
import { meanings, readyEngine } from '../../state/engine-ready.ts';
import { everyone } from '../../state/everyone.ts';
import { formForAnyone, formForChild } from '../../state/form-for.ts';
import { modelDay } from '../../state/knowledge.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { classState, group } from '../../state/open-class.ts';
import { type Kit, kit } from '../../state/paper/kit.ts';
import type { MadeFile } from '../../state/paper/made-file.ts';
import { type Choices, choices } from '../../state/paper/print-choices.ts';
import {
  type CardThing,
  isOfCards,
  isSheet,
  type SheetKind,
} from '../../state/paper/print-things.ts';
import { printed } from '../../state/paper/printed.ts';
import { slidesMade } from '../../state/paper/slides-made.ts';
import { drill } from '../../state/plan.ts';
import { practisedBy } from '../../state/practised.ts';
import { progress, taught } from '../../state/progress.ts';
import { sentences } from '../../state/sentences-ready.ts';
import { settings } from '../../state/settings.ts';
import { wish } from '../../state/wish.ts';
import { formName } from '../../wording/check-names.ts';
import { dayName } from '../../wording/day-name.ts';
import { forWhom } from '../../wording/for-whom.ts';
import { listTitle } from '../../wording/list-title.ts';
import { type Chosen, chosenPages } from './chosen.ts';
import { chosenSheet } from './chosen-sheet.ts';
import { newThisWeek } from './this-week.ts';
import { type View, viewOfPage, viewOfSlide } from './view.ts';

/** What will be printed or shown. */
export interface Making {
  readonly views: readonly View[];
  /** How many cards, strips, words and so on. */
  readonly count: number;
  /** What she should know before, in whole sentences. */
  readonly notes: readonly string[];
  /** Makes the file; what writes it is fetched then. */
  readonly file: () => Promise<MadeFile>;
}

/**
 * What her choices make; null while what it needs is fetched. It is laid out anew whenever anything
 * that it reads is another: a choice, the class, a plan, how sounds are written.
 */
export const making = computed<Making | null>(() => {
  const [ready, tools] = [readyEngine(), kit.value];
  if (!ready || tools === null || tools === 'failed') return null;
  return makingOf(choices.value, ready, tools);
});

/** Null while sentences are fetched for it. */
function makingOf(choices: Choices, ready: Engine, tools: Kit): Making | null {
  const { kind, paper, backs, turn } = choices;
  if (kind === 'slides') return slidesOf(choices, drill.value, ready, tools);
  const chosen = pagesOf(kind, choices, ready, tools);
  if (!chosen) return null;
  const isBacked = backs && isOfCards(kind);
  const name = isSheet(kind) ? kind : `cards-${kind}`;
  return {
    views: chosen.pages.map(viewOfPage),
    count: chosen.count,
    notes: chosen.notes,
    file: async () => {
      const { makePdf } = await import('../../../print/document.ts');
      const spec = { title: name, pages: chosen.pages, ...(isBacked ? { turn } : {}) };
      const bytes = await makePdf(spec, tools.typeface);
      return { name: `${name}-${paper}.pdf`, type: 'application/pdf', bytes };
    },
  };
}

/** The child that sheets are for; null for the whole group. */
export function chosenReader({ child }: Choices): Child | null {
  return everyone.value.find(({ id }) => id === child) ?? null;
}

/** Whether a sheet has sentences, which are fetched when they are first wanted. */
export function wantsSentences({ kind }: Choices): boolean {
  return kind === 'home' || kind === 'dictation';
}

function pagesOf(
  kind: CardThing | SheetKind,
  choices: Choices,
  ready: Engine,
  tools: Kit,
): Chosen | null {
  const { paper, grey, pictures } = choices;
  const { typeface } = tools;
  const here = {
    progress: progress.value,
    taught: taught.value,
    today: drill.value?.board ?? null,
    table: boardOnTable.value,
  };
  if (!isSheet(kind)) {
    const newest = () => newThisWeek(classState.value, group.value.id, here.progress, Date.now());
    const look = { inks: inks(grey), typeface, grey, pictures: pictures ? tools.pictures : null };
    return chosenPages(kind, choices, { ...here, newest, ready, typeface }, look);
  }
  const all = sentences.value;
  if (wantsSentences(choices) && all === null) return null;
  const reader = chosenReader(choices);
  const asked = { kind: choices.check, timed: choices.timed };
  const stock = {
    ...here,
    drill: drill.value,
    whom: printed(forWhom(), typeface) || 'the class',
    day: dayName(today(), today()),
    wish: wish.value,
    listTitle: listTitle(wish.value, here.progress),
    dictation: () => dictation.value,
    practised: () => (reader && kind === 'home' ? practisedBy(reader) : practisedByGroup()),
    seed: modelDay() + choices.draw,
    form: () => {
      const made = reader
        ? formForChild(reader, asked, ready)
        : formForAnyone(choices.draw, asked, ready);
      return { ...made, name: formName(made.form) };
    },
    reader: printed(reader?.name ?? '', typeface),
    sources: {
      lexicon: ready.lexicon,
      screen: ready.screen,
      sentences: all === null || all === 'failed' ? [] : all,
    },
  };
  const look = { paper, inks: inks(grey), typeface, style: settings.value.notation };
  return chosenSheet(kind, choices, stock, look);
}

/** What the group at work practises: what is new, then the cards of today's plan. */
function practisedByGroup(): Practised {
  const [here, known] = [progress.value, taught.value];
  return {
    cards: [...new Set([...newestCards(here), ...(drill.value?.visual ?? [])])],
    alone: known,
    together: known,
    newest: newestTaught(here),
  };
}

function slidesOf(
  { blending }: Choices,
  plan: Drill | null,
  { lexicon }: Engine,
  { typeface }: Kit,
): Making {
  const [run, piles] = [plan?.run ?? [], plan?.board.piles.length ?? 0];
  const known = meanings.value ?? { meaningOf: () => null };
  const style = settings.value.notation;
  const spec = { run, piles, blending, style, meaningOf: rareMeanings(known, lexicon) };
  const slides = runSlides(spec, readLetters(typeface.files.regular));
  return {
    views: slides.map(viewOfSlide),
    count: run.length,
    notes: [],
    file: () => slidesMade(slides),
  };
}
