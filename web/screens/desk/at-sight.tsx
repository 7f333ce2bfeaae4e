import type { CardId } from '../../../core/language/card-id.ts';
import { partsOfSight } from '../../state/sight.ts';
import { listed } from '../../wording/listed.ts';
import { say } from './wording.ts';

/** A word known by sight: that it is read at once, and which part of it is learned by heart. */
export function AtSight({ id }: { readonly id: CardId }) {
  const parts = partsOfSight(id);
  const learned = parts.filter(({ byHeart }) => byHeart).map(({ letters }) => letters);
  const isAll = learned.length > 0 && learned.length === parts.length;
  return (
    <div class="desk-said">
      <p>
        <b>{say.atSight.aWordBySight}</b>
        <span class="quiet"> {say.atSight.theyRead}</span>
      </p>
      {learned.length > 0 && (
        <p class="quiet">
          {isAll ? say.atSight.allOf : say.atSight.byHeart(<b>{listed(learned)}</b>)}
        </p>
      )}
    </div>
  );
}
