import type { Turnbull } from './turnbull';

/** The share that lasts, over a stretch of time: known where low and high are one, anywhere between where they are not. */
export interface SurvivalStep {
  readonly from: number;
  /** Infinity where nothing more was seen. */
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** The share lasting beyond each time, as steps from 0 on. Inside a stretch that holds mass it is unknown where the fall lies. */
export const stepsOf = ({ masses }: Turnbull): readonly SurvivalStep[] => {
  const steps: SurvivalStep[] = [];
  let at = 0;
  let lasting = 1;
  for (const { left, right, mass } of masses) {
    if (left > at) steps.push({ from: at, to: left, low: lasting, high: lasting });
    const after = Math.max(0, lasting - mass);
    if (right > left) steps.push({ from: left, to: right, low: after, high: lasting });
    lasting = after;
    at = right;
  }
  if (at < Number.POSITIVE_INFINITY)
    steps.push({ from: at, to: Number.POSITIVE_INFINITY, low: lasting, high: lasting });
  return steps;
};

/** Share lasting beyond a time, 0 to 1: between these two. */
export const survivalAt = ({ masses }: Turnbull, time: number): { readonly low: number; readonly high: number } => {
  const surelyOver = masses.filter(({ right }) => right <= time).reduce((sum, { mass }) => sum + mass, 0);
  const perhapsOver = masses
    .filter(({ left, right }) => left < time || (left === right && left <= time))
    .reduce((sum, { mass }) => sum + mass, 0);
  const share = (over: number): number => Math.min(1, Math.max(0, 1 - over));
  return { low: share(Math.max(perhapsOver, surelyOver)), high: share(surelyOver) };
};
