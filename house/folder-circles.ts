/**
 * Folders that need each other, over whatever way: each strongly connected component of more than one
 * folder, sorted by name (R. Tarjan, Depth-first search and linear graph algorithms, 1972). Two files that
 * need each other are seen by a rule of the import graph; two folders may need each other without that.
 */
export function folderCircles(
  imports: Iterable<readonly [from: string, to: string]>,
): readonly (readonly string[])[] {
  const next = new Map<string, Set<string>>();
  for (const [from, to] of imports) {
    const [one, other] = [folderOf(from), folderOf(to)];
    for (const folder of [one, other]) if (!next.has(folder)) next.set(folder, new Set());
    if (one !== other) next.get(one)?.add(other);
  }
  const circles: string[][] = [];
  const numbers = new Map<string, number>();
  const lowest = new Map<string, number>();
  const path: string[] = [];
  const visit = (folder: string): number => {
    const number = numbers.size;
    numbers.set(folder, number);
    lowest.set(folder, number);
    path.push(folder);
    for (const other of next.get(folder) ?? []) {
      const reached = numbers.has(other)
        ? path.includes(other)
          ? (numbers.get(other) as number)
          : number
        : visit(other);
      lowest.set(folder, Math.min(lowest.get(folder) as number, reached));
    }
    if (lowest.get(folder) === number) {
      const circle = path.splice(path.indexOf(folder));
      if (circle.length > 1) circles.push(circle.sort());
    }
    return lowest.get(folder) as number;
  };
  for (const folder of next.keys()) if (!numbers.has(folder)) visit(folder);
  return circles;
}

function folderOf(file: string): string {
  return file.slice(0, Math.max(0, file.lastIndexOf('/')));
}
