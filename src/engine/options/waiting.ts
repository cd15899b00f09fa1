import { type MoneyRules, priceAfter } from '../money';
import type { Reason } from '../record';
import { waitingYears } from './numbers';
import { type Costed, currencyOf, onceOff, paymentsOf, unitsOfLine } from './payments';
import { because } from './reasonCodes';

export interface Waiting {
  readonly years: number;
  /** What the treatment will cost then; whole units of its currency, contingency included. */
  readonly price: number;
  /** More than today, by the rise of prices. */
  readonly rise: number;
  /** Paid in the meantime to keep the surface going. */
  readonly care: number;
  /** More surface to treat, at the price of a m2. */
  readonly growth: { readonly value: number; readonly low: number; readonly high: number };
  /** All three: what waiting costs. */
  readonly extra: { readonly value: number; readonly low: number; readonly high: number };
}

export interface PriceOfWaiting {
  readonly currency: string;
  /** Today's price of what is paid once, contingency included. */
  readonly now: number;
  readonly waits: readonly Waiting[];
  readonly reasons: readonly Reason[];
}

interface Asked {
  readonly option: Costed;
  /** The care that goes on meanwhile, by its name: "keep waxing". */
  readonly care: { readonly thing: string; readonly option: Costed } | undefined;
  /** m2 of green a year; null where no growth is known. */
  readonly growth: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** m2 the option treats. */
  readonly area: number;
  /** It treats the whole work: more green is no more surface. */
  readonly whole: boolean;
}

/**
 * What it costs to wait one year, or three, with a treatment paid for once: its price rises, care goes on, and the green spreads. Each
 * by itself; nothing is discounted, since it is what the invoice will say. Null where nothing falls once.
 */
export const priceOfWaiting = (asked: Asked, rules: MoneyRules): PriceOfWaiting | null => {
  const { option, care, growth, area, whole } = asked;
  const currency = currencyOf(option);
  const lines = onceOff(option, rules);
  if (typeof currency !== 'string' || lines.length === 0) return null;
  const now = lines.reduce((sum, line) => sum + unitsOfLine(line, rules), 0);
  const kept = care && currencyOf(care.option) === currency ? care : undefined;
  const meanwhile = kept ? paymentsOf({ ...kept.option, costs: running(kept.option) }, rules) : [];
  const upkeep = running(option);
  const spared = paymentsOf({ ...option, costs: upkeep }, rules);
  const unit = area > 0 && !whole ? now / area : 0;
  const waits = waitingYears
    .filter((years) => years <= rules.years)
    .map((years): Waiting => {
      const price = lines.reduce(
        (sum, line) => sum + priceAfter(unitsOfLine(line, rules), line.growth ?? rules.growth, years),
        0,
      );
      const rise = price - now;
      const paid = meanwhile.slice(1, years + 1).reduce((sum, one) => sum + one, 0);
      const more = (m2: number) => Math.max(0, m2) * years * unit * (price / now || 1);
      const spread = growth
        ? { value: more(growth.value), low: more(growth.low), high: more(growth.high) }
        : { value: 0, low: 0, high: 0 };
      const extra = {
        value: rise + paid + spread.value,
        low: rise + paid + spread.low,
        high: rise + paid + spread.high,
      };
      return { years, price, rise, care: paid, growth: spread, extra };
    });
  const growths = new Set(lines.map((line) => line.growth ?? rules.growth));
  return {
    currency,
    now,
    waits,
    reasons: [
      ...[...growths].map((share) => because('waiting: prices rise', { growth: share })),
      kept ? because('waiting: care meanwhile', { option: kept.thing }) : because('waiting: no care named'),
      ...((spared[1] ?? 0) > 0 ? [because('waiting: upkeep spared', { amount: spared[1] ?? 0, currency })] : []),
      whole
        ? because('waiting: whole surface priced')
        : growth === null
          ? because('waiting: growth not known')
          : because('waiting: green grows', { m2: growth.value, unit, currency }),
    ],
  };
};

/** What falls each year. */
const running = ({ costs }: Costed): Costed['costs'] => costs.filter(({ every }) => every === 1);
