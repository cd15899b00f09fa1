import type { QuantityLine, SeenInZone } from '../engine/campaign';
import { countOf, kindOf, severityOf, workItemOf } from '../engine/trade';
import { quantities as words } from './en/campaignBids';
import { charts } from './en/charts';
import { area, date, list, number, share } from './format';
import { midSentence } from './midSentence';
import { tongueNow } from './tongue';

/** The work of a line: the row's name, or the person's own words. */
export const taskName = (task: string): string => workItemOf(task)?.name ?? task;

/** "1.50 m²", "5 pieces", "once". Prices are asked and given by the square metre; where feet are read they stand behind. */
export const amountText = ({ amount, unit }: Pick<QuantityLine, 'amount' | 'unit'>): string =>
  unit === 'sum' && amount === 1
    ? words.units.sum
    : `${number(amount)} ${words.unitOf(unit, amount === 1)}${unit === 'm2' && tongueNow().units === 'us' ? ` (${area(amount)})` : ''}`;

/** What the last round saw in a zone, in a few words: "12 May 2026: even green film, 20 to 40 %, moderate". */
export const seenText = (seen: SeenInZone): string => {
  if (seen.state === 'not looked') return words.seenOn(date(seen.date), words.seenNot);
  if (seen.findings.length === 0) return words.seenOn(date(seen.date), words.seenNothing);
  const found = seen.findings.map(({ kind, coverage, count, severity }) =>
    [
      midSentence(kindOf(kind)?.name ?? kind),
      coverage && `${share(coverage.low)} ${charts.lastTo} ${share(coverage.high)}`,
      count && countOf(count).name.toLowerCase(),
      severity && severityOf(severity).name.toLowerCase(),
    ]
      .filter(Boolean)
      .join(', '),
  );
  return words.seenOn(date(seen.date), list(found));
};
