import { lstatSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/** The files to which links lead out of a folder, as `device inode`. */
export function linksOut(folder: string): ReadonlySet<string> {
  const root = realpathSync(folder) + sep;
  const found = new Set<string>();
  visit(folder, false);
  return found;

  /** `isOut`: the folder is itself reached by a link that leads out. */
  function visit(place: string, isOut: boolean): void {
    for (const name of readdirSync(place)) {
      const path = join(place, name);
      const isLink = lstatSync(path).isSymbolicLink();
      const target = statSync(path, { throwIfNoEntry: false });
      if (target === undefined) continue;
      const leadsOut = isOut || (isLink && !realpathSync(path).startsWith(root));
      if (target.isDirectory() && (leadsOut || !isLink)) visit(path, leadsOut);
      else if (leadsOut) found.add(`${target.dev} ${target.ino}`);
    }
  }
}
