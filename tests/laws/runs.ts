/** How often a law is tried: 2,000 times in each test run, and as often as asked (with a seed) by hand. */
const { LAW_RUNS, LAW_SEED } = process.env;

export const lawRuns = Number(LAW_RUNS ?? 2000);

export const runs = { numRuns: lawRuns, ...(LAW_SEED === undefined ? {} : { seed: Number(LAW_SEED) }) };

/** Milliseconds a law may take. */
export const enough = Math.max(120_000, lawRuns * 60);
