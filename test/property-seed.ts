import fc from 'fast-check';

/**
 * Property tests try the same cases every time, so that a commit that passed once passes again.
 * PROPERTY_SEED=N tries others.
 */
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 1) });
