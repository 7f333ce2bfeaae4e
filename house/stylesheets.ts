import { dirname } from 'node:path/posix';
import postcss, { type Rule } from 'postcss';

/** A file by its path below `web/`, and its text. */
type File = readonly [path: string, text: string];

/**
 * What is wrong with the web's stylesheets, a line each; empty when all is well. Each sheet lies in the layer
 * of its floor (web/look/layers.css), a class is styled from one folder alone, and no screen leans on what
 * the sheet of another says: which of two sheets is there depends on where she has been before. `markup` is
 * read for classes that are written out; those that are put together are not seen.
 */
export function stylesheetFaults(
  sheets: readonly File[],
  markup: readonly File[],
): readonly string[] {
  const styled = new Map<string, Set<string>>();
  const named = new Map<string, Set<string>>();
  const faults: string[] = [];
  for (const [path, text] of sheets) {
    const folder = dirname(path);
    const root = postcss.parse(text);
    if (!isLayered(root, layersOf(path)))
      faults.push(`in-its-layer: ${path} has rules outside its layer (${layersOf(path)[0]})`);
    root.walkRules((rule) => {
      for (const name of classesOf(subjectsOf(rule))) noteIn(styled, name, folder);
      for (const name of classesOf(rule.selectors)) noteIn(named, name, folder);
    });
  }
  for (const [name, folders] of styled) {
    if (folders.size > 1) faults.push(`styled-once: .${name} is styled in ${listed(folders)}`);
  }
  for (const [name, folders] of named) {
    const screens = [...folders].filter(isScreen);
    if (screens.length > 1 && screens.length === folders.size)
      faults.push(`screens-apart: .${name} is named in ${listed(folders)}`);
  }
  for (const [path, text] of markup) {
    for (const name of classesWritten(text)) {
      const [folder, ...others] = styled.get(name) ?? [];
      if (folder && others.length === 0 && isScreen(folder) && folder !== dirname(path))
        faults.push(`screens-apart: ${path} has .${name}, which is styled in ${folder}`);
    }
  }
  return faults.sort();
}

/** The layers a sheet may be in. */
function layersOf(path: string): readonly string[] {
  const floor = path.split('/')[0] ?? '';
  return floor === 'look' ? ['base', 'paper'] : [floor];
}

/** Whether all of a sheet lies in such a layer, or it only says which layers there are. */
function isLayered(root: postcss.Root, layers: readonly string[]): boolean {
  return root.nodes.every(
    (node) =>
      node.type === 'comment' ||
      (node.type === 'atrule' &&
        node.name === 'layer' &&
        (node.nodes === undefined || layers.includes(node.params))),
  );
}

/** What each selector of a rule styles: its last part, without what it must have or not be. */
function subjectsOf(rule: Rule): readonly string[] {
  return rule.selectors.map((selector) => {
    const plain = selector.replace(/:(?:has|not)\([^()]*(?:\([^()]*\)[^()]*)*\)/g, '');
    let depth = 0;
    let from = 0;
    [...plain].forEach((sign, at) => {
      if ('(['.includes(sign)) depth += 1;
      else if (')]'.includes(sign)) depth -= 1;
      else if (depth === 0 && ' >+~\n'.includes(sign)) from = at + 1;
    });
    return plain.slice(from);
  });
}

function classesOf(selectors: readonly string[]): readonly string[] {
  return selectors.flatMap((selector) =>
    [...selector.matchAll(/\.([a-z][\w-]*)/gi)].map(([, name = '']) => name),
  );
}

function classesWritten(text: string): ReadonlySet<string> {
  const lists = [...text.matchAll(/class="([^"]*)"/g)].map(([, list = '']) => list);
  return new Set(lists.flatMap((list) => list.split(' ')));
}

const isScreen = (folder: string) => folder.startsWith('screens/');

function noteIn(all: Map<string, Set<string>>, name: string, folder: string): void {
  all.set(name, (all.get(name) ?? new Set()).add(folder));
}

function listed(folders: Iterable<string>): string {
  return [...folders].sort().join(' and ');
}
