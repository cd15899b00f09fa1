import type { Coverage } from './zoneDraft';

/** Stops on either side of the value of a step, before its bin ends. */
const stopsEachSide = 2;

const tidy = (value: number): number => Math.round(value * 1e5) / 1e5;

/**
 * One stop less (-1) or more (1) inside the bin of a step, in thirds of the way from the step's value to the end of the bin. The bin
 * stays; undefined where there is no stop left, or where the coverage was not taken from the ladder.
 *
 * @param step value of the ladder step the bin belongs to, 0 to 1
 */
export const coverageBetween = (coverage: Coverage, step: number, by: -1 | 1): Coverage | undefined => {
  const { value, low, high, method } = coverage;
  if (method !== 'ladder' && method !== 'ladder, adjusted') return undefined;
  if (!(low < step && step < high)) return undefined;
  const side = (stop: number) => (stop < 0 ? step - low : high - step);
  const at = (stop: number) => step + (stop * side(stop)) / (stopsEachSide + 1);
  const now = Math.round(((value - step) * (stopsEachSide + 1)) / (value < step ? step - low : high - step));
  const next = now + by;
  if (Math.abs(next) > stopsEachSide) return undefined;
  return next === 0
    ? { ...coverage, value: step, method: 'ladder' }
    : { ...coverage, value: tidy(at(next)), method: 'ladder, adjusted' };
};
