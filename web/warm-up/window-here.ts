import { type DrillId, isDrillId } from '../../core/ids.ts';
import { isNullOr, isObject, isOneOf, isOptional, isText } from '../../core/log/is-value.ts';

/** What a window shows of the warm-up. */
const ROLES = ['desk', 'stage'] as const;
export type WindowRole = (typeof ROLES)[number];

/** What a window says of itself: that it asks who is there, that it goes, or what it shows. */
export type WindowHere = { readonly from: string } & (
  | { readonly kind: 'who' | 'gone' }
  | {
      readonly kind: 'here';
      readonly role: WindowRole;
      readonly drillId?: DrillId | null | undefined;
    }
) & {
    /** The other device that it is on; left out for this one. */
    readonly afar?: string | undefined;
  };

/** Whether a window said something that this build understands. */
export function isWindowHere(value: unknown): value is WindowHere {
  if (!isObject(value) || !isText(value.from) || !isOptional(isText)(value.afar)) return false;
  if (value.kind === 'who' || value.kind === 'gone') return true;
  return (
    value.kind === 'here' &&
    isOneOf(ROLES)(value.role) &&
    isOptional(isNullOr(isDrillId))(value.drillId)
  );
}
