import type { QuantityLine } from './scheduleOfQuantities';

/** Surface over all lines by area, each zone once, with the sum of its ends: between which it surely lies. m2. */
export const surfaceOf = (lines: readonly QuantityLine[]) => {
  const zones = new Map(lines.filter(({ unit }) => unit === 'm2').map((line) => [line.zone ?? line.id, line]));
  const sum = (of: (line: QuantityLine) => number): number =>
    [...zones.values()].reduce((all, line) => all + of(line), 0);
  return {
    value: sum(({ amount }) => amount),
    low: sum(({ low, amount }) => low ?? amount),
    high: sum(({ high, amount }) => high ?? amount),
  };
};
