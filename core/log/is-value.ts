/**
 * Whether something read from a file or a store is a value of a type. Small
 * checks make larger ones; fields that are not asked for are let be, so that
 * what a newer version adds does no harm. By hand, since the core takes no
 * packages; a class that is opened runs half a million of them, so they loop by
 * place, which a browser that has just begun does faster than by `every`.
 */
export type Check<Value> = (value: unknown) => value is Value;

/** Any text. */
export const isText: Check<string> = (value): value is string => typeof value === 'string';

/** True or false. */
export const isFlag: Check<boolean> = (value): value is boolean => typeof value === 'boolean';

/** Any finite number. */
export const isNumber: Check<number> = (value): value is number => Number.isFinite(value);

/** A whole number from `least` to `most`. */
export function isWhole(least: number, most = Number.MAX_SAFE_INTEGER): Check<number> {
  return (value): value is number =>
    Number.isInteger(value) && (value as number) >= least && (value as number) <= most;
}

/** One of these texts. */
export function isOneOf<const Text extends string>(texts: readonly Text[]): Check<Text> {
  const set: ReadonlySet<unknown> = new Set(texts);
  return (value): value is Text => set.has(value);
}

/** Null, or what the check asks for. */
export function isNullOr<Value>(check: Check<Value>): Check<Value | null> {
  return (value): value is Value | null => value === null || check(value);
}

/** A list of what the check asks for. */
export function isListOf<Value>(check: Check<Value>): Check<readonly Value[]> {
  return (value): value is readonly Value[] => {
    if (!Array.isArray(value)) return false;
    for (let place = 0; place < value.length; place++) if (!check(value[place])) return false;
    return true;
  };
}

/** Nothing at all, or what the check asks for: for a field that may be missing. */
export function isOptional<Value>(check: Check<Value>): Check<Value | undefined> {
  return (value): value is Value | undefined => value === undefined || check(value);
}

/**
 * An object whose fields pass these checks. Whether a field is inherited is not
 * asked: what comes from JSON or a structured clone inherits from
 * `Object.prototype` alone, and no field is named like what that has.
 */
export function isShape<Value extends object>(
  fields: {
    readonly [Field in keyof Value]-?: Check<Value[Field]>;
  },
): Check<Value> {
  const names = Object.keys(fields);
  const checks = Object.values<Check<unknown>>(fields);
  return (value): value is Value => {
    if (!isObject(value)) return false;
    for (let place = 0; place < names.length; place++) {
      if (!checks[place]?.(value[names[place] as string])) return false;
    }
    return true;
  };
}

/** What one of two checks asks for. */
export function isEither<Left, Right>(left: Check<Left>, right: Check<Right>): Check<Left | Right> {
  return (value): value is Left | Right => left(value) || right(value);
}

/** An object that is no list. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
