import type { Picture } from '../picture.ts';
import { drawn } from './drawn.ts';
import { iconOf } from './icons.ts';
import { readIcon } from './read-icon.ts';

/** A set of icons as Iconify publishes it; only what is used of it. */
export interface IconSet {
  readonly icons: Readonly<Record<string, { readonly body: string }>>;
  readonly aliases?: Readonly<Record<string, { readonly parent: string }>>;
}

/** The picture of every keyword that has one, in alphabetical order. */
export function makePictures({ icons, aliases = {} }: IconSet): Readonly<Record<string, Picture>> {
  const fromSet = [...iconOf].map(([keyword, name]): [string, Picture] => {
    const icon = icons[name] ?? icons[aliases[name]?.parent ?? ''];
    if (!icon) throw new Error(`The set has no icon ${name}.`);
    return [keyword, readIcon(name, icon.body)];
  });
  const all = [...fromSet, ...drawn].sort(([left], [right]) => (left < right ? -1 : 1));
  return Object.fromEntries(all);
}
