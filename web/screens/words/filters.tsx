import type { ComponentChildren } from 'preact';
import { ANY_WORD, ORDERS, PLACES_ASKED, setWish, type WordWish, wish } from '../../state/wish.ts';
import { SHAPE_NAMES } from '../../wording/word-shapes.ts';
import { CardChoice } from './card-choice.tsx';
import { say } from './wording.ts';

const placeNames: Readonly<Record<WordWish['place'], string>> = {
  anywhere: say.filters.anywhere,
  beginning: say.filters.atTheBeginning,
  middle: say.filters.inTheMiddle,
  ending: say.filters.atTheEnd,
};

/** What she looks for; each choice is in force at once and remembered. */
export function Filters() {
  const now = wish.value;
  return (
    <form class="filters not-printed" aria-label={say.filters.whatToLookFor} onSubmit={stay}>
      <Switch name="onlyTaught">{say.filters.onlyWhatMyClass}</Switch>
      <Switch name="irregular">{say.filters.irregularWordsToo}</Switch>
      <label class="filter">
        <span>{say.filters.shape}</span>
        <select
          value={now.shape}
          onChange={(event) => setWish({ shape: event.currentTarget.value })}
        >
          <option value="">{say.filters.anyShape}</option>
          {SHAPE_NAMES.map(({ shape, name, example }) => (
            <option key={shape} value={shape}>
              {name} ({example})
            </option>
          ))}
        </select>
      </label>
      <details class="more-filters" open={isWide() || isNarrowed({ ...now, shape: '' })}>
        <summary>{say.filters.moreToAskFor}</summary>
        <div class="more-asked">
          <label class="filter">
            <span>{say.filters.syllables}</span>
            <select
              value={now.syllables}
              onChange={(event) => setWish({ syllables: Number(event.currentTarget.value) })}
            >
              <option value={0}>{say.filters.anyNumber}</option>
              {[1, 2, 3, 4, 5].map((count) => (
                <option key={count} value={count}>
                  {count}
                </option>
              ))}
            </select>
          </label>
          <fieldset class="filter">
            <legend>{say.filters.withTheCard}</legend>
            <CardChoice
              name={say.filters.withTheCard}
              id={now.card}
              onlyTaught={now.onlyTaught}
              onChoose={(card) => setWish({ card })}
            />
            {now.card !== '' && (
              <select
                aria-label={say.filters.whereTheCardStands}
                value={now.place}
                onChange={(event) => setWish({ place: placeOf(event.currentTarget.value) })}
              >
                {PLACES_ASKED.map((place) => (
                  <option key={place} value={place}>
                    {placeNames[place]}
                  </option>
                ))}
              </select>
            )}
          </fieldset>
          <fieldset class="filter">
            <legend>{say.filters.pairsThatDiffer}</legend>
            <CardChoice
              name={say.filters.firstCard}
              id={now.left}
              onlyTaught={now.onlyTaught}
              onChoose={(left) => setWish({ left })}
            />
            <span class="quiet">{say.filters.and}</span>
            <CardChoice
              name={say.filters.secondCard}
              id={now.right}
              onlyTaught={now.onlyTaught}
              onChoose={(right) => setWish({ right })}
            />
          </fieldset>
          <label class="filter">
            <span>{say.filters.order}</span>
            <select
              value={now.order}
              onChange={(event) => setWish({ order: orderOf(event.currentTarget.value) })}
            >
              <option value="common">{say.filters.commonestFirst}</option>
              <option value="easy">{say.filters.easiestFirst}</option>
              <option value="letters">{say.filters.byTheAlphabet}</option>
            </select>
          </label>
          <label class="filter">
            <span>{say.filters.withTheLetters}</span>
            <input
              type="text"
              value={now.letters}
              maxLength={12}
              autocomplete="off"
              autocapitalize="off"
              spellcheck={false}
              onInput={(event) => setWish({ letters: event.currentTarget.value })}
            />
          </label>
          <Switch name="asked">{say.filters.alsoWords}</Switch>
        </div>
      </details>
      {isNarrowed(now) && (
        <button
          type="button"
          class="button plain"
          onClick={() => setWish({ ...ANY_WORD, onlyTaught: now.onlyTaught })}
        >
          {say.filters.beginAgain}
        </button>
      )}
    </form>
  );
}

function orderOf(text: string): WordWish['order'] {
  return ORDERS.find((order) => order === text) ?? 'common';
}

function Switch({
  name,
  children,
}: {
  readonly name: 'onlyTaught' | 'irregular' | 'asked';
  readonly children: ComponentChildren;
}) {
  return (
    <label class="option">
      <input
        type="checkbox"
        checked={wish.value[name]}
        onChange={(event) => setWish({ [name]: event.currentTarget.checked })}
      />
      <span>{children}</span>
    </label>
  );
}

/** Where the page has room for everything beside the list, nothing is folded away. */
function isWide(): boolean {
  return matchMedia('(min-width: 861px)').matches;
}

function placeOf(text: string): WordWish['place'] {
  return PLACES_ASKED.find((place) => place === text) ?? 'anywhere';
}

function isNarrowed({ shape, syllables, card, left, right, order, letters }: WordWish): boolean {
  return (
    shape !== '' ||
    syllables !== 0 ||
    card !== '' ||
    left !== '' ||
    right !== '' ||
    order !== 'common' ||
    letters !== ''
  );
}

function stay(event: Event): void {
  event.preventDefault();
}
