import { drawnFrom } from '../../src/engine/chance';
import { type Interval, turnbull, weibull } from '../../src/engine/life';
import type { Line } from './figures';

/** Lives of a Weibull kind looked at now and then, to a thousandth: hardly any two of them alike. */
const lives = (count: number): readonly Interval[] => {
  const drawn = drawnFrom(20261125);
  const thousandths = (x: number): number => Math.max(0, Math.round(x * 1000) / 1000);
  return Array.from({ length: count }, () => {
    const end = 10 * (-Math.log(1 - drawn.uniform())) ** (1 / 1.5);
    const lower = thousandths(end - 3 * drawn.uniform());
    const open = drawn.uniform() < 0.2;
    return {
      lower,
      upper: open ? Number.POSITIVE_INFINITY : Math.max(lower + 0.001, thousandths(end + 4 * drawn.uniform())),
    };
  });
};

const timed = (what: string, sum: () => unknown): Line => {
  const began = performance.now();
  sum();
  return { what, measured: performance.now() - began, unit: 'ms' };
};

/** How long the fits to ten thousand lives take, at full speed. */
export const linesOfLives = (): readonly Line[] => {
  const many = lives(10_000);
  return [
    timed('steps without a shape, 10,000 intervals', () => turnbull(many)),
    timed('Weibull fit with its limits, 10,000 intervals', () => weibull(many)),
  ];
};
