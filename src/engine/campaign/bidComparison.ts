import { median } from '../chance';
import type { Money } from '../money';
import { daysBetween, type Reason, type Thing } from '../record';
import { fewestPrices, outlierFactor, workItemOf } from '../trade';
import { type PriceOfLine, priceOfLine } from './priceOfLine';
import { because } from './reasonCodes';
import type { QuantityLine } from './scheduleOfQuantities';

/** One line of the schedule with what each bidder asks for it. */
export interface ComparedLine {
  readonly line: QuantityLine;
  /** Median of the prices of one unit, minor units; undefined where too few are there. */
  readonly median: number | undefined;
  /** By bid; one that did not price the line is not here. `odd`: the price of a unit parts from the median by more than the factor. */
  readonly prices: ReadonlyMap<string, PriceOfLine & { readonly odd: 'high' | 'low' | undefined }>;
}

export interface ComparedBid {
  readonly bid: Thing<'bid'>;
  /** Of the lines of the schedule that were priced. */
  readonly total: Money;
  /** Of the lines that all bids of this currency priced: what may be held against each other. */
  readonly shared: Money;
  /** Price of one m2 over all lines by area, as the bidder measured it where they did, minor units; undefined where none is. */
  readonly perM2: number | undefined;
  readonly missing: readonly QuantityLine[];
  readonly reasons: readonly Reason[];
}

/** Bids in one currency, side by side. Two currencies are never in one comparison. */
export interface BidComparison {
  readonly currency: string;
  readonly lines: readonly ComparedLine[];
  readonly bids: readonly ComparedBid[];
  /** How many lines all of them priced. */
  readonly sharedLines: number;
  readonly reasons: readonly Reason[];
}

/** Withdrawn bids are left out; those past their day stand with a reason. `today`: YYYY-MM-DD. */
export const compareBids = (
  schedule: readonly QuantityLine[],
  bids: readonly Thing<'bid'>[],
  today: string,
): readonly BidComparison[] => {
  const standing = bids.filter(({ body }) => body.withdrawn === undefined);
  const currencies = [...new Set(standing.map(({ body }) => body.currency))];
  return currencies.map((currency) =>
    inOneCurrency(
      currency,
      schedule,
      standing.filter(({ body }) => body.currency === currency),
      today,
    ),
  );
};

const inOneCurrency = (
  currency: string,
  schedule: readonly QuantityLine[],
  bids: readonly Thing<'bid'>[],
  today: string,
): BidComparison => {
  const lines = schedule.map((line) => comparedLine(line, bids));
  const shared = lines.filter(({ prices }) => prices.size === bids.length);
  const money = (minor: number): Money => ({ minor, currency });
  const few = bids.length < fewestPrices.value;
  return {
    currency,
    lines,
    bids: bids.map((bid) => ({
      bid,
      total: money(totalOf(lines, bid.thing)),
      shared: money(totalOf(shared, bid.thing)),
      perM2: perM2(lines, bid),
      missing: lines.filter(({ prices }) => !prices.has(bid.thing)).map(({ line }) => line),
      reasons: reasonsOf(bid, lines, schedule, today),
    })),
    sharedLines: shared.length,
    reasons: few
      ? [because('campaign: too few prices to compare', { count: bids.length, least: fewestPrices.value })]
      : [],
  };
};

const comparedLine = (line: QuantityLine, bids: readonly Thing<'bid'>[]): ComparedLine => {
  const priced = bids.flatMap(({ thing, body }) => {
    const own = body.lines.find(({ item }) => item === line.id);
    return own ? [{ thing, price: priceOfLine(line, own) }] : [];
  });
  const rates = priced.map(({ price }) => price.rate.value).sort((a, b) => a - b);
  const middle = rates.length < fewestPrices.value ? undefined : median(rates);
  const prices = priced.map(({ thing, price }) => [thing, withOddness(price, middle)] as const);
  return { line, median: middle, prices: new Map(prices) };
};

const withOddness = (price: PriceOfLine, median: number | undefined) => {
  const { value: factor } = outlierFactor;
  const { rate } = price;
  if (median === undefined || median === 0) return { ...price, odd: undefined };
  const times = rate.value / median;
  const odd = times > factor ? ('high' as const) : times < 1 / factor ? ('low' as const) : undefined;
  if (!odd) return { ...price, odd };
  const code = odd === 'high' ? 'campaign: price out of line' : 'campaign: price far below';
  const said = because(code, { times: odd === 'high' ? times : 1 / times, factor });
  return { ...price, odd, rate: { ...rate, reasons: [...rate.reasons, said] } };
};

const totalOf = (lines: readonly ComparedLine[], bid: string): number =>
  lines.reduce((sum, { prices }) => sum + (prices.get(bid)?.minor ?? 0), 0);

const perM2 = (lines: readonly ComparedLine[], { thing, body }: Thing<'bid'>): number | undefined => {
  const areas = lines.flatMap(({ line, prices }) => {
    const price = line.unit === 'm2' ? prices.get(thing) : undefined;
    const amount = body.lines.find(({ item }) => item === line.id)?.measured ?? line.amount;
    return price ? [{ zone: line.zone ?? line.id, amount, minor: price.minor }] : [];
  });
  // Two tasks on one zone are two prices of one surface.
  const surface = new Map(areas.map(({ zone, amount }) => [zone, amount]));
  const m2 = [...surface.values()].reduce((sum, amount) => sum + amount, 0);
  return m2 > 0 ? areas.reduce((sum, { minor }) => sum + minor, 0) / m2 : undefined;
};

const reasonsOf = (
  { thing, body }: Thing<'bid'>,
  lines: readonly ComparedLine[],
  schedule: readonly QuantityLine[],
  today: string,
): readonly Reason[] => {
  const missing = lines.filter(({ prices }) => !prices.has(thing)).map(({ line }) => line);
  const unprotected = missing.filter(({ task }) => workItemOf(task)?.protects);
  const adrift = body.lines.filter(({ item }) => !schedule.some(({ id }) => id === item));
  return [
    ...(missing.length > 0 ? [because('campaign: lines not priced', { count: missing.length })] : []),
    ...(unprotected.length > 0
      ? [because('campaign: insert protection not priced', { count: unprotected.length })]
      : []),
    ...(adrift.length > 0 ? [because('campaign: lines no longer in the schedule', { count: adrift.length })] : []),
    ...(body.visited === undefined ? [because('campaign: site not visited')] : []),
    validity(body.validUntil, today),
  ];
};

const validity = (until: string | undefined, today: string): Reason => {
  if (until === undefined) return because('campaign: bid without a last day');
  return until < today
    ? because('campaign: bid past its day', { date: until })
    : because('campaign: bid valid until', { date: until, days: daysBetween(today, until) });
};
