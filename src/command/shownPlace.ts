import type { BodyOf } from '../engine/record';
import { corrosionRates } from '../engine/site';
import type { Say } from './said';

/** The air of the place and what it does to clean coupons in their first year; null where nobody entered it. */
export const shownPlace = (climate: BodyOf<'climate'> | null, said: Say) =>
  climate && {
    air: climate,
    rates: corrosionRates(climate).map(({ rate, ...row }) => ({
      ...row,
      rate: { ...rate, reasons: said(rate.reasons) },
    })),
  };
