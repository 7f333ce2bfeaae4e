/** Classes that the model's numbers were fitted to, and the baselines'. */
export const TRAINING_SEEDS: readonly number[] = [1, 2, 3, 4, 5, 6, 7, 8];

/** Larger classes of which fewer children read alone; the model's numbers were fitted to them too. */
export const WHOLE_CLASS_SEEDS: readonly number[] = [9, 10, 11];
export const WHOLE_CLASS = { pupils: 22, alone: 0.3 } as const;

/**
 * Classes that nothing was fitted to, and that were not looked at while the model was being made:
 * for that there were others (101 to 108, 301 to 308, 1001 to 1012).
 */
export const HELD_OUT_SEEDS: readonly number[] = [
  2001, 2002, 2003, 2004, 2005, 2006, 2007, 2008, 2009, 2010, 2011, 2012,
];

/** Classes that are taught twice, by plan and by chance. */
export const PLANNED_SEEDS: readonly number[] = [201, 202, 203, 204];
