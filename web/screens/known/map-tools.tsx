import { isSightId } from '../../../core/language/card-id.ts';
import { taughtCards } from '../../state/class-now.ts';
import { columns, isFound, only, order, shown, sought } from './map-shown.ts';
import { Skill } from './skill.tsx';
import { say } from './wording.ts';

/** What she can choose of the map: whom or what she looks for, the order of the children, the skill, the sounds. */
export function MapTools() {
  return (
    <div class="map-tools not-printed">
      <input
        type="search"
        class="map-seek"
        aria-label={say.mapTools.findAChild}
        placeholder={say.mapTools.findAChild}
        value={sought.value}
        onInput={(event) => {
          sought.value = event.currentTarget.value;
        }}
      />
      <label>
        {say.mapTools.sort}{' '}
        <select
          value={order.value}
          onChange={(event) => {
            order.value = event.currentTarget.value as typeof order.value;
          }}
        >
          <option value="need">{say.mapTools.byNeed}</option>
          <option value="name">{say.mapTools.byName}</option>
          <option value="list">{say.mapTools.asInYourList}</option>
        </select>
      </label>
      <Skill />
      <label>
        {say.mapTools.sounds}{' '}
        <select
          value={columns.value}
          onChange={(event) => {
            columns.value = event.currentTarget.value as typeof columns.value;
          }}
        >
          <option value="read">{say.mapTools.readSoFar}</option>
          <option value="shaky">{say.mapTools.shakyForSomeone}</option>
          {taughtCards.value.some(isSightId) && (
            <option value="words">{say.mapTools.wordsBySight}</option>
          )}
          <option value="all">{say.mapTools.allTaught(taughtCards.value.length)}</option>
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
          {say.mapTools.showEveryoneAgain}
        </button>
      )}
      <p class="map-found quiet small" role="status">
        {isFound.value
          ? sought.value.trim() === ''
            ? ''
            : say.mapTools.ofTheChildren(shown.value.children.length, shown.value.cards.length)
          : say.mapTools.noChildAndNo(sought.value.trim())}
      </p>
    </div>
  );
}
