import { type NumberRead, plainFigures, readFeetAndInches, readNumber, splitUnit } from '../engine/numerals';
import { decimalMark, fromUnit, inUnit, numberTyped, type Quantity, unitOf } from './units';

/** What a field takes: a measure, or a figure of its own. */
export type TypedAs = Quantity | 'number' | 'percent' | 'hours';

/** A number as it was typed, read. */
export interface Typed {
  /** As the record holds it. Per cent and hours as they are typed. */
  readonly kept: number;
  /** In the unit the field shows. */
  readonly shown: number;
  /** What the same text means to somebody used to the other decimal mark. */
  readonly other?: number;
  /** Not typed in plain figures of the unit of the field: a fraction, another unit, hours and minutes. */
  readonly converted: boolean;
}

/** 1 ft = 0.3048 m and 1 in = 0.0254 m exactly, so 1 ft2 = 0.09290304 m2: NIST Special Publication 811 (2008), appendix B. */
const [foot, inch] = [0.3048, 0.0254];
const lengths: Readonly<Record<string, number>> = {
  ...{ m: 1, cm: 0.01, mm: 0.001 },
  ...{ "'": foot, ft: foot, feet: foot, foot: foot, fuß: foot },
  ...{ '"': inch, in: inch, inch: inch, inches: inch, zoll: inch },
};
const areas: Readonly<Record<string, number>> = {
  ...{ m2: 1, qm: 1, sqm: 1, cm2: 1e-4, qcm: 1e-4 },
  ...{ ft2: foot ** 2, sqft: foot ** 2, in2: inch ** 2, sqin: inch ** 2 },
};
/** Of the units a quantity may be typed in, the one the record holds it in. */
const held = { area: 1, length: 1, centimetres: 0.01, millimetres: 0.001 } as const;
const hoursTyped = ['h', 'hr', 'hrs', 'hour', 'hours', 'std', 'stunde', 'stunden'];
const minutesTyped = ['min', 'minute', 'minutes', 'minuten'];

/** As Celsius or kelvins, where a unit of temperature was typed that is not the one shown. */
const celsius = (quantity: 'temperature' | 'difference', value: number, unit: string): number | undefined => {
  if (unit === 'c' || (unit === 'k' && quantity === 'difference')) return value;
  if (unit === 'f') return ((value - (quantity === 'temperature' ? 32 : 0)) * 5) / 9;
  return undefined;
};

/** Nine significant figures, so that no noughts and nines creep in. */
const nine = (value: number): number => Number(value.toPrecision(9));

const measureRead = (quantity: Quantity, { value, other, fraction }: NumberRead, unit: string): Typed | undefined => {
  const own = splitUnit(`1 ${unitOf(quantity)}`)?.unit;
  const plain = unit === '' || unit === own;
  let kept: number | undefined;
  if (plain) kept = fromUnit(quantity, fraction ? nine(value) : value);
  else if (quantity === 'temperature' || quantity === 'difference') kept = celsius(quantity, value, unit);
  else {
    const factor = (quantity === 'area' ? areas : lengths)[unit];
    kept = factor === undefined ? undefined : (value * factor) / held[quantity];
  }
  if (kept === undefined) return undefined;
  const shown = plain ? value : inUnit(quantity, kept);
  return {
    kept: plain ? kept : nine(kept),
    shown: plain && !fraction ? shown : Number(shown.toPrecision(7)),
    ...(other === undefined ? {} : { other }),
    converted: !plain || fraction === true,
  };
};

const figureRead = (as: 'number' | 'percent' | 'hours', { value, other, fraction }: NumberRead, unit: string) => {
  const minutes = as === 'hours' && minutesTyped.includes(unit);
  const own = unit === '' || (as === 'percent' && unit === '%') || (as === 'hours' && hoursTyped.includes(unit));
  if (!own && !minutes) return undefined;
  const kept = minutes || fraction ? nine(minutes ? value / 60 : value) : value;
  return { kept, shown: kept, ...(other === undefined ? {} : { other }), converted: minutes || fraction === true };
};

/** "2:30" and "2 h 30" are two hours and a half. */
const hoursAndMinutes = (text: string): Typed | undefined => {
  const found = /^(\d{1,4}) ?(?::|h|hrs?|Std\.?) ?([0-5]?\d)(?: ?(?:m|min)\.?)?$/i.exec(plainFigures(text));
  if (!found) return undefined;
  const kept = nine(Number(found[1]) + Number(found[2]) / 60);
  return { kept, shown: kept, converted: true };
};

const isQuantity = (as: TypedAs): as is Quantity => as !== 'number' && as !== 'percent' && as !== 'hours';

/** What was typed into a field, or undefined where it is no number. Below nought too: what may not be is for the form to say. */
export const readTyped = (text: string, as: TypedAs): Typed | undefined => {
  const decimal = decimalMark();
  const split = splitUnit(text);
  const number = split && readNumber(split.number, decimal);
  const read = number && (isQuantity(as) ? measureRead(as, number, split.unit) : figureRead(as, number, split.unit));
  if (read || as === 'area') return read;
  if (as === 'hours') return hoursAndMinutes(text);
  const feet = as in held ? readFeetAndInches(text, decimal) : undefined;
  return feet && isQuantity(as) ? measureRead(as, feet, 'ft') : undefined;
};

const notBelow = (read: Typed | undefined): number | undefined => (read && read.kept >= 0 ? read.kept : undefined);

/** What a person typed for a number, nought or above; undefined where it is none. */
export const typedNumber = (text: string): number | undefined => notBelow(readTyped(text, 'number'));

/** Per cent as they are typed, with or without the sign for them: "5", "5 %". */
export const typedPercent = (text: string): number | undefined => notBelow(readTyped(text, 'percent'));

/** The same, of what may fall too. */
export const typedRise = (text: string): number | undefined => readTyped(text, 'percent')?.kept;

/** Hours: "2.5", "2:30", "45 min". */
export const typedHours = (text: string): number | undefined => notBelow(readTyped(text, 'hours'));

/** A measure in the unit of the device, or in the one typed along, as the record holds it. Only temperatures go below nought. */
export const typedMeasure = (quantity: Quantity, text: string): number | undefined => {
  const read = readTyped(text, quantity);
  return quantity === 'temperature' || quantity === 'difference' ? read?.kept : notBelow(read);
};

/** A share between 0 and 1 as per cent, as it is typed into a field, to be read again. */
export const percentTyped = (share: number): string => numberTyped(Number((share * 100).toFixed(3)));
