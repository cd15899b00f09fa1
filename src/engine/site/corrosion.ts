import type { BodyOf, Figure, Reason } from '../record';
import { type Category, categoryRows, inputRanges, type Metal, metalRow, metals, uncertainty } from './metals';
import { because } from './reasonCodes';

/** The four figures the standard asks for: yearly means of degrees Celsius, percent, and mg/(m2 day) twice. */
export type Air = Pick<BodyOf<'climate'>, 'temperature' | 'humidity' | 'so2' | 'chloride'>;

/** First-year corrosion of a clean coupon of one metal in this air. */
export interface CorrosionRate {
  readonly metal: Metal;
  /** um a year; `low` and `high` the standard's own uncertainty of a rate that was not measured. */
  readonly rate: Figure;
  /** g/(m2 a). */
  readonly mass: number;
  readonly so2Term: number;
  readonly chlorideTerm: number;
  /** By um a year: the column this app goes by. Null beyond the table. */
  readonly category: Category | null;
  /** By g/(m2 a): the two columns are rounded apart, and near a limit they differ. */
  readonly categoryByMass: Category | null;
}

/** The sum of the two terms, um a year; no deposition of a pollutant adds nothing of its term. */
export const firstYearRate = (metal: Metal, air: Air): { readonly so2Term: number; readonly chlorideTerm: number } => {
  const { so2, chloride } = metalRow(metal);
  const { temperature, humidity } = air;
  const f = (temperature <= 10 ? so2.cold : so2.warm) * (temperature - 10);
  return {
    so2Term: so2.factor * air.so2 ** so2.power * Math.exp(so2.humidity * humidity + f),
    chlorideTerm:
      chloride.factor *
      air.chloride ** chloride.power *
      Math.exp(chloride.humidity * humidity + chloride.temperature * temperature),
  };
};

const within = (value: number, limits: readonly number[]): Category | null => {
  const at = limits.findIndex((limit) => value <= limit);
  return categoryRows[at]?.id ?? null;
};

/** Category of a first-year rate by one of the two columns of the table; null above its last limit. Upper limits are inclusive. */
export const categoryOf = (metal: Metal, value: number, column: 'um' | 'mass'): Category | null => {
  const row = metalRow(metal);
  return within(value, column === 'um' ? row.limitsUm : row.limitsMass);
};

/** Inputs outside the ranges the functions were derived from: told, and reckoned with all the same. */
export const flagsOf = (air: Air): readonly Reason[] =>
  (Object.keys(inputRanges) as (keyof typeof inputRanges)[]).flatMap((what) => {
    const { low, high } = inputRanges[what];
    const value = air[what];
    return value < low || value > high ? [because('site: outside the range', { what, value, low, high })] : [];
  });

/** ISO 9223:2012: first-year rates of copper, carbon steel and zinc, with category, uncertainty and flags. */
export const corrosionRates = (air: Air): readonly CorrosionRate[] => {
  const flags = flagsOf(air);
  return metals.map(({ id, density, limitsUm }) => {
    const { so2Term, chlorideTerm } = firstYearRate(id, air);
    const rate = so2Term + chlorideTerm;
    const mass = rate * density;
    const [category, categoryByMass] = [categoryOf(id, rate, 'um'), categoryOf(id, mass, 'mass')];
    const most = limitsUm.at(-1) ?? 0;
    const reasons = [
      because('site: clean coupons'),
      ...flags,
      ...(category === categoryByMass
        ? []
        : [
            because('site: two columns, two categories', {
              metal: id,
              byThickness: category ?? '',
              byMass: categoryByMass ?? '',
            }),
          ]),
      ...(category === null ? [because('site: beyond the table', { metal: id, rate, most })] : []),
    ];
    return {
      metal: id,
      rate: { value: rate, low: rate * (1 - uncertainty.down), high: rate * (1 + uncertainty.up), reasons },
      mass,
      so2Term,
      chlorideTerm,
      category,
      categoryByMass,
    };
  });
};
