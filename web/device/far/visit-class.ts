import { type FarClassSpec, openFarClass } from './far-class.ts';

/** Looking in on a class that is not open: what being in step needs, and nothing of the moment. */
export type VisitSpec = Omit<FarClassSpec, 'onChange' | 'onLive' | 'onSealed' | 'onReached'> & {
  /** Resolves when the class is opened here, and speaks for itself. */
  readonly whenOpened: Promise<unknown>;
  /** Waits so many milliseconds. */
  readonly pause: (ms: number) => Promise<unknown>;
};

/**
 * Brings a class up to date that is not open: sends what was recorded here, takes what came meanwhile, and
 * closes again. Answers whether the server was in reach.
 */
export async function visitClass({ whenOpened, pause, ...spec }: VisitSpec): Promise<boolean> {
  const far = await openFarClass(spec);
  let isOver = false;
  const over = Promise.race([far.settled(), whenOpened]).then(() => {
    isOver = true;
  });
  // A long history takes several looks; a line that is gone ends the visit.
  do await Promise.race([over, pause(LOOK)]);
  while (!isOver && far.state().isConnected);
  const { isConnected } = far.state();
  far.close();
  return isConnected;
}

/** So long until it is looked whether there is a line at all, in milliseconds. */
const LOOK = 10_000;
