import type { BodyOf, Figure, Reason } from '../record';
import { because } from './reasonCodes';
import type { QuantityLine } from './scheduleOfQuantities';

export type BidLine = BodyOf<'bid'>['lines'][number];

/** What a bidder asks for one line. Minor units of the bid's currency. */
export interface PriceOfLine {
  readonly minor: number;
  /** Price of one m2, piece, day or sum; its range is that of the area, none where the bidder measured. */
  readonly rate: Figure;
}

/** The price of a line and of its unit: over the area the bidder measured, else over that of the schedule with its range. */
export const priceOfLine = ({ amount, low, high }: QuantityLine, { minor, measured }: BidLine): PriceOfLine => {
  const nothing = minor === 0 ? [because('campaign: priced at nothing')] : [];
  if (measured !== undefined) {
    const rate = minor / measured;
    const reasons = [
      because('campaign: rate on own area', { measured }),
      ...measuredOtherwise(measured, low ?? amount, high ?? amount),
      ...nothing,
    ];
    return { minor, rate: { value: rate, low: rate, high: rate, reasons } };
  }
  const [least, most] = [low ?? amount, high ?? amount];
  const ranged = least === most ? [] : [because('campaign: rate on the schedule', { low: least, high: most })];
  // A range that reaches down to nothing says nothing of the highest rate.
  const rate = { value: minor / amount, low: minor / most, high: least > 0 ? minor / least : minor / amount };
  return { minor, rate: { ...rate, reasons: [...ranged, ...nothing] } };
};

const measuredOtherwise = (measured: number, low: number, high: number): Reason[] =>
  measured < low || measured > high ? [because('campaign: area measured otherwise', { measured, low, high })] : [];
