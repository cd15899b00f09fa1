import type { QuantityLine, SeenInZone } from '../../engine/campaign';
import { countOf, kindOf, severityOf, workItemOf } from '../../engine/trade';
import { date, list, number, share, w } from '../../words';

const words = w.campaign.quantities;

/** The work of a line: the row's name, or the person's own words. */
export const taskName = (task: string): string => workItemOf(task)?.name ?? task;

/** "1.50 m²", "5 pieces", "once". */
export const amountText = ({ amount, unit }: Pick<QuantityLine, 'amount' | 'unit'>): string =>
  unit === 'sum' && amount === 1 ? words.units.sum : `${number(amount)} ${words.unitOf(unit, amount === 1)}`;

/** What the last round saw in a zone, in a few words: "12 May 2026: even green film, 20 to 40 %, moderate". */
export const seenText = (seen: SeenInZone): string => {
  if (seen.state === 'not looked') return words.seenOn(date(seen.date), words.seenNot);
  if (seen.findings.length === 0) return words.seenOn(date(seen.date), words.seenNothing);
  const found = seen.findings.map(({ kind, coverage, count, severity }) =>
    [
      (kindOf(kind)?.name ?? kind).toLowerCase(),
      coverage && `${share(coverage.low)} ${w.charts.lastTo} ${share(coverage.high)}`,
      count && countOf(count).name.toLowerCase(),
      severity && severityOf(severity).name.toLowerCase(),
    ]
      .filter(Boolean)
      .join(', '),
  );
  return words.seenOn(date(seen.date), list(found));
};

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
