import type { BrowserContext } from 'playwright-core';

/** Which warm-ups come by chance; another number shows others: JOURNEY_SEED=2 npm run journeys. */
export const SEED = Number(process.env.JOURNEY_SEED ?? 1);

/**
 * Lets the pages of a browser draw the same seeds in every run, each seed once, so that what a journey
 * meets does not hang on luck. Ids stay random.
 */
export async function setChance(context: BrowserContext): Promise<void> {
  await context.addInitScript((seed) => {
    const draw = crypto.getRandomValues.bind(crypto);
    let drawn = 0;
    const next = (): number => {
      drawn += 1;
      try {
        drawn = Math.max(drawn, Number(localStorage.getItem('journey.drawn')) + 1);
        localStorage.setItem('journey.drawn', String(drawn));
      } catch {
        // Without storage, chance begins again with every load.
      }
      return seed * 1000 + drawn;
    };
    crypto.getRandomValues = (array) =>
      array instanceof Uint32Array ? array.fill(next()) : draw(array);
  }, SEED);
}
