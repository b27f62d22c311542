const FEWER = Math.max(1, Number(process.env['FEWER_RUNS'] ?? 1));

/** Whether random tests try all of their cases. */
export const isWhole = FEWER === 1;

/**
 * How many of `full` random cases a test tries: all, but for mutation testing (build/mutation), which runs each test
 * hundreds of times and sets FEWER_RUNS: then `full` / FEWER_RUNS, and at least one.
 */
export const runs = (full: number): number => Math.ceil(full / FEWER);

/** How often something must have been met among all the cases, so that a test could have failed; nothing among fewer. */
export const least = (full: number): number => (isWhole ? full : 0);
