import { itemKey } from '../../../core/sequence/item.ts';
import type { Item } from '../../../core/sequence/sequence.ts';
import { Card } from '../../controls/card.tsx';
import { itemName, itemShort } from '../../wording/card-name.ts';

/** Things that are taught, in a row: cards as cards, words known by sight as slips, habits by name. */
export function ItemsShown({ items }: { readonly items: readonly Item[] }) {
  return (
    <span class="step-items">
      {items.map((item) => (
        <ItemShown key={itemKey(item)} item={item} />
      ))}
    </span>
  );
}

function ItemShown({ item }: { readonly item: Item }) {
  if (item.kind === 'card') {
    return (
      <span role="img" aria-label={itemName(item)}>
        <Card id={item.id} />
      </span>
    );
  }
  return <span class={item.kind === 'word' ? 'step-slip' : 'step-word'}>{itemShort(item)}</span>;
}
