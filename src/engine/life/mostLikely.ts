import { chances, type Reach } from './innermost';

/** No mass moved anywhere may raise the log-likelihood per interval by more than this. */
const gapAllowed = 1e-11;
const mostRounds = 1000;
/** Mass under this is none: it is still on its way to zero when the rest stands. */
const none = 1e-9;

interface Sums {
  readonly times: readonly number[];
  readonly reach: readonly Reach[];
  readonly n: number;
}

/**
 * The masses that make the intervals most likely: steps of self-consistency, which find where mass dies out, in turn with steps of
 * the whole distribution function, which run where those creep. Wellner and Zhan 1997, J. Amer. Statist. Assoc. 92:945-959.
 */
export const mostLikely = (times: readonly number[], reach: readonly Reach[], stretches: number): Float64Array => {
  const sums = { times, reach, n: times.reduce((sum, k) => sum + k, 0) };
  let masses: Float64Array = new Float64Array(stretches).fill(1 / stretches);
  for (let round = 0; round < mostRounds; round++) {
    const pull = pulls(masses, sums);
    if (pull.reduce((most, one) => Math.max(most, one), 0) - 1 < gapAllowed) break;
    masses = wholeStep(scaled(masses.map((mass, j) => mass * (pull[j] as number))), sums);
  }
  return scaled(masses.map((mass) => (mass < none ? 0 : mass)));
};

const scaled = (masses: Float64Array): Float64Array => {
  const sum = masses.reduce((all, mass) => all + mass, 0);
  return masses.map((mass) => mass / sum);
};

/** How much the log-likelihood would rise with mass at each stretch, per interval. 1 or less everywhere at the maximum. */
const pulls = (masses: Float64Array, { times, reach, n }: Sums): Float64Array => {
  const chance = chances(masses, reach);
  const steps = new Float64Array(masses.length + 1);
  reach.forEach(({ first, last }, i) => {
    const share = (times[i] as number) / Math.max(chance[i] as number, 1e-300) / n;
    steps[first] = (steps[first] as number) + share;
    steps[last + 1] = (steps[last + 1] as number) - share;
  });
  let sum = 0;
  return Float64Array.from(masses, (_, j) => {
    sum += steps[j] as number;
    return sum;
  });
};

const logLikelihood = (masses: Float64Array, { times, reach }: Sums): number => {
  const chance = chances(masses, reach);
  return times.reduce((sum, n, i) => sum + n * Math.log(Math.max(chance[i] as number, 1e-300)), 0);
};

/** A Newton step of the distribution function by the diagonal, made rising again, and shortened until it is a gain. */
const wholeStep = (masses: Float64Array, sums: Sums): Float64Array => {
  const m = masses.length;
  if (m < 2) return masses;
  const chance = chances(masses, sums.reach);
  const slope = new Float64Array(m + 1);
  const weight = new Float64Array(m + 1);
  sums.reach.forEach(({ first, last }, i) => {
    const share = (sums.times[i] as number) / Math.max(chance[i] as number, 1e-300);
    const square = share / Math.max(chance[i] as number, 1e-300);
    slope[last + 1] = (slope[last + 1] as number) + share;
    slope[first] = (slope[first] as number) - share;
    weight[last + 1] = (weight[last + 1] as number) + square;
    weight[first] = (weight[first] as number) + square;
  });
  const wanted = new Float64Array(m - 1);
  const weights = new Float64Array(m - 1);
  let upTo = 0;
  for (let k = 1; k < m; k++) {
    upTo += masses[k - 1] as number;
    weights[k - 1] = Math.max(weight[k] as number, 1e-12);
    wanted[k - 1] = upTo + (slope[k] as number) / (weights[k - 1] as number);
  }
  const risen = rising(wanted, weights);
  const aim = masses.map((_, j) => held(risen[j], 1) - held(risen[j - 1], 0));
  const before = logLikelihood(masses, sums);
  for (let part = 1; part > 1e-6; part /= 2) {
    const tried = masses.map((mass, j) => (1 - part) * mass + part * (aim[j] as number));
    if (logLikelihood(tried, sums) > before) return tried;
  }
  return masses;
};

/** The distribution function past its ends is 0 and 1, and never beyond. */
const held = (value: number | undefined, beyond: number): number => Math.min(1, Math.max(0, value ?? beyond));

/** The rising numbers nearest to these by weighted squares (pool adjacent violators). */
const rising = (values: Float64Array, weights: Float64Array): Float64Array => {
  const pools: { value: number; weight: number; count: number }[] = [];
  values.forEach((value, i) => {
    let pool = { value, weight: weights[i] as number, count: 1 };
    for (let last = pools.at(-1); last && last.value >= pool.value; last = pools.at(-1)) {
      const weight = last.weight + pool.weight;
      pool = {
        value: (last.value * last.weight + pool.value * pool.weight) / weight,
        weight,
        count: last.count + pool.count,
      };
      pools.pop();
    }
    pools.push(pool);
  });
  return Float64Array.from(pools.flatMap(({ value, count }) => new Array<number>(count).fill(value)));
};
