const FEWER = Math.max(1, Number(process.env['FEWER_RUNS'] ?? 1));

/**
 * How many of `full` random cases a test tries: all, but for mutation testing (build/mutation), which runs each test
 * hundreds of times and sets FEWER_RUNS, the share left being 1 / FEWER_RUNS. Least counts are asked for through it too.
 */
export const runs = (full: number): number => Math.ceil(full / FEWER);
