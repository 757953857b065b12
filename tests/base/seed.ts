/** Seed of the random tests: new at every run, stands in their names; SEED=n repeats a run. */
export const SEED = Number(process.env.SEED ?? Date.now() % 2 ** 31);
