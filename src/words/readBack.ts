import { isCurrency, isMoney, readMoney, unitsOf } from '../engine/money';
import { readNumber, splitUnit } from '../engine/numerals';
import { sayReason } from './en/reasons';
import { typing as words } from './en/typing';
import { readTyped, type TypedAs } from './typedNumber';
import { decimalMark, numberTyped, unitOf } from './units';

/** What a field says of the number typed in it. */
export interface ReadBack {
  /** How it was read, where it could be read otherwise or was put into other figures. */
  readonly told?: string;
  /** Why it cannot be read, and what to do. */
  readonly fault?: string;
}

/** The unit an echo ends with; per cent and numbers have theirs behind the field. */
const unitAfter = (as: TypedAs): string => {
  if (as === 'number' || as === 'hours') return '';
  return `\u00a0${as === 'percent' ? '%' : unitOf(as)}`;
};

/** Of a number or a measure. Nothing is said of an empty field. */
export const readBack = (text: string, as: TypedAs): ReadBack => {
  if (text.trim() === '') return {};
  const read = readTyped(text, as);
  if (!read) return { fault: words.notNumber };
  const shown = numberTyped(read.shown);
  if (read.other !== undefined && !read.converted)
    return { told: words.readAsNot(`${shown}${unitAfter(as)}`, numberTyped(read.other)) };
  return read.converted ? { told: words.readAs(`${shown}${unitAfter(as)}`) } : {};
};

/** Of an amount. Told where its one mark is that of decimals, and it was read as one of thousands. */
export const readBackMoney = (text: string, currency: string): ReadBack => {
  if (text.trim() === '' || !isCurrency(currency)) return {};
  const read = readMoney(text, currency);
  if (!isMoney(read)) return { fault: sayReason(read) };
  const split = splitUnit(text);
  const number = split && readNumber(split.number, decimalMark());
  const units = unitsOf(read);
  if (number?.other === undefined || number.value === units) return {};
  return { told: words.readAsNot(numberTyped(units), numberTyped(number.value)) };
};
