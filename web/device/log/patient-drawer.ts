import type { Drawer } from './sheet.ts';

/** A drawer did not answer in good time. It is not asked again at once. */
export class DrawerHangs extends Error {}

/**
 * A drawer whose questions always come to an end: each may take so many milliseconds, then it rejects as
 * `DrawerHangs`. A great many questions may take far longer than one and are waited for, since each that is
 * answered shows that the drawer is alive. What is added or removed is waited for by whoever does so.
 */
export function withPatience(drawer: Drawer, milliseconds: number): Drawer {
  return {
    names: () => inTime(drawer.names()),
    read: (name) => inTime(drawer.read(name)),
    add: (name, line) => drawer.add(name, line),
    remove: (name) => drawer.remove(name),
  };

  async function inTime<Answer>(asked: Promise<Answer>): Promise<Answer> {
    let late: ReturnType<typeof setTimeout> | undefined;
    const tooLate = new Promise<never>((_, reject) => {
      late = setTimeout(() => reject(new DrawerHangs('The drawer does not answer.')), milliseconds);
    });
    try {
      return await Promise.race([asked, tooLate]);
    } finally {
      clearTimeout(late);
    }
  }
}
