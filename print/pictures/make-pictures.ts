import type { Picture } from '../picture.ts';
import { drawn } from './drawn.ts';
import { iconOf } from './icons.ts';
import { inkedPictures } from './inked.ts';
import { plainPath } from './plain-path.ts';
import { readIcon } from './read-icon.ts';
import { shortPath } from './short-path.ts';

/** A set of icons as Iconify publishes it; only what is used of it. */
export interface IconSet {
  readonly icons: Readonly<Record<string, { readonly body: string }>>;
  readonly aliases?: Readonly<Record<string, { readonly parent: string }>>;
}

/** The picture of every keyword that has one, in alphabetical order, in outlines that every painter reads alike. */
export function makePictures({ icons, aliases = {} }: IconSet): Readonly<Record<string, Picture>> {
  const fromSet = [...iconOf].map(([keyword, name]): [string, Picture] => {
    const icon = icons[name] ?? icons[aliases[name]?.parent ?? ''];
    if (!icon) throw new Error(`The set has no icon ${name}.`);
    return [keyword, readIcon(name, icon.body)];
  });
  const all = [...fromSet, ...drawn, ...inkedPictures].sort(([left], [right]) =>
    left < right ? -1 : 1,
  );
  return Object.fromEntries(all.map(([keyword, picture]) => [keyword, plain(picture)]));
}

function plain({ box, parts }: Picture): Picture {
  return {
    box,
    parts: parts.map((part) => ({ ...part, path: shortPath(plainPath(part.path)) })),
  };
}
