import { written } from './numbers';
import { tongueNow } from './tongue';

/**
 * What is shown and typed in the units of the device. The record holds metres, square metres and degrees Celsius whatever is chosen.
 * Left as they are everywhere: lenses and instrument openings (millimetres by their makers), cards and squares that are printed true
 * to size, rates of corrosion (ISO 9223), and amounts of a product, which are what its tin says.
 */
export type Quantity = 'area' | 'length' | 'centimetres' | 'millimetres' | 'temperature' | 'difference';

interface Unit {
  readonly unit: string;
  /** From what the record holds to what is shown. */
  readonly factor: number;
  readonly offset?: number;
}

/** 1 ft = 0.3048 m and 1 in = 25.4 mm exactly, 1 °F = 5/9 K from 32 °F at 0 °C: NIST Special Publication 811 (2008), appendix B. */
const footInMetres = 0.3048;
const inchInMillimetres = 25.4;

const units: Readonly<Record<'metric' | 'us', Readonly<Record<Quantity, Unit>>>> = {
  metric: {
    area: { unit: 'm²', factor: 1 },
    length: { unit: 'm', factor: 1 },
    centimetres: { unit: 'cm', factor: 1 },
    millimetres: { unit: 'mm', factor: 1 },
    temperature: { unit: '°C', factor: 1 },
    difference: { unit: 'K', factor: 1 },
  },
  us: {
    area: { unit: 'ft²', factor: 1 / footInMetres ** 2 },
    length: { unit: 'ft', factor: 1 / footInMetres },
    centimetres: { unit: 'in', factor: 10 / inchInMillimetres },
    millimetres: { unit: 'in', factor: 1 / inchInMillimetres },
    temperature: { unit: '°F', factor: 9 / 5, offset: 32 },
    difference: { unit: '°F', factor: 9 / 5 },
  },
};

const of = (quantity: Quantity): Unit => units[tongueNow().units][quantity];

/** "m²" or "ft²", for the head of a column or behind a field. */
export const unitOf = (quantity: Quantity): string => of(quantity).unit;

/** A value of the record in the unit shown, a number still. */
export const inUnit = (quantity: Quantity, value: number): number => {
  const { factor, offset = 0 } = of(quantity);
  return value * factor + offset;
};

/** A value of the record as text without its unit. `places` at most, noughts at the end left out. */
export const measureNumber = (quantity: Quantity, value: number, places = usual(quantity)): string =>
  written(inUnit(quantity, value), 0, places);

/** With its unit: "60 °C", "140 °F", "10.5 ft". No line ends between the two. */
export const measure = (quantity: Quantity, value: number, places?: number): string =>
  `${measureNumber(quantity, value, places)}\u00a0${unitOf(quantity)}`;

/** Places at which what was typed comes back as it was typed. An inch is some 25 of the unit it stands for: two places more. */
const usual = (quantity: Quantity): number => {
  if (quantity === 'millimetres') return tongueNow().units === 'us' ? 3 : 1;
  return quantity === 'area' || quantity === 'length' ? 2 : 1;
};

/** Square metres of the record, the number alone: two places under 10 of the unit shown, one above. */
export const areaNumber = (m2: number): string => {
  const shown = inUnit('area', m2);
  const places = Math.abs(shown) < 10 ? 2 : 1;
  return written(shown, places, places);
};

/** With its unit: "0.95 m²". */
export const area = (m2: number): string => `${areaNumber(m2)} ${unitOf('area')}`;

/** A number as typed in the unit shown, as the record holds it: to nine significant figures, so that no noughts and nines creep in. */
export const fromUnit = (quantity: Quantity, typed: number): number => {
  const { factor, offset = 0 } = of(quantity);
  if (factor === 1) return typed;
  return Number(((typed - offset) / factor).toPrecision(9));
};

/** The mark of decimals in the language spoken. */
export const decimalMark = (): '.' | ',' => (tongueNow().language === 'de' ? ',' : '.');

/** A number as it is typed into a field: with a decimal point, or comma in German. The dust of binary sums is left out. */
export const numberTyped = (value: number): string => String(Number(value.toPrecision(15))).replace('.', decimalMark());

/** A value of the record as it is typed into a field, to be read again: without grouping. */
export const measureTyped = (quantity: Quantity, value: number): string => {
  const shown = inUnit(quantity, value);
  return numberTyped(of(quantity).factor === 1 ? shown : Number(Number(shown.toFixed(5)).toPrecision(7)));
};

/** The same; nothing stands in the field where the record holds nothing. */
export const fieldText = (quantity: Quantity, value: number | undefined): string =>
  value === undefined ? '' : measureTyped(quantity, value);
