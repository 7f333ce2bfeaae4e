/** Classes that baselines are fitted to, in each world its own. */
export const TUNING_SEEDS: readonly number[] = [7001, 7002];

/** Classes that our model and its rivals are judged on; nothing was fitted to them. */
export const JUDGING_SEEDS: readonly number[] = [9101, 9102, 9103, 9104];

/** Classes that are taught twice, by plan and by chance. */
export const PLANNED_SEEDS: readonly number[] = [201, 202, 203, 204];
