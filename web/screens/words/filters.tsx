import type { ComponentChildren } from 'preact';
import { ANY_WORD, ORDERS, PLACES_ASKED, setWish, type Wish, wish } from '../../state/wish.ts';
import { SHAPE_NAMES } from '../../wording/word-shapes.ts';
import { CardChoice } from './card-choice.tsx';

const placeNames: Readonly<Record<Wish['place'], string>> = {
  anywhere: 'anywhere',
  beginning: 'at the beginning',
  middle: 'in the middle',
  ending: 'at the end',
};

/** What she looks for; each choice is in force at once and remembered. */
export function Filters() {
  const now = wish.value;
  return (
    <form class="filters not-printed" aria-label="What to look for" onSubmit={stay}>
      <Switch name="onlyTaught">Only what my class was taught</Switch>
      <Switch name="irregular">Irregular words too</Switch>
      <label class="filter">
        <span>Shape</span>
        <select
          value={now.shape}
          onChange={(event) => setWish({ shape: event.currentTarget.value })}
        >
          <option value="">any shape</option>
          {SHAPE_NAMES.map(({ shape, name, example }) => (
            <option key={shape} value={shape}>
              {name} ({example})
            </option>
          ))}
        </select>
      </label>
      <details class="more-filters" open={isWide() || isNarrowed({ ...now, shape: '' })}>
        <summary>More to ask for</summary>
        <div class="more-asked">
          <label class="filter">
            <span>Syllables</span>
            <select
              value={now.syllables}
              onChange={(event) => setWish({ syllables: Number(event.currentTarget.value) })}
            >
              <option value={0}>any number</option>
              {[1, 2, 3, 4, 5].map((count) => (
                <option key={count} value={count}>
                  {count}
                </option>
              ))}
            </select>
          </label>
          <fieldset class="filter">
            <legend>With the card</legend>
            <CardChoice
              name="With the card"
              id={now.card}
              onlyTaught={now.onlyTaught}
              onChoose={(card) => setWish({ card })}
            />
            {now.card !== '' && (
              <select
                aria-label="Where the card stands"
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
            <legend>Pairs that differ in one card</legend>
            <CardChoice
              name="First card of the pair"
              id={now.left}
              onlyTaught={now.onlyTaught}
              onChoose={(left) => setWish({ left })}
            />
            <span class="quiet">and</span>
            <CardChoice
              name="Second card of the pair"
              id={now.right}
              onlyTaught={now.onlyTaught}
              onChoose={(right) => setWish({ right })}
            />
          </fieldset>
          <label class="filter">
            <span>Order</span>
            <select
              value={now.order}
              onChange={(event) => setWish({ order: orderOf(event.currentTarget.value) })}
            >
              <option value="common">commonest first</option>
              <option value="easy">easiest first</option>
              <option value="letters">by the alphabet</option>
            </select>
          </label>
          <label class="filter">
            <span>With the letters</span>
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
          <Switch name="asked">Also words that are yours to decide</Switch>
        </div>
      </details>
      {isNarrowed(now) && (
        <button
          type="button"
          class="button plain"
          onClick={() => setWish({ ...ANY_WORD, onlyTaught: now.onlyTaught })}
        >
          Begin again
        </button>
      )}
    </form>
  );
}

function orderOf(text: string): Wish['order'] {
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

function placeOf(text: string): Wish['place'] {
  return PLACES_ASKED.find((place) => place === text) ?? 'anywhere';
}

function isNarrowed({ shape, syllables, card, left, right, order, letters }: Wish): boolean {
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
