import { isSightId } from '../../../core/language/card-id.ts';
import { taughtCards } from '../../state/class-now.ts';
import { columns, isFound, only, order, shown, sought } from './map-shown.ts';
import { Skill } from './skill.tsx';

/** What she can choose of the map: whom or what she looks for, the order of the children, the skill, the sounds. */
export function MapTools() {
  return (
    <div class="map-tools not-printed">
      <input
        type="search"
        class="map-seek"
        aria-label="Find a child or a sound"
        placeholder="Find a child or a sound"
        value={sought.value}
        onInput={(event) => {
          sought.value = event.currentTarget.value;
        }}
      />
      <label>
        Sort{' '}
        <select
          value={order.value}
          onChange={(event) => {
            order.value = event.currentTarget.value as typeof order.value;
          }}
        >
          <option value="need">by need</option>
          <option value="name">by name</option>
          <option value="list">as in your list</option>
        </select>
      </label>
      <Skill />
      <label>
        Sounds{' '}
        <select
          value={columns.value}
          onChange={(event) => {
            columns.value = event.currentTarget.value as typeof columns.value;
          }}
        >
          <option value="read">read so far</option>
          <option value="shaky">shaky for someone</option>
          {taughtCards.value.some(isSightId) && <option value="words">words by sight</option>}
          <option value="all">all {taughtCards.value.length} taught</option>
        </select>
      </label>
      {only.value !== null && (
        <button
          type="button"
          class="button plain"
          onClick={() => {
            only.value = null;
          }}
        >
          Show everyone again
        </button>
      )}
      <p class="map-found quiet small" role="status">
        {isFound.value
          ? sought.value.trim() === ''
            ? ''
            : `${shown.value.children.length} of the children, ${shown.value.cards.length} of the sounds`
          : `No child and no sound here begins with “${sought.value.trim()}”.`}
      </p>
    </div>
  );
}
