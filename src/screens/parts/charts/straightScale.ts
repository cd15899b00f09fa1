import { nice, ticks } from 'd3-array';

/** From values to places on the drawing, along a straight line. */
export interface StraightScale {
  (value: number): number;
  domain(): readonly [number, number];
  range(): readonly [number, number];
  /** About so many round values within the domain. */
  ticks(count: number): number[];
  /** The same with its ends at round values. */
  nice(): StraightScale;
}

/** A domain without width lies in the middle of the range. */
export const straightScale = (domain: readonly [number, number], range: readonly [number, number]): StraightScale => {
  const [from, to] = domain;
  const [start, end] = range;
  const place = (value: number) => start + (to === from ? 0.5 : (value - from) / (to - from)) * (end - start);
  return Object.assign(place, {
    domain: () => domain,
    range: () => range,
    ticks: (count: number) => ticks(from, to, count),
    nice: () => straightScale(nice(from, to, 10), range),
  });
};
